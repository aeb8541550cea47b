package clutchwright.engine.planning;

import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.RoutePlan.Source;
import clutchwright.engine.planning.RoutePlan.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Writes a plan down as the steps of a [Route].
final class RouteWriter {

    private final RoutePlan plan;
    private final GenePool pool;

    /// The season in which a kept animal hatches, by its number.
    private final Map<Integer, Integer> hatched = new HashMap<>();

    private final Map<Integer, Sex> sexes = new HashMap<>();

    RouteWriter(RoutePlan plan) {
        this.plan = plan;
        this.pool = plan.pool();
    }

    List<RouteStep> steps() {
        var steps = new ArrayList<RouteStep>();
        for (var step : plan.steps()) {
            steps.add(step.isLast() ? last(step) : earlier(step));
        }
        return steps;
    }

    private RouteStep earlier(Step step) {
        var season = season(step);
        var keep = new ArrayList<Keeping>();
        for (var slot : step.keep()) {
            hatched.put(slot.number(), season);
            sexes.put(slot.number(), slot.kind().sex());
            var shows = step.mating().pairing.lookOf(slot.target());
            keep.add(
                    new Keeping(
                            slot.number(),
                            shows,
                            slot.target().sex(),
                            slot.count(),
                            step.mating().pairing.chanceOf(slot.target()),
                            carries(slot.kind(), shows),
                            false));
        }
        var clutches = step.mating().planned(step.sought());
        return new RouteStep(
                season,
                parent(step.dam()),
                parent(step.sire()),
                clutches,
                keep,
                step.mating().odds.chance(step.sought(), clutches));
    }

    private RouteStep last(Step step) {
        var pairing = step.mating().pairing;
        var keep = new ArrayList<Keeping>();
        var number = hatched.size() + 1;
        var goal = pool.goal;
        for (var sex : Sex.values()) {
            var wanted = sex == Sex.MALE ? goal.males() : goal.females();
            var target = pairing.goal(Optional.of(sex));
            if (wanted > 0 && target.isPresent()) {
                keep.addAll(goalKeeping(number++, pairing, target.get(), wanted));
            }
        }
        if (goal.either() > 0) {
            var target = pairing.goal(Optional.empty());
            if (target.isPresent()) {
                keep.addAll(goalKeeping(number, pairing, target.get(), goal.either()));
            }
        }
        var clutches = step.mating().odds.goalPlanned();
        return new RouteStep(
                season(step),
                parent(step.dam()),
                parent(step.sire()),
                clutches,
                keep,
                step.mating().odds.goalChance(clutches));
    }

    /// What shows is what all the looks that will do have in common.
    private List<Keeping> goalKeeping(
            int number, Pairing pairing, Pairing.Target target, int count) {
        return List.of(
                new Keeping(
                        number,
                        pairing.commonLookOf(target),
                        target.sex(),
                        count,
                        pairing.chanceOf(target),
                        carriesOfGoal(pairing, target),
                        true));
    }

    private int season(Step step) {
        return Math.max(season(step.dam()), season(step.sire()));
    }

    private int season(Source source) {
        return switch (source) {
            case Source.OfStock(var owned) ->
                    owned.first().stream().mapToInt(Integer::intValue).min().orElse(1);
            case Source.OfSlot(_, _, var slot) ->
                    hatched.getOrDefault(slot.number(), 1)
                            + pool.biology.seasonsToMaturity(slot.kind().sex());
        };
    }

    private static RouteStep.Parent parent(Source source) {
        return switch (source) {
            case Source.OfStock(var owned) -> new RouteStep.Parent.Own(owned.animals());
            case Source.OfSlot(_, _, var slot) -> new RouteStep.Parent.Kept(slot.number());
        };
    }

    private List<Outcome.Held> carries(Kind kind, List<Phenotype> shows) {
        var all = new ArrayList<Outcome.Held>();
        for (var u = 0; u < pool.units.size(); u++) {
            all.addAll(pool.units.get(u).unseen(kind.mixes().get(u), shows));
        }
        return all;
    }

    private List<Outcome.Held> carriesOfGoal(Pairing pairing, Pairing.Target target) {
        var single = target.keys().stream().allMatch(keys -> keys.size() == 1);
        return single ? carries(pairing.kindOf(target), pairing.lookOf(target)) : List.of();
    }
}
