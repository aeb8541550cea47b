package clutchwright.app.wording;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Caution.Concern;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import java.util.Locale;

/// Welfare cautions in words, the same on every screen.
public final class CautionWords {

    /// Said once wherever cautions are shown.
    public static final String ASK_A_VETERINARIAN =
            "Ask a veterinarian about any animal that is not well, and before breeding from it.";

    /// Said once at the foot of a page that speaks of breeding.
    public static final String LOCAL_LAW =
            "Rules on keeping, breeding and trading differ by place: follow your local law.";

    private CautionWords() {}

    /// What the caution is about, in a word or two.
    public static String concern(Concern concern) {
        return switch (concern) {
            case EARLY_DEATH -> "Early death";
            case NERVES -> "Nerves and balance";
            case SKELETON -> "Skeleton";
            case EYES -> "Eyes";
            case SKIN -> "Skin";
            case FERTILITY -> "Fertility";
            case OTHER -> "Welfare";
        };
    }

    /// How well a statement is agreed upon.
    public static String standing(Standing standing) {
        return switch (standing) {
            case SETTLED -> "settled";
            case LIKELY -> "likely";
            case DISPUTED -> "disputed";
            case UNPROVEN -> "not proven";
        };
    }

    /// Which animals it concerns: `animals with two copies of Spider`.
    public static String animals(Caution caution) {
        return "animals with " + parts(caution.parts());
    }

    /// What an animal must have: `Spider and Champagne`, `two copies of Spider`.
    public static String parts(List<Caution.Part> parts) {
        return ReadingWords.list(parts.stream().map(CautionWords::part).toList());
    }

    /// How well the words are agreed upon, and where they rest, as a sentence.
    public static String basis(Caution caution) {
        var standing = standing(caution.standing());
        return standing.substring(0, 1).toUpperCase(Locale.ROOT)
                + standing.substring(1)
                + ": "
                + caution.source()
                + ".";
    }

    private static String part(Caution.Part part) {
        return (part.copies() == 2 ? "two copies of " : "") + part.allele().name();
    }
}
