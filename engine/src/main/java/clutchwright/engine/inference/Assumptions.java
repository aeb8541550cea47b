package clutchwright.engine.inference;

/// What is assumed where the records say nothing.
///
/// @param background frequency of each allele that is not wild among animals without recorded
///     parents of which nothing is stated; genotypes are then in Hardy-Weinberg proportions
/// @param misread chance that a sighting shows another form of the locus than the true one
/// @param acquiredForLook how far a stated or seen form of an animal without recorded parents
///     is taken as the reason that it is in the collection at all: with this chance it was
///     drawn from those that look so, else from the population at large
/// @param parthenogenesis chance that a clutch of which no sire is recorded had none
/// @param secondDivision chance that a half-clone of a het dam is het again; from 0 at the
///     centromere to 2/3 far from it
/// @param claimOfHalfKnown whether what is stated to be carried stands for an animal of which
///     one parent is recorded, within what that parent can give; else it is ignored, as it is
///     where both are recorded
public record Assumptions(
        double background,
        double misread,
        double acquiredForLook,
        double parthenogenesis,
        double secondDivision,
        boolean claimOfHalfKnown) {

    /// One half of one percent for each, and nothing else assumed.
    public static final Assumptions STANDARD = new Assumptions(0.005, 0.005);

    /// As [#STANDARD], and what a keeper takes for granted of animals bought in: half of them
    /// are there for their looks, and what the seller said of one with half a pedigree stands.
    public static final Assumptions KEEPER =
            STANDARD.withAcquiredForLook(0.5).withClaimOfHalfKnown(true);

    public Assumptions {
        requireChance("background frequency", background);
        requireChance("misread rate", misread);
        requireChance("chance of being acquired for the look", acquiredForLook);
        requireChance("chance of parthenogenesis", parthenogenesis);
        requireChance("second-division segregation", secondDivision);
    }

    public Assumptions(
            double background,
            double misread,
            double acquiredForLook,
            double parthenogenesis,
            double secondDivision) {
        this(background, misread, acquiredForLook, parthenogenesis, secondDivision, false);
    }

    public Assumptions(double background, double misread) {
        this(background, misread, 0, 0, 1.0 / 3, false);
    }

    public Assumptions withAcquiredForLook(double chance) {
        return new Assumptions(
                background, misread, chance, parthenogenesis, secondDivision, claimOfHalfKnown);
    }

    public Assumptions withParthenogenesis(double chance) {
        return new Assumptions(
                background, misread, acquiredForLook, chance, secondDivision, claimOfHalfKnown);
    }

    public Assumptions withClaimOfHalfKnown(boolean stands) {
        return new Assumptions(
                background, misread, acquiredForLook, parthenogenesis, secondDivision, stands);
    }

    private static void requireChance(String what, double value) {
        // The comparison is written so that NaN fails it.
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " is " + value + ", not between 0 and 1");
        }
    }
}
