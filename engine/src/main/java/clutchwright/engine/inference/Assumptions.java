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
/// @param onlyAllelesMet whether alleles that nobody in the collection is said or seen to have
///     are taken not to be there at all; else they are there at the background frequency
public record Assumptions(
        double background,
        double misread,
        double acquiredForLook,
        double parthenogenesis,
        double secondDivision,
        boolean claimOfHalfKnown,
        boolean onlyAllelesMet) {

    /// One half of one percent for each, and nothing else assumed.
    public static final Assumptions STANDARD = new Assumptions(0.005, 0.005);

    /// As [#STANDARD], and what a keeper takes for granted of animals bought in: half of them
    /// are there for their looks, what the seller said of one with half a pedigree stands, and
    /// genes that nobody speaks of are not there.
    public static final Assumptions KEEPER =
            new Assumptions(
                    STANDARD.background(),
                    STANDARD.misread(),
                    0.5,
                    0,
                    STANDARD.secondDivision(),
                    true,
                    true);

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
        this(background, misread, acquiredForLook, parthenogenesis, secondDivision, false, false);
    }

    public Assumptions(double background, double misread) {
        this(background, misread, 0, 0, 1.0 / 3, false, false);
    }

    public Assumptions withAcquiredForLook(double chance) {
        return new Assumptions(
                background,
                misread,
                chance,
                parthenogenesis,
                secondDivision,
                claimOfHalfKnown,
                onlyAllelesMet);
    }

    public Assumptions withParthenogenesis(double chance) {
        return new Assumptions(
                background,
                misread,
                acquiredForLook,
                chance,
                secondDivision,
                claimOfHalfKnown,
                onlyAllelesMet);
    }

    public Assumptions withClaimOfHalfKnown(boolean stands) {
        return new Assumptions(
                background,
                misread,
                acquiredForLook,
                parthenogenesis,
                secondDivision,
                stands,
                onlyAllelesMet);
    }

    private static void requireChance(String what, double value) {
        // The comparison is written so that NaN fails it.
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " is " + value + ", not between 0 and 1");
        }
    }
}
