package clutchwright.engine.pedigree;

/// Stands for one animal; a tag may change, this does not.
public record AnimalId(long value) implements Comparable<AnimalId> {

    @Override
    public int compareTo(AnimalId that) {
        return Long.compare(value, that.value);
    }

    @Override
    public String toString() {
        return Long.toString(value);
    }
}
