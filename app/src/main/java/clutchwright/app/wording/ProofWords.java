package clutchwright.app.wording;

import clutchwright.engine.inference.Method;
import clutchwright.engine.pedigree.Member.Span;
import clutchwright.engine.probability.BayesFactor;
import clutchwright.engine.proof.NoTestMating;
import clutchwright.engine.proof.TestMating;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/// Proving out, in a breeder's words.
public final class ProofWords {

    /// What the columns of the mates mean; the number is the hatchlings of a clutch.
    public static final String HOW_TO_READ =
            "To 5 %%: so many hatchlings without the trait bring the chance down to that. Shows one:"
                    + " the chance that one of %d hatchlings has it.";

    public static final String BEFORE_YOU_PAIR =
            "Before you pair them look at what the pairing gives, its cautions among that"
                    + " (`clutchwright predict`). Relatives make inbred young.";

    /// Half of the last place that is written.
    private static final double SAYS_NOTHING = 0.005;

    private ProofWords() {}

    /// `F1 x M1`, `F1 x M1 or M2`.
    public static String couple(List<String> dams, List<String> sires) {
        var dam = dams.isEmpty() ? "unknown" : String.join(" or ", dams);
        var sire = sires.isEmpty() ? "unknown" : String.join(" or ", sires);
        return dam + " x " + sire;
    }

    /// A day, a year, or the days from first to last, as other programs read them.
    public static String hatched(Span span) {
        var first = span.earliest();
        var last = span.latest();
        if (first.equals(last)) {
            return first.toString();
        }
        var whole = Span.year(first.getYear());
        return span.equals(whole) ? Integer.toString(first.getYear()) : first + "/" + last;
    }

    /// `5 Normal, 1 Clown`, or that nobody looked.
    public static String looks(Map<String, Integer> looks) {
        var parts = new ArrayList<String>();
        looks.forEach((look, count) -> parts.add(count + " " + look));
        return parts.isEmpty() ? "nobody looked" : String.join(", ", parts);
    }

    /// A factor of the odds: `1/64`, `x 3.2`.
    public static String factor(double factor) {
        if (factor == 0) {
            return "0";
        }
        if (Math.abs(Math.log(factor)) < SAYS_NOTHING) {
            return "1";
        }
        return factor < 1 ? "1/" + figure(1 / factor) : figure(factor);
    }

    private static String figure(double number) {
        if (number >= 1e6) {
            return String.format(Locale.ROOT, "%.1e", number);
        }
        if (number >= 100 || Math.abs(number - Math.rint(number)) < 1e-9) {
            return String.format(Locale.ROOT, "%,.0f", number);
        }
        return String.format(Locale.ROOT, number >= 10 ? "%.1f" : "%.2f", number);
    }

    /// Hatchlings that are needed, or that no number will do.
    public static String needed(OptionalInt hatchlings) {
        return hatchlings.isPresent() ? Integer.toString(hatchlings.getAsInt()) : "never";
    }

    /// On what a chance rests: `stated, its parents, 12 young seen`.
    public static String basis(boolean claimed, int parents, int looked) {
        var parts = new ArrayList<String>();
        if (claimed) {
            parts.add("stated");
        }
        if (parents > 0) {
            parts.add(parents == 1 ? "one parent" : "its parents");
        }
        if (looked > 0) {
            parts.add(looked + " young seen");
        }
        return parts.isEmpty() ? "nothing but the background" : String.join(", ", parts);
    }

    /// Why a question has no mate this season.
    public static String noMateThisSeason(boolean sexed, boolean tooYoung) {
        if (!sexed) {
            return "not sexed";
        }
        return tooYoung ? "too young this season" : "none at hand";
    }

    /// How far a chance may be off; empty where it is exact.
    public static String method(Method method, double error) {
        return switch (method) {
            case Method.Exact() -> "";
            case Method.Bounded(var bound) ->
                    "It is off by at most %s.".formatted(Chances.percent(bound));
            case Method.Estimated _, Method.Sampled _ ->
                    "The exact sum was out of reach: it may be off by %s, as estimated."
                            .formatted(Chances.percent(error));
        };
    }

    /// A day, a year, or the days from first to last.
    public static String hatched(Span span, Formats formats) {
        var first = span.earliest();
        var last = span.latest();
        if (first.equals(last)) {
            return formats.date(first);
        }
        return span.equals(Span.year(first.getYear()))
                ? Integer.toString(first.getYear())
                : formats.date(first) + " to " + formats.date(last);
    }

    /// What a clutch says, in words. The scale is that of Kass and Raftery (1995).
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    public static String says(Optional<BayesFactor> factor, int looked) {
        if (looked == 0) {
            return "Nobody has looked at them yet.";
        }
        if (factor.isEmpty()) {
            return "The other records settle it without this clutch.";
        }
        var odds = factor.get();
        if (odds.value() == 0 || Double.isInfinite(odds.value())) {
            return odds.favours() ? "Proves it." : "Rules it out.";
        }
        if (Math.abs(Math.log(odds.value())) < SAYS_NOTHING) {
            return "Says nothing.";
        }
        var side = odds.favours() ? "for it" : "against it";
        var times =
                "%s times likelier if it %s."
                        .formatted(
                                figure(odds.weight()), odds.favours() ? "carries it" : "does not");
        return switch (odds.strength()) {
            case BARE_MENTION -> "Hardly anything " + side + ". " + times;
            case POSITIVE -> "Speaks " + side + ". " + times;
            case STRONG -> "Speaks strongly " + side + ". " + times;
            case VERY_STRONG -> "Speaks very strongly " + side + ". " + times;
        };
    }

    /// What to look at before a pair is put together; empty where nothing is known against it.
    ///
    /// @param kinship of the two, which their young's inbreeding is
    public static String care(int cautions, double kinship) {
        var parts = new ArrayList<String>();
        if (cautions > 0) {
            parts.add(cautions == 1 ? "1 welfare caution" : cautions + " welfare cautions");
        }
        // Below that two animals are no nearer than second cousins.
        if (kinship >= 1.0 / 64) {
            parts.add("related: inbreeding of the young " + Chances.percent(kinship));
        }
        return String.join("; ", parts);
    }

    /// The curve, for those who do not see it.
    public static String curve(
            TestMating mating, String animal, String gene, String mate, int hatchlings) {
        var least = mating.chanceAfter(0, hatchlings).orElse(0);
        return "Chance that %s carries %s by further hatchlings of %s without it: %s now, %s after %d."
                .formatted(
                        animal,
                        gene,
                        mate,
                        Chances.percent(mating.chance()),
                        Chances.percent(least),
                        hatchlings);
    }

    /// One point of the curve.
    public static String after(int hatchlings, double chance) {
        return "%s after %d without it".formatted(Chances.percent(chance), hatchlings);
    }

    /// Why no test mating is proposed.
    public static String noMating(NoTestMating why, String animal, String allele) {
        return switch (why) {
            case AT_SIGHT ->
                    "%s shows in who carries it: look at %s, there is nothing to prove by breeding."
                            .formatted(allele, animal);
            case CERTAIN -> "That is certain; there is nothing left to prove.";
            case NO_SEX ->
                    "The sex of %s is not known, so no mate can be proposed.".formatted(animal);
            case NOBODY -> "No animal of the other sex is kept, so no mate can be proposed.";
            case NOTHING_TELLS ->
                    "No hatchling of any mate at hand would tell: none of them can bring %s out."
                            .formatted(allele);
        };
    }
}
