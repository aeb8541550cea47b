package clutchwright.records.projects;

/// What a house breeds towards.
public record ProjectId(long value) {

    @Override
    public String toString() {
        return Long.toString(value);
    }
}
