package clutchwright.app.wording;

import clutchwright.records.clutches.Candling.Finding;

/// What the light shows of an egg, as the trade says it.
public final class CandlingWords {

    private CandlingWords() {}

    public static String of(Finding finding) {
        return switch (finding) {
            case GOOD -> "veins";
            case NO_VEINS -> "no veins";
            case DOUBTFUL -> "doubtful";
            case COLLAPSED -> "collapsed";
            case SLUG -> "slug";
        };
    }

    /// What that means, in a few words: common practice, no source.
    public static String meaning(Finding finding) {
        return switch (finding) {
            case GOOD -> "veins, or a growing shadow";
            case NO_VEINS -> "none yet; says little in the first week";
            case DOUBTFUL -> "look again in some days";
            case COLLAPSED -> "the shell has caved in; near the end that is common";
            case SLUG -> "nothing, and nothing to come";
        };
    }
}
