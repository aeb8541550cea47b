package clutchwright.app.projects;

import clutchwright.app.wording.RouteWords;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Goal;
import clutchwright.engine.planning.Keeping;
import clutchwright.engine.planning.Route;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.RouteStep.Parent;
import clutchwright.engine.planning.Routes;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// The routes to a goal as other programs read them: the document that `route --json` prints.
///
/// Fields may be added; none is renamed or removed.
///
/// @param method `exhaustive`, `best found`, or `refused`
/// @param refused why there are none, else empty
/// @param runs of each route
/// @param runsPerSecond of all routes, the search among that
record RouteDocument(
        List<Way> routes,
        String method,
        Optional<Refusal> refused,
        int runs,
        long runsPerSecond,
        int weighed,
        List<String> cautions,
        List<String> notes) {

    RouteDocument {
        routes = List.copyOf(routes);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /// @param reason a short name that stays
    /// @param text for people
    record Refusal(String reason, String text) {}

    /// @param seasons until the chance is the confidence asked for, or all that are looked at
    /// @param clutches mean number until the goal is there or the last season is over
    record Way(
            int seasons,
            double clutches,
            double chance,
            List<Step> steps,
            List<BySeason> chanceBySeason) {

        Way {
            steps = List.copyOf(steps);
            chanceBySeason = List.copyOf(chanceBySeason);
        }
    }

    /// @param season the first in which it can hatch
    /// @param dam a tag, or the `id` of what an earlier step keeps
    /// @param dams all that may be bred alike, the first of them the dam
    /// @param inbreeding of the hatchlings, expected
    record Step(
            int season,
            String dam,
            String sire,
            List<String> dams,
            List<String> sires,
            int clutches,
            List<Keep> keep,
            double chance,
            double inbreeding) {

        Step {
            dams = List.copyOf(dams);
            sires = List.copyOf(sires);
            keep = List.copyOf(keep);
        }
    }

    /// @param visible sorted by code point; only of genes that matter to the goal
    /// @param sex `female`, `male` or `any`
    /// @param count to be kept at most; the route goes on with the first
    /// @param goal whether this is what the route is for
    record Keep(
            String id,
            List<String> visible,
            String sex,
            int count,
            Chance perHatchling,
            List<Unseen> carries,
            boolean goal) {

        Keep {
            visible = List.copyOf(visible);
            carries = List.copyOf(carries);
        }
    }

    record Chance(String fraction, double value) {
        private static Chance of(Fraction chance) {
            return new Chance(chance.toString(), chance.value());
        }
    }

    record Unseen(String allele, double chance) {}

    record BySeason(int season, double chance) {}

    static RouteDocument refused(String reason, String text) {
        return new RouteDocument(
                List.of(),
                "refused",
                Optional.of(new Refusal(reason, text)),
                0,
                0,
                0,
                List.of(),
                List.of());
    }

    static RouteDocument of(
            Routes.Found found,
            Collected collected,
            GeneticModel model,
            Goal goal,
            double seconds) {
        var ways = found.routes().stream().map(route -> way(route, collected)).toList();
        var notes = new ArrayList<>(collected.notes());
        if (ways.stream().allMatch(way -> way.steps().getLast().inbreeding() >= RouteWords.CLOSE)) {
            notes.add(RouteWords.RELATED_ONLY);
        }
        return new RouteDocument(
                ways,
                found.method().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                Optional.empty(),
                found.routes().stream().mapToInt(Route::runs).findFirst().orElse(0),
                Math.round(found.playedRuns() / Math.max(1e-3, seconds)),
                found.weighed(),
                cautions(model, goal),
                notes);
    }

    /// Of what the goal's animals have.
    static List<String> cautions(GeneticModel model, Goal goal) {
        return model.cautions().stream()
                .filter(caution -> caution.parts().stream().allMatch(part -> concerns(part, goal)))
                .map(Caution::words)
                .distinct()
                .toList();
    }

    private static boolean concerns(Caution.Part part, Goal goal) {
        return goal.loci().getOrDefault(part.allele().locus(), List.of()).stream()
                .anyMatch(part::holdsFor);
    }

    private static Way way(Route route, Collected collected) {
        var inbreeding = new RouteKinship(collected.kinship());
        var steps =
                route.steps().stream()
                        .map(step -> step(step, collected, inbreeding.ofYoung(step)))
                        .toList();
        var chances = new ArrayList<BySeason>();
        for (var chance : route.chanceBySeason()) {
            chances.add(new BySeason(chances.size() + 1, chance));
        }
        return new Way(route.seasons(), route.clutches(), route.chance(), steps, chances);
    }

    private static Step step(RouteStep step, Collected collected, double inbreeding) {
        var dams = names(step.dam(), collected);
        var sires = names(step.sire(), collected);
        return new Step(
                step.season(),
                dams.getFirst(),
                sires.getFirst(),
                dams,
                sires,
                step.clutches(),
                step.keep().stream().map(RouteDocument::keep).toList(),
                step.chance(),
                inbreeding);
    }

    private static List<String> names(Parent parent, Collected collected) {
        return switch (parent) {
            case Parent.Own(var animals) -> animals.stream().map(collected::tag).toList();
            case Parent.Kept(var number) -> List.of("K" + number);
        };
    }

    private static Keep keep(Keeping keeping) {
        return new Keep(
                "K" + keeping.number(),
                keeping.shows().stream()
                        .filter(Phenotype::visible)
                        .map(Phenotype::name)
                        .sorted()
                        .toList(),
                keeping.sex().map(RouteDocument::word).orElse("any"),
                keeping.count(),
                Chance.of(keeping.perHatchling()),
                keeping.carries().stream()
                        .map(held -> new Unseen(held.allele().name(), held.chance().value()))
                        .toList(),
                keeping.isGoal());
    }

    private static String word(Sex sex) {
        return sex.name().toLowerCase(Locale.ROOT);
    }
}
