package clutchwright.engine.genetics;

/// One of the alternatives at a locus.
///
/// @param name as the trade writes it; the wild type is `+`
public record Allele(LocusId locus, String name) {

    public static final String WILD = "+";

    public Allele {
        if (name.isBlank() || name.contains("/") || name.contains("|")) {
            throw new IllegalArgumentException("not the name of an allele: '" + name + "'");
        }
    }

    public static Allele wildOf(LocusId locus) {
        return new Allele(locus, WILD);
    }

    public boolean isWild() {
        return name.equals(WILD);
    }

    @Override
    public String toString() {
        return name;
    }
}
