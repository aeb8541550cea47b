package clutchwright.engine.season;

/// What is taken to be known of lay days before a collection's own records: spreads between
/// females, seasons and clutches, and the gaps between signs. A keeper may set them.
///
/// Sources: `docs/mathematics.md`, "When she will lay". Standard deviations are in days and above
/// zero.
///
/// @param meanDay day of the year on which clutches are laid, before any is on record
/// @param meanSdDays how far a collection's mean may be from that
/// @param femaleSdDays between females
/// @param seasonSdDays between seasons, all females alike
/// @param clutchSdDays what is left, from clutch to clutch
/// @param firstTimeDays how much later a female's first clutch is
/// @param skips how often a female that is paired does not lay
/// @param ovulationToLay days
/// @param ovulationToShed days from ovulation to the pre-lay shed
/// @param shedToLay days
public record LayPriors(
        double meanDay,
        double meanSdDays,
        double femaleSdDays,
        double seasonSdDays,
        double clutchSdDays,
        double firstTimeDays,
        Skips skips,
        Gap ovulationToLay,
        Gap ovulationToShed,
        Gap shedToLay) {

    /// 20 April; 25, 5 and 7 days; ten days later the first time; three seasons in ten without a
    /// clutch; 47, 18 and 29 days from sign to
    /// sign.
    public static final LayPriors STANDARD =
            new LayPriors(
                    110,
                    30,
                    25,
                    5,
                    7,
                    10,
                    new Skips(3, 7),
                    new Gap(47, 4.5),
                    new Gap(18, 4),
                    new Gap(29, 3.5));

    /// As if so many seasons had been seen before her own: the parameters of a beta distribution.
    public record Skips(double skipped, double laid) {

        public Skips {
            requireAboveZero("seasons skipped", skipped);
            requireAboveZero("seasons with a clutch", laid);
        }
    }

    /// Between two signs.
    public record Gap(double days, double sdDays) {

        public Gap {
            requireAboveZero("days of a gap", days);
            requireAboveZero("standard deviation of a gap", sdDays);
        }

        double variance() {
            return sdDays * sdDays;
        }
    }

    public LayPriors {
        requireAboveZero("spread of the mean", meanSdDays);
        requireAboveZero("spread between females", femaleSdDays);
        requireAboveZero("spread between seasons", seasonSdDays);
        requireAboveZero("spread between clutches", clutchSdDays);
        if (!canMakeUp(ovulationToLay, ovulationToShed, shedToLay)) {
            throw new IllegalArgumentException(
                    "gaps that spread by %s and %s days cannot make up one that spreads by %s"
                            .formatted(
                                    ovulationToShed.sdDays(),
                                    shedToLay.sdDays(),
                                    ovulationToLay.sdDays()));
        }
    }

    /// Whether two gaps, one after the other, can spread as the whole does: its standard deviation
    /// lies between the difference and the sum of theirs, both excluded.
    public static boolean canMakeUp(Gap whole, Gap first, Gap second) {
        return whole.sdDays() < first.sdDays() + second.sdDays()
                && whole.sdDays() > Math.abs(first.sdDays() - second.sdDays());
    }

    private static void requireAboveZero(String what, double value) {
        // Written so that NaN fails.
        if (!(value > 0 && value < 1e6)) {
            throw new IllegalArgumentException(what + " is " + value + ", not above 0");
        }
    }

    /// Which part of all the spread of lay days is between females.
    public double repeatability() {
        var between = femaleSdDays * femaleSdDays;
        return between / (between + withinFemaleVariance());
    }

    /// Of the difference between a female's lay days of two seasons.
    public double yearToYearSdDays() {
        return Math.sqrt(2 * withinFemaleVariance());
    }

    /// Of one female's clutch about her own mean.
    double withinFemaleVariance() {
        return seasonSdDays * seasonSdDays + clutchSdDays * clutchSdDays;
    }

    /// How the two gaps that make up the one from ovulation to laying go together: a late shed is
    /// followed by an early laying.
    double gapCorrelation() {
        return (ovulationToLay.variance() - ovulationToShed.variance() - shedToLay.variance())
                / (2 * ovulationToShed.sdDays() * shedToLay.sdDays());
    }
}
