package clutchwright.app.season.plan;

import clutchwright.engine.planning.ParentDraw;
import clutchwright.engine.planning.SeasonSimulation;
import clutchwright.records.plans.SavedPlan.Pair;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// What a plan is expected to bring.
///
/// @param played how the season went when it was played through
/// @param priced hatchlings expected of each kind that has a price
/// @param unpriced the same of kinds that have none, the most first
/// @param projects chances of what is to be kept, by project
/// @param weeks by their Mondays
record PlanOutlook(
        SeasonSimulation.Played played,
        SequencedMap<String, Double> priced,
        SequencedMap<String, Double> unpriced,
        List<Kept> projects,
        List<Week> weeks) {

    private static final int RUNS = 2_000;
    private static final long SEED = 1;

    PlanOutlook {
        projects = List.copyOf(projects);
        weeks = List.copyOf(weeks);
    }

    /// @param chance that the season brings at least one of it
    /// @param pairs that it may come from
    record Kept(ProjectStep step, int keeping, double chance, List<Pair> pairs) {

        Kept {
            pairs = List.copyOf(pairs);
        }
    }

    /// @param monday in ISO form
    record Week(String monday, double boxes, double places) {}

    static PlanOutlook of(PlanDraft draft, List<Pair> pairs) {
        var chosen = pairs.stream().flatMap(pair -> draft.find(pair).stream()).toList();
        var priced = new LinkedHashMap<String, Double>();
        var unpriced = new LinkedHashMap<String, Double>();
        for (var one : chosen) {
            one.priced().forEach((kind, many) -> priced.merge(kind, many, Double::sum));
            one.unpriced().forEach((kind, many) -> unpriced.merge(kind, many, Double::sum));
        }
        return new PlanOutlook(
                SeasonSimulation.play(
                        chosen.stream().map(one -> clutch(draft, one)).toList(),
                        draft.steps(),
                        RUNS,
                        SEED),
                mostFirst(priced),
                mostFirst(unpriced),
                kept(draft, chosen),
                weeks(draft, chosen));
    }

    private static SequencedMap<String, Double> mostFirst(SequencedMap<String, Double> some) {
        var sorted = new LinkedHashMap<String, Double>();
        some.entrySet().stream()
                .sorted((a, b) -> Double.compare(b.getValue(), a.getValue()))
                .forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return sorted;
    }

    private static SeasonSimulation.Clutch clutch(PlanDraft draft, Candidate one) {
        var laying = one.dam().laying();
        var lays = laying.map(PlanAnimal.Laying::lays).orElse(0.0);
        return new SeasonSimulation.Clutch(
                new ParentDraw(
                                draft.model(),
                                one.dam().genotype(),
                                one.sire().genotype(),
                                one.together(),
                                draft.prices())
                        ::draw,
                lays,
                laying.map(PlanAnimal.Laying::eggs).orElseGet(LinkedHashMap::new),
                draft.sizes().hatches() * (1 - one.dying()),
                lays > 0 ? (one.worth().projects() + one.worth().questions()) / lays : 0);
    }

    /// What each project is to keep of this season's clutches, at the chance of all pairs that
    /// may bring it together.
    private static List<Kept> kept(PlanDraft draft, List<Candidate> chosen) {
        record Aim(String project, Object shows, Object sex, Object carries) {}
        var kept = new LinkedHashMap<Aim, Kept>();
        for (var one : chosen) {
            for (var step : one.steps()) {
                for (var k = 0; k < step.keep().size(); k++) {
                    var keeping = step.keep().get(k);
                    var chance =
                            one.dam()
                                    .laying()
                                    .map(
                                            laying ->
                                                    ProjectStep.chance(
                                                            keeping,
                                                            laying.lays(),
                                                            laying.eggs(),
                                                            draft.sizes().hatches()))
                                    .orElse(0.0);
                    var place = k;
                    kept.merge(
                            new Aim(
                                    step.project().name(),
                                    keeping.shows(),
                                    keeping.sex(),
                                    keeping.carries()),
                            new Kept(step, place, chance, List.of(one.pair())),
                            PlanOutlook::both);
                }
            }
        }
        return List.copyOf(kept.values());
    }

    /// The same pair may be a step of several routes; its clutch counts once.
    private static Kept both(Kept before, Kept more) {
        if (before.pairs().containsAll(more.pairs())) {
            return before.chance() >= more.chance()
                    ? before
                    : new Kept(before.step(), before.keeping(), more.chance(), before.pairs());
        }
        var pairs = new ArrayList<>(before.pairs());
        pairs.addAll(more.pairs());
        return new Kept(
                before.step(),
                before.keeping(),
                1 - (1 - before.chance()) * (1 - more.chance()),
                pairs);
    }

    private static List<Week> weeks(PlanDraft draft, List<Candidate> chosen) {
        var boxes = new LinkedHashMap<String, Double>();
        var places = new LinkedHashMap<String, Double>();
        for (var one : chosen) {
            draft.boxes(one).forEach((week, much) -> boxes.merge(week, much, Double::sum));
            draft.places(one).forEach((week, much) -> places.merge(week, much, Double::sum));
        }
        return draft.weeks().mondays().stream()
                .map(
                        monday ->
                                new Week(
                                        monday.toString(),
                                        boxes.getOrDefault(monday.toString(), 0.0),
                                        places.getOrDefault(monday.toString(), 0.0)))
                .toList();
    }
}
