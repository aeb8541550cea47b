package clutchwright.app.wording;

/// How the keeper wants figures, dates and pages to look.
///
/// @param tagPattern how a hatchling's tag is made; read by `TagPattern`
public record Preferences(
        Weight weight, Warmth warmth, DateStyle dates, Look look, String tagPattern) {

    /// What holds until the keeper chooses.
    public static final Preferences FIRST =
            new Preferences(
                    Weight.GRAMS,
                    Warmth.CELSIUS,
                    DateStyle.WORDS,
                    Look.AS_THE_DEVICE,
                    "{yy}-{clutch}{letter}");

    public enum Weight {
        GRAMS,
        OUNCES
    }

    public enum Warmth {
        CELSIUS,
        FAHRENHEIT
    }

    public enum DateStyle {
        /// `9 August 2021`
        WORDS,
        /// `August 9, 2021`
        WORDS_MONTH_FIRST,
        /// `2021-08-09`
        FIGURES
    }

    public enum Look {
        AS_THE_DEVICE,
        LIGHT,
        DARK
    }
}
