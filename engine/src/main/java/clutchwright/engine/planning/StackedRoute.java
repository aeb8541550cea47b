package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// The plain plan that stacks one gene a generation: cross who has the genes so far with who has
/// the next, breed the young with each other until all show, and so on.
///
/// It is always among the routes that are played through, so that none that is given back is
/// worse.
final class StackedRoute {

    private final Prospects prospects;
    private final GenePool pool;
    private final List<Acquisition> dams;
    private final List<Acquisition> sires;

    StackedRoute(
            Prospects prospects, GenePool pool, List<Acquisition> dams, List<Acquisition> sires) {
        this.prospects = prospects;
        this.pool = pool;
        this.dams = dams;
        this.sires = sires;
    }

    /// The last mating of the plan; none if the stock does not allow it.
    List<Mating> matings() {
        var units = new ArrayList<Integer>();
        for (var u = 0; u < pool.units.size(); u++) {
            if (pool.units.get(u).wantedCopiesOfGoal() > 0) {
                units.add(u);
            }
        }
        var holders = new ArrayList<>(dams);
        holders.addAll(sires);
        var current = having(holders, units.getFirst());
        for (var next = 1; next < units.size(); next++) {
            var partners = having(holders, units.get(next));
            var hets = young(current, partners, units.subList(0, next + 1), false);
            if (hets.isEmpty()) {
                return List.of();
            }
            if (next == units.size() - 1) {
                return List.of(prospects.mating(hets.getFirst(), hets.getLast()));
            }
            current =
                    young(
                            List.of(hets.getFirst()),
                            List.of(hets.getLast()),
                            units.subList(0, next + 1),
                            true);
        }
        return List.of();
    }

    private List<Acquisition> having(List<Acquisition> animals, int unit) {
        return animals.stream()
                .filter(
                        animal ->
                                pool.units
                                                .get(unit)
                                                .meeting(animal.kind().mixes().get(unit))
                                                .compareTo(GenePool.SURE)
                                        >= 0)
                .toList();
    }

    /// A female and a male young of the same look that surely have, or surely carry, those genes:
    /// of the first pair that can be made.
    private List<Acquisition> young(
            List<Acquisition> some, List<Acquisition> others, List<Integer> units, boolean all) {
        for (var one : some) {
            for (var other : others) {
                if (one.kind().sex() != other.kind().sex()) {
                    var dam = dams.contains(one) || isFemale(one) ? one : other;
                    var found = young(dam, dam.equals(one) ? other : one, units, all);
                    if (!found.isEmpty()) {
                        return found;
                    }
                }
            }
        }
        return List.of();
    }

    private static boolean isFemale(Acquisition acquisition) {
        return acquisition.kind().sex() == Sex.FEMALE;
    }

    private List<Acquisition> young(
            Acquisition dam, Acquisition sire, List<Integer> units, boolean all) {
        var mating = prospects.mating(dam, sire);
        if (!mating.canBegin()) {
            return List.of();
        }
        var pair = new ArrayList<Acquisition>();
        for (var sex : Sex.values()) {
            mating.pairing.groups().stream()
                    .filter(group -> group.kind().sex() == sex)
                    .filter(group -> units.stream().allMatch(unit -> holds(group, unit, all)))
                    .max(Comparator.comparingDouble(Pairing.Group::chance))
                    .ifPresent(group -> pair.add(prospects.raised(mating, group)));
        }
        return pair.size() == 2 ? pair : List.of();
    }

    private boolean holds(Pairing.Group group, int number, boolean all) {
        var unit = pool.units.get(number);
        var mix = group.kind().mixes().get(number);
        return all ? unit.meeting(mix).compareTo(GenePool.SURE) >= 0 : unit.carriesWanted(mix);
    }
}
