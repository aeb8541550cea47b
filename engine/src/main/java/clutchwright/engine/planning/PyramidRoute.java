package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Plans that bring the wanted genes together two heaps at a time: who shows one heap is crossed
/// with who shows another, the young, who surely carry both, are bred with each other until both
/// show, and so on, along every tree by which the genes can be heaped up.
///
/// What the house has already, showing or surely carrying, is begun with. As gene pyramiding is
/// done by breeders of plants: Servin, Martin, Mezard & Hospital 2004, Genetics 168:513-523.
final class PyramidRoute {

    private static final int MOST_UNITS = 7;

    private final Prospects prospects;
    private final GenePool pool;
    private final List<Acquisition> owned;
    private final List<Integer> units = new ArrayList<>();
    private final Map<Integer, Heap> showing = new HashMap<>();

    PyramidRoute(
            Prospects prospects, GenePool pool, List<Acquisition> dams, List<Acquisition> sires) {
        this.prospects = prospects;
        this.pool = pool;
        this.owned = new ArrayList<>(dams);
        this.owned.addAll(sires);
        for (var u = 0; u < pool.units.size(); u++) {
            if (pool.units.get(u).wantedCopiesOfGoal() > 0) {
                units.add(u);
            }
        }
    }

    /// A way to come by a female and one to come by a male.
    private record Heap(Optional<Acquisition> female, Optional<Acquisition> male) {

        Heap or(Acquisition other) {
            return other.kind().sex() == Sex.FEMALE
                    ? new Heap(better(female, other), male)
                    : new Heap(female, better(male, other));
        }

        Optional<Acquisition> of(Sex sex) {
            return sex == Sex.FEMALE ? female : male;
        }
    }

    private static final Heap NONE = new Heap(Optional.empty(), Optional.empty());

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static Optional<Acquisition> better(Optional<Acquisition> one, Acquisition other) {
        return Optional.of(one.filter(found -> effort(found) <= effort(other)).orElse(other));
    }

    private static double effort(Acquisition acquisition) {
        return acquisition.ready().meanWait() + acquisition.clutches() / 10;
    }

    /// The last matings of all such plans; none where there are no two genes, or very many.
    List<Mating> matings() {
        if (units.size() < 2 || units.size() > MOST_UNITS) {
            return List.of();
        }
        var all = (1 << units.size()) - 1;
        for (var heap = 1; heap < all; heap++) {
            showing.put(heap, showing(heap));
        }
        var last = new ArrayList<Mating>();
        for (var hets : carrying(all)) {
            last.add(prospects.mating(hets.female().orElseThrow(), hets.male().orElseThrow()));
        }
        last.sort(Comparator.comparingDouble(mating -> mating.dam.clutches()));
        return last;
    }

    /// Those that surely show a heap: of the house, else bred from who carries it.
    private Heap showing(int heap) {
        var found = NONE;
        for (var animal : owned) {
            if (holds(animal.kind(), heap, true)) {
                found = found.or(animal);
            }
        }
        if (Integer.bitCount(heap) == 1 && isComplete(found)) {
            return found;
        }
        for (var hets : carrying(heap)) {
            var mating = prospects.mating(hets.female().orElseThrow(), hets.male().orElseThrow());
            for (var young : young(mating, heap, true)) {
                found = found.or(young);
            }
        }
        return found;
    }

    private static boolean isComplete(Heap heap) {
        return heap.female().isPresent() && heap.male().isPresent();
    }

    /// Those that surely carry a heap, by each way in which it falls in two.
    private List<Heap> carrying(int heap) {
        var heaps = new ArrayList<Heap>();
        var own = ofHouse(heap);
        heaps.add(own);
        for (var part = (heap - 1) & heap; part > 0; part = (part - 1) & heap) {
            var rest = heap & ~part;
            if (part > rest) {
                var bred = crossed(heap, part, rest);
                heaps.add(bred);
                // One of the house, where there is one, with one that is bred.
                heaps.add(new Heap(own.female().or(bred::female), bred.male()));
                heaps.add(new Heap(bred.female(), own.male().or(bred::male)));
            }
        }
        return heaps.stream().filter(PyramidRoute::isComplete).distinct().toList();
    }

    private Heap ofHouse(int heap) {
        var own = NONE;
        for (var animal : owned) {
            if (holds(animal.kind(), heap, false)) {
                own = own.or(animal);
            }
        }
        return own;
    }

    /// Young of who shows one part with who shows the other.
    private Heap crossed(int heap, int part, int rest) {
        var one = showing.getOrDefault(part, NONE);
        var other = showing.getOrDefault(rest, NONE);
        var found = NONE;
        for (var sex : Sex.values()) {
            var mother = sex == Sex.FEMALE ? one : other;
            var father = sex == Sex.FEMALE ? other : one;
            if (mother.of(Sex.FEMALE).isPresent() && father.of(Sex.MALE).isPresent()) {
                var mating =
                        prospects.mating(
                                mother.of(Sex.FEMALE).orElseThrow(),
                                father.of(Sex.MALE).orElseThrow());
                for (var young : young(mating, heap, false)) {
                    found = found.or(young);
                }
            }
        }
        return found;
    }

    /// Of each sex the commonest young that surely hold the heap.
    private List<Acquisition> young(Mating mating, int heap, boolean show) {
        var found = new ArrayList<Acquisition>();
        if (mating.canBegin()) {
            for (var sex : Sex.values()) {
                mating.pairing.groups().stream()
                        .filter(group -> group.kind().sex() == sex)
                        .filter(group -> holds(group.kind(), heap, show))
                        .max(Comparator.comparingDouble(Pairing.Group::chance))
                        .ifPresent(group -> found.add(prospects.raised(mating, group)));
            }
        }
        return found;
    }

    /// @param show whether it is to be what the goal asks for, or only to carry some of it
    private boolean holds(Kind kind, int heap, boolean show) {
        for (var i = 0; i < units.size(); i++) {
            if ((heap & 1 << i) != 0) {
                var unit = pool.units.get(units.get(i));
                var mix = kind.mixes().get(units.get(i));
                var held =
                        show
                                ? unit.meeting(mix).compareTo(GenePool.SURE) >= 0
                                : unit.carriesWanted(mix);
                if (!held) {
                    return false;
                }
            }
        }
        return true;
    }
}
