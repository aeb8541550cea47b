package clutchwright.engine.genetics;

/// The short, stable name of a locus: lower-case letters, digits and hyphens, such as `desert-
/// ghost`.
public record LocusId(String value) implements Comparable<LocusId> {

    public LocusId {
        if (!isWellFormed(value)) {
            throw new IllegalArgumentException(
                    "not a locus name of lower-case letters, digits and hyphens: " + value);
        }
    }

    public static boolean isWellFormed(String value) {
        return value.matches("[a-z0-9]+(-[a-z0-9]+)*");
    }

    @Override
    public int compareTo(LocusId that) {
        return value.compareTo(that.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
