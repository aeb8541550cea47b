package clutchwright.engine.planning;

import clutchwright.engine.planning.Acquisition.Owned;
import clutchwright.engine.planning.Acquisition.Raised;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/// The matings of a route in the order in which they come about, the one for the goal last.
///
/// @param steps each after those that its parents come from
record RoutePlan(GenePool pool, RouteLimits limits, List<Step> steps) {

    RoutePlan {
        steps = List.copyOf(steps);
    }

    /// @param keep what is kept of it, by number of the [Raised]; none of the last step
    record Step(Mating mating, List<Slot> keep, Source dam, Source sire, boolean isLast) {

        Step {
            keep = List.copyOf(keep);
        }

        /// Clutches a season, as far as there are dams.
        int perSeason() {
            return isLast ? mating.odds.goalPlanned() : mating.planned(sought());
        }

        Step withSingles() {
            return new Step(mating, keep.stream().map(Slot::asSingle).toList(), dam, sire, isLast);
        }

        List<PairingOdds.Sought> sought() {
            return keep.stream()
                    .map(slot -> new PairingOdds.Sought(slot.target(), slot.count()))
                    .toList();
        }
    }

    /// @param number within the route, from 1
    record Slot(int number, Pairing.Target target, Kind kind, int count) {
        Slot asSingle() {
            return new Slot(number, target, kind, 1);
        }
    }

    /// Where a parent comes from.
    sealed interface Source {
        record OfStock(Owned owned) implements Source {}

        record OfSlot(int step, int slot, Slot kept) implements Source {}
    }

    static RoutePlan of(GenePool pool, RouteLimits limits, Mating last) {
        var needed = new TreeMap<Integer, Raised>();
        add(last.dam, needed);
        add(last.sire, needed);
        var byMating = new TreeMap<Integer, List<Raised>>();
        needed.values()
                .forEach(
                        raised ->
                                byMating.computeIfAbsent(
                                                raised.mating().number, _ -> new ArrayList<>())
                                        .add(raised));
        var steps = new ArrayList<Step>();
        var places = new HashMap<Raised, Source.OfSlot>();
        var number = 1;
        for (var raised : byMating.values()) {
            var mating = raised.getFirst().mating();
            var slots = new ArrayList<Slot>();
            for (var counts : byTarget(raised).entrySet()) {
                var most =
                        counts.getValue().stream()
                                .max(Comparator.comparingInt(Raised::count))
                                .orElseThrow();
                var slot = new Slot(number++, most.target(), most.kind(), most.count());
                for (var one : counts.getValue()) {
                    places.put(one, new Source.OfSlot(steps.size(), slots.size(), slot));
                }
                slots.add(slot);
            }
            steps.add(
                    new Step(
                            mating,
                            slots,
                            source(mating.dam, places),
                            source(mating.sire, places),
                            false));
        }
        steps.add(
                new Step(
                        last,
                        List.of(),
                        source(last.dam, places),
                        source(last.sire, places),
                        true));
        return new RoutePlan(pool, limits, steps);
    }

    /// The same with one animal kept where more females are: slower, and for fewer clutches.
    RoutePlan withSingleFemales() {
        return new RoutePlan(pool, limits, steps.stream().map(Step::withSingles).toList());
    }

    private static void add(Acquisition acquisition, Map<Integer, Raised> needed) {
        acquisition.closure().forEach(raised -> needed.put(raised.number(), raised));
    }

    private static Map<Pairing.Target, List<Raised>> byTarget(List<Raised> raised) {
        var targets = new LinkedHashMap<Pairing.Target, List<Raised>>();
        raised.forEach(
                one -> targets.computeIfAbsent(one.target(), _ -> new ArrayList<>()).add(one));
        return targets;
    }

    private static Source source(Acquisition acquisition, Map<Raised, Source.OfSlot> places) {
        return switch (acquisition) {
            case Owned owned -> new Source.OfStock(owned);
            case Raised raised -> {
                var place = places.get(raised);
                if (place == null) {
                    throw new IllegalStateException(raised + " is kept of no step");
                }
                yield place;
            }
        };
    }
}
