package clutchwright.app.wording;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.ImpossibleGoal;
import clutchwright.engine.planning.Keeping;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/// Routes over generations, in a breeder's words.
public final class RouteWords {

    /// From here on young are called inbred: half-siblings' young and closer.
    public static final double CLOSE = 0.125;

    public static final String THREE_ALLELES =
            "It asks for three alleles at one locus, and an animal has two.";

    public static final String RELATED_ONLY =
            "Every route ends in young of close relatives. An unrelated animal in the project would"
                    + " lower that; what inbreeding does to health is for a veterinarian to say.";

    public static final String AGAIN =
            "After each season put what hatched on record and run this again: the routes then begin"
                    + " from what is there. Before you pair look at the cautions of a pairing"
                    + " (`clutchwright predict`).";

    public static final String GOAL_EXPECTED =
            "Write what the animal must show or carry at least, such as “Clown Piebald” or “1.1 Clown”.";

    private RouteWords() {}

    /// @param number of the line, from 1
    public static String purchaseLine(int number) {
        return "Line %d: write 1.0 or 0.1, the genes, a colon and the price, such as “1.0 Clown: 250”."
                .formatted(number);
    }

    public static String purchaseLine(int number, String fault) {
        return "Line %d: %s".formatted(number, fault);
    }

    /// A short name of the reason that stays, for other programs.
    public static String nameOf(ImpossibleGoal reason) {
        return switch (reason) {
            case ImpossibleGoal.ThreeAlleles _ -> "three alleles";
            case ImpossibleGoal.NobodyCarries _ -> "nobody carries";
            case ImpossibleGoal.NobodyCarriesAny _ -> "nobody carries";
            case ImpossibleGoal.NoFemale() -> "no female";
            case ImpossibleGoal.NoMale() -> "no male";
            case ImpossibleGoal.AllTooYoung _ -> "all too young";
            case ImpossibleGoal.NoClutches() -> "no clutches";
            case ImpossibleGoal.AlreadyOwned _ -> "already owned";
            case ImpossibleGoal.DoesNotLive() -> "does not live";
            case ImpossibleGoal.OutOfReach _ -> "out of reach";
        };
    }

    /// @param tags of animals
    public static String of(ImpossibleGoal reason, Function<AnimalId, String> tags) {
        return switch (reason) {
            case ImpossibleGoal.ThreeAlleles(var locus) ->
                    "It asks for three alleles at one locus (%s), and an animal has two."
                            .formatted(locus);
            case ImpossibleGoal.NobodyCarries(var allele) ->
                    "Nobody in the stock can carry %s: no route leads there without buying one."
                            .formatted(allele);
            case ImpossibleGoal.NobodyCarriesAny(var locus) ->
                    "Nobody in the stock carries what it asks for at %s.".formatted(locus);
            case ImpossibleGoal.NoFemale() ->
                    "There is no female in the stock: every route needs one.";
            case ImpossibleGoal.NoMale() -> "There is no male in the stock: every route needs one.";
            case ImpossibleGoal.AllTooYoung(var season) ->
                    "All are too young: the first pair can be bred in season %d, after the last one looked at."
                            .formatted(season);
            case ImpossibleGoal.NoClutches() ->
                    "Without a clutch nothing hatches: allow at least one a season.";
            case ImpossibleGoal.AlreadyOwned(var animals) ->
                    "It is there already: %s."
                            .formatted(
                                    animals.stream().map(tags).collect(Collectors.joining(", ")));
            case ImpossibleGoal.DoesNotLive() ->
                    "Animals with these genes do not hatch: that pair of alleles is not viable.";
            case ImpossibleGoal.OutOfReach(var seasons) ->
                    "No route was found that has a chance within %d seasons.".formatted(seasons);
        };
    }

    /// What is seen of what a step keeps.
    public static String look(Keeping keeping) {
        return keeping.shows().isEmpty()
                ? Phenotype.NORMAL
                : keeping.shows().stream().map(Phenotype::name).collect(Collectors.joining(" "));
    }

    public static String namesNothing(String line) {
        return "“%s” names no gene to breed for.".formatted(line);
    }

    public static String inDoubt(String name) {
        return "“%s” is in doubt: a goal is wanted for certain.".formatted(name);
    }

    public static String asksForPhase(String name) {
        return "“%s”: on which sex chromosome it sits cannot be asked for; leave the maker out."
                .formatted(name);
    }

    public static String unsexed(String tag) {
        return "note: %s is not sexed and is left out.".formatted(tag);
    }

    public static String tooYoung(String tag, int season) {
        return "note: %s is too young before season %d.".formatted(tag, season);
    }

    /// The head of a route.
    public static String route(
            int number,
            String goal,
            int seasons,
            double clutches,
            double chance,
            double confidence) {
        return String.format(
                Locale.ROOT,
                "Route %d to %s: %s, %.1f clutches on average, %s",
                number,
                goal,
                seasons == 1 ? "1 season" : seasons + " seasons",
                clutches,
                chance >= confidence
                        ? Chances.percent(chance)
                        : Chances.percent(chance)
                                + ", less than the "
                                + Chances.percent(confidence)
                                + " asked for");
    }

    public static String method(String method, int runs, long runsPerSecond) {
        return "%s; each route was played through %,d times (%,d a second, the search included)."
                .formatted(
                        method.equals("exhaustive")
                                ? "All routes were weighed in which what is kept is unsure of one gene at most"
                                : "The best routes found; there are more than could be weighed",
                        runs,
                        runsPerSecond);
    }
}
