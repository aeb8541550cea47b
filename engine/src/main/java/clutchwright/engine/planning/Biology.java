package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;

/// What a season brings by nature. A female lays one clutch a season.
///
/// @param eggs of a clutch, at least one
/// @param hatchRate chance that an egg hatches, its genotype left aside, above 0 and at most 1
/// @param males share of males among what hatches, between 0 and 1
/// @param maleSeasons after how many seasons a hatchling is first a sire, at least one
/// @param femaleSeasons after how many seasons a hatchling is first a dam, at least one
public record Biology(
        int eggs, Fraction hatchRate, Fraction males, int maleSeasons, int femaleSeasons) {

    /// Common practice, no source: males breed in their second year, females in their third.
    public static final Biology USUAL = new Biology(6, Fraction.of(9, 10), Fraction.HALF, 2, 3);

    public Biology {
        if (eggs < 1 || maleSeasons < 1 || femaleSeasons < 1) {
            throw new IllegalArgumentException(
                    "eggs %d, seasons %d and %d: not all at least 1"
                            .formatted(eggs, maleSeasons, femaleSeasons));
        }
        if (hatchRate.compareTo(Fraction.NONE) <= 0 || hatchRate.compareTo(Fraction.WHOLE) > 0) {
            throw new IllegalArgumentException("hatch rate is " + hatchRate);
        }
        if (males.compareTo(Fraction.NONE) <= 0 || males.compareTo(Fraction.WHOLE) >= 0) {
            throw new IllegalArgumentException("share of males is " + males);
        }
    }

    public int seasonsToMaturity(Sex sex) {
        return sex == Sex.MALE ? maleSeasons : femaleSeasons;
    }

    public Fraction shareOf(Sex sex) {
        return sex == Sex.MALE ? males : males.complement();
    }
}
