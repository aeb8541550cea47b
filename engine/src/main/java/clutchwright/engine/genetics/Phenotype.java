package clutchwright.engine.genetics;

/// One of the forms that can be told apart by looking at one locus.
///
/// @param name as the trade writes it, such as `Super Pastel`; the look of the wild type is
///     `Normal`
/// @param visible false for the look of the wild type
public record Phenotype(LocusId locus, String name, boolean visible) {

    public static final String NORMAL = "Normal";

    public Phenotype {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a form of " + locus + " without a name");
        }
        if (visible == name.equals(NORMAL)) {
            throw new IllegalArgumentException(
                    "form " + name + " of " + locus + ": only Normal is unseen");
        }
    }

    public static Phenotype normalOf(LocusId locus) {
        return new Phenotype(locus, NORMAL, false);
    }

    @Override
    public String toString() {
        return name;
    }
}
