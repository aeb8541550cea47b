package clutchwright.records.store;

/// One change in the journal: everything that was written in one transaction.
public record ChangeId(long value) implements Comparable<ChangeId> {

    @Override
    public int compareTo(ChangeId that) {
        return Long.compare(value, that.value);
    }

    @Override
    public String toString() {
        return Long.toString(value);
    }
}
