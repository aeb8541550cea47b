package clutchwright.engine.reasons;

/// How often each kind of record is wrong, before anything speaks against it.
///
/// @param misread of sightings, where the assumptions take none to be
/// @param background frequency of unknown alleles, where the assumptions take none to be
/// @param wrongSire of the young of one couple that hatched together
/// @param wrongDam of such young
/// @param wrongClaim of what is stated of one animal at one locus
/// @param surprising a record is worth a look if its chance, given all others, is below this
public record ErrorRates(
        double misread,
        double background,
        double wrongSire,
        double wrongDam,
        double wrongClaim,
        double surprising) {

    /// Half a percent of sightings and alleles, one clutch in a hundred with another sire, one
    /// in five hundred with another dam, one claim in fifty; surprising below one in a
    /// thousand.
    public static final ErrorRates STANDARD = new ErrorRates(0.005, 0.005, 0.01, 0.002, 0.02, 1e-3);

    public ErrorRates {
        requireBetween("misread rate", misread);
        requireBetween("background frequency", background);
        requireBetween("chance of a wrong sire", wrongSire);
        requireBetween("chance of a wrong dam", wrongDam);
        requireBetween("chance of a wrong claim", wrongClaim);
        requireBetween("threshold of surprise", surprising);
    }

    private static void requireBetween(String what, double value) {
        // Written so that NaN fails.
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(what + " is " + value + ", not within 0 to 1");
        }
    }
}
