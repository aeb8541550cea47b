package clutchwright.app.wording;

import clutchwright.engine.pedigree.KinshipBasis;
import clutchwright.engine.pedigree.KinshipBasis.Method;
import java.util.ArrayList;

/// How closely animals are related, in words and figures.
public final class KinshipWords {

    /// Figures that a breeder can picture, from the closest; a figure is as close as the first that
    /// it reaches.
    private enum Likeness {
        ITSELF(1.0 / 2, "an animal’s young with itself"),
        SIBLINGS(1.0 / 4, "full siblings’ young, or a parent’s with its own young"),
        THREE_QUARTERS(3.0 / 16, "the young of siblings in three quarters"),
        HALF_SIBLINGS(1.0 / 8, "half-siblings’ young"),
        COUSINS(1.0 / 16, "first cousins’ young"),
        HALF_COUSINS(1.0 / 32, "half-cousins’ young"),
        SECOND_COUSINS(1.0 / 64, "second cousins’ young");

        private final double figure;
        private final String words;

        Likeness(double figure, String words) {
            this.figure = figure;
            this.words = words;
        }
    }

    public static final String NOT_ON_RECORD =
            "How closely they are related is not known: an animal that is not on record has no"
                    + " ancestors here.";

    public static final String NOT_YET =
            "How closely it is related is being worked out: load the page again.";

    private static final int LARGEST_DENOMINATOR = 64;

    /// Half-siblings' young and closer.
    private static final double CLOSE = 1.0 / 8;

    private KinshipWords() {}

    /// What rounding has added to a figure, or taken from it, is far below this.
    private static final double DECIMALS = 1e12;

    /// `1/8` where it is that exactly, else `3.4 %`; `none` of zero.
    public static String figure(double exact) {
        double value = rounded(exact);
        if (value == 0) {
            return "none";
        }
        for (int denominator = 1; denominator <= LARGEST_DENOMINATOR; denominator *= 2) {
            double parts = value * denominator;
            if (parts == Math.rint(parts)) {
                return denominator == 1
                        ? "%.0f".formatted(parts)
                        : "%.0f/%d".formatted(parts, denominator);
            }
        }
        return Chances.percent(value);
    }

    /// `1/8, that is 12.5 %`; the percentage alone where there is no short fraction.
    public static String figureInFull(double value) {
        var figure = figure(value);
        return figure.contains("/") ? figure + ", that is " + Chances.percent(value) : figure;
    }

    /// Which known relation it is, or lies between.
    public static String asCloseAs(double exact) {
        double value = rounded(exact);
        if (value == 0) {
            return "unrelated, as far as is on record";
        }
        Likeness closer = Likeness.ITSELF;
        for (var likeness : Likeness.values()) {
            if (value == likeness.figure) {
                return likeness.words;
            }
            if (value > likeness.figure) {
                return likeness == Likeness.ITSELF
                        ? "closer than " + likeness.words
                        : "closer than " + likeness.words + ", less than " + closer.words;
            }
            closer = likeness;
        }
        return "less close than " + closer.words;
    }

    /// What the inbreeding of a pair's young would be, as a sentence.
    public static String young(double inbreeding) {
        return inbreeding == 0
                ? "They have no common ancestor on record: their young would not be inbred, as far as"
                        + " is known."
                : "Their young would be inbred by %s: %s."
                        .formatted(figureInFull(inbreeding), likeness(inbreeding));
    }

    /// How inbred an animal is, as a sentence.
    public static String inbred(double inbreeding) {
        return inbreeding == 0
                ? "Not inbred, as far as is on record."
                : "Inbred by %s: %s.".formatted(figureInFull(inbreeding), likeness(inbreeding));
    }

    /// Care that is due where relatives are paired; blank where they are not close.
    public static String caution(double inbreeding) {
        return rounded(inbreeding) < CLOSE
                ? ""
                : "Young of close relatives show hidden faults more often and may be weaker. "
                        + CautionWords.ASK_A_VETERINARIAN;
    }

    /// @param count of ancestors that are not named
    public static String more(int count) {
        return count <= 0 ? "" : "and %d more".formatted(count);
    }

    /// @param itself whether the animal is of the group
    public static String meanKinship(double mean, double ofGroup, int group, boolean itself) {
        var compared =
                mean < ofGroup
                        ? "less closely than"
                        : mean > ofGroup ? "more closely than" : "as closely as";
        return "Mean kinship %s with the %d animals kept here%s: related to them %s they are to each other on average (%s)."
                .formatted(
                        Chances.percent(mean),
                        group,
                        itself ? ", itself among them" : "",
                        compared,
                        Chances.percent(ofGroup));
    }

    public static String otherFounders(int count, double share) {
        return count == 1
                ? "One more founder has %s.".formatted(Chances.percent(share))
                : "%d more founders have %s together.".formatted(count, Chances.percent(share));
    }

    private static double rounded(double value) {
        return Math.rint(value * DECIMALS) / DECIMALS;
    }

    private static String likeness(double value) {
        var like = asCloseAs(value);
        return like.startsWith("closer") || like.startsWith("less") ? like : "as close as " + like;
    }

    /// @param questions sires in doubt that the figures are averaged over
    public static String method(int questions) {
        return "Founders and parents that are not on record are taken to be unrelated."
                + switch (questions) {
                    case 0 -> "";
                    case 1 ->
                            " One question of sires is open: the figures are the mean over its"
                                    + " answers by their chances.";
                    default ->
                            " %d questions of sires are open: the figures are the mean over their answers by their chances."
                                    .formatted(questions);
                };
    }

    /// What a figure rests on, as a sentence or more.
    public static String basis(KinshipBasis basis) {
        var sentences = new ArrayList<String>();
        sentences.add(
                "%s; those who are not are taken to be unrelated.".formatted(onRecord(basis)));
        switch (basis.method()) {
            case Method.Exact() -> {}
            case Method.Expected(var over) ->
                    sentences.add(
                            over.size() == 1
                                    ? "One sire is in doubt: the figure is the mean over who it may"
                                            + " have been."
                                    : "%d sires are in doubt: the figure is the mean over who they may have been."
                                            .formatted(over.size()));
        }
        if (basis.parthenogenetic() > 0) {
            sentences.add(
                    "Young without a sire are taken to keep %s of their dam’s heterozygosity."
                            .formatted(figureOfThird(basis.secondDivision())));
        }
        return String.join(" ", sentences);
    }

    private static String onRecord(KinshipBasis basis) {
        int complete = basis.completeGenerations();
        int deepest = basis.deepestGeneration();
        if (basis.ancestors() == 0) {
            return "No ancestor is on record";
        }
        var count =
                basis.ancestors() == 1 ? "One ancestor is" : basis.ancestors() + " ancestors are";
        if (complete == deepest) {
            return "%s on record, all for %s back".formatted(count, generations(complete));
        }
        return "%s on record, %ssome for %s back"
                .formatted(
                        count,
                        complete == 0 ? "" : "all for %s, ".formatted(generations(complete)),
                        generations(deepest));
    }

    private static String figureOfThird(double value) {
        return Math.abs(value - 1.0 / 3) < 1e-9 ? "a third" : Chances.percent(value);
    }

    private static String generations(int count) {
        return count == 1 ? "one generation" : count + " generations";
    }
}
