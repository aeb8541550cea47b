package clutchwright.engine.catalogue;

/// From when on keepers breed an animal of a species and sex, where nothing speaks against it.
///
/// Advice, and no permission.
///
/// @param grams weight, above zero
/// @param months age, above zero
public record BreedingMinimum(double grams, int months) {

    public BreedingMinimum {
        if (!(grams > 0) || months < 1) {
            throw new IllegalArgumentException(grams + " g, " + months + " months");
        }
    }
}
