package clutchwright.engine.planning;

import clutchwright.engine.planning.IntegerProgramme.Answer;
import clutchwright.engine.planning.IntegerProgramme.Row;
import clutchwright.engine.planning.IntegerProgramme.Variable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.function.Function;

/// Who goes to whom this season, as an integer programme: the pairings that are worth most
/// together, under the limits of the house.
///
/// Each female is paired with one male at most. A kind's later hatchlings are worth no more than
/// its earlier ones, so that selling the dearest first is no condition but what is best. Source of
/// the formulas: `docs/mathematics.md`, "The season's plan".
///
/// @param pairings that may be made, each pair once
/// @param prices by kind, the dearest first
/// @param pinned pairs that are to be made
public record SeasonPlan(
        List<ProposedPairing> pairings,
        SequencedMap<String, List<PriceStep>> prices,
        PlanLimits limits,
        List<ProposedPairing> pinned) {

    private static final double MADE = 0.5;

    public SeasonPlan {
        pairings = List.copyOf(pairings);
        pinned = List.copyOf(pinned);
        prices = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(prices));
        prices.forEach(SeasonPlan::requireFalling);
        if (!pairings.containsAll(pinned)) {
            throw new IllegalArgumentException("a pinned pair is not among the pairings");
        }
    }

    private static void requireFalling(String kind, List<PriceStep> steps) {
        for (var i = 1; i < steps.size(); i++) {
            if (steps.get(i).price() > steps.get(i - 1).price()) {
                throw new IllegalArgumentException(kind + ": a later hatchling at a higher price");
            }
        }
    }

    /// Those that may be chosen: not excluded, and not closer kin than is allowed.
    public List<ProposedPairing> admissible() {
        return pairings.stream()
                .filter(pair -> !pair.isExcluded() && pair.kinship() <= limits.kinship())
                .toList();
    }

    /// A variable for each admissible pairing, in their order, then one for each price of each
    // kind.
    public IntegerProgramme programme() {
        var pairs = admissible();
        var variables = new ArrayList<Variable>();
        pairs.forEach(pair -> variables.add(new Variable(pair.toString(), true, 1, pair.worth())));
        var rows = new ArrayList<Row>();
        perGroup(pairs, ProposedPairing::dam)
                .forEach((dam, hers) -> rows.add(Row.atMost("female " + dam, hers, 1)));
        perGroup(pairs, ProposedPairing::sire)
                .forEach(
                        (sire, his) -> {
                            var uses = limits.uses().get(sire);
                            if (uses != null) {
                                rows.add(Row.atMost("male " + sire, his, uses));
                            }
                        });
        limits.clutches()
                .ifPresent(
                        most -> rows.add(Row.atMost("clutches", weights(pairs, _ -> 1.0), most)));
        limits.projects()
                .forEach(
                        (project, share) ->
                                rows.add(
                                        new Row(
                                                "project " + project,
                                                weights(
                                                        pairs,
                                                        pair ->
                                                                pair.projects().contains(project)
                                                                        ? 1.0
                                                                        : 0.0),
                                                share.least(),
                                                share.most())));
        weekly(rows, pairs, "boxes in ", limits.boxes(), ProposedPairing::boxes);
        weekly(rows, pairs, "places in ", limits.places(), ProposedPairing::places);
        for (var pair : pinned) {
            var at = pairs.indexOf(pair);
            rows.add(Row.atLeast("pinned " + pair, at < 0 ? Map.of() : Map.of(at, 1.0), 1));
        }
        prices.forEach((kind, steps) -> sale(variables, rows, pairs, kind, steps));
        return new IntegerProgramme(variables, rows);
    }

    private static void weekly(
            List<Row> rows,
            List<ProposedPairing> pairs,
            String name,
            Map<String, Double> most,
            Function<ProposedPairing, Map<String, Double>> use) {
        most.forEach(
                (week, there) ->
                        rows.add(
                                Row.atMost(
                                        name + week,
                                        weights(
                                                pairs,
                                                pair -> use.apply(pair).getOrDefault(week, 0.0)),
                                        there)));
    }

    /// No more is sold at all prices together than hatches.
    private static void sale(
            List<Variable> variables,
            List<Row> rows,
            List<ProposedPairing> pairs,
            String kind,
            List<PriceStep> steps) {
        var weights = weights(pairs, pair -> -pair.hatchlings().getOrDefault(kind, 0.0));
        for (var step : steps) {
            weights.put(variables.size(), 1.0);
            variables.add(new Variable(kind, false, step.hatchlings(), step.price()));
        }
        rows.add(Row.atMost("kind " + kind, weights, 0));
    }

    private static SequencedMap<Integer, Double> weights(
            List<ProposedPairing> pairs, Function<ProposedPairing, Double> of) {
        var weights = new LinkedHashMap<Integer, Double>();
        for (var i = 0; i < pairs.size(); i++) {
            var weight = of.apply(pairs.get(i));
            if (weight != 0) {
                weights.put(i, weight);
            }
        }
        return weights;
    }

    private static SequencedMap<String, Map<Integer, Double>> perGroup(
            List<ProposedPairing> pairs, Function<ProposedPairing, String> by) {
        var groups = new LinkedHashMap<String, Map<Integer, Double>>();
        for (var i = 0; i < pairs.size(); i++) {
            groups.computeIfAbsent(by.apply(pairs.get(i)), _ -> new LinkedHashMap<>()).put(i, 1.0);
        }
        return groups;
    }

    /// The pairings that an answer to [#programme()] makes.
    public List<ProposedPairing> chosen(Answer.Found answer) {
        var pairs = admissible();
        var chosen = new ArrayList<ProposedPairing>();
        for (var i = 0; i < pairs.size(); i++) {
            if (answer.values().get(i) > MADE) {
                chosen.add(pairs.get(i));
            }
        }
        return chosen;
    }

    /// Hatchlings of each priced kind that those pairings are expected to give.
    public SequencedMap<String, Double> hatchlings(List<ProposedPairing> chosen) {
        var expected = new LinkedHashMap<String, Double>();
        prices.keySet()
                .forEach(
                        kind ->
                                expected.put(
                                        kind,
                                        chosen.stream()
                                                .mapToDouble(
                                                        pair ->
                                                                pair.hatchlings()
                                                                        .getOrDefault(kind, 0.0))
                                                .sum()));
        return expected;
    }

    /// What those pairings are worth together, each kind's dearest sold first.
    public double worth(List<ProposedPairing> chosen) {
        var sum = chosen.stream().mapToDouble(ProposedPairing::worth).sum();
        for (var kind : hatchlings(chosen).entrySet()) {
            var left = kind.getValue();
            for (var step : prices.getOrDefault(kind.getKey(), List.of())) {
                var sold = Math.min(left, step.hatchlings());
                sum += sold * step.price();
                left -= sold;
            }
        }
        return sum;
    }

    /// The same with a pair pinned besides.
    public SeasonPlan pinning(ProposedPairing pair) {
        var all = new ArrayList<>(pinned);
        all.add(pair);
        return new SeasonPlan(pairings, prices, limits, all);
    }
}
