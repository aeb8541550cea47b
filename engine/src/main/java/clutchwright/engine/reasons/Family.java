package clutchwright.engine.reasons;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.Stream;

/// The kin of one animal, each animal of it once: by way of its young with each mate, of its
/// mates, or of its parents.
///
/// Where the family has loops an animal is counted on the side that leads to it in the fewest
/// steps.
final class Family {

    /// @param mates the other parent, as far as recorded; several where the sire is in doubt
    /// @param young of the couple
    /// @param further those who descend from the animal only through them
    /// @param mateSide kin by the mate
    record Branch(
            List<AnimalId> mates,
            List<AnimalId> young,
            List<AnimalId> further,
            List<AnimalId> mateSide) {}

    /// Young of a parent of the animal's with the same mate, and what descends from them.
    record Brood(List<AnimalId> dams, List<AnimalId> sires, List<AnimalId> young) {}

    final SequencedMap<List<AnimalId>, Branch> branches = new LinkedHashMap<>();
    final List<AnimalId> parentsSide = new ArrayList<>();

    /// Descendants through the young with more than one mate.
    final List<AnimalId> mixed = new ArrayList<>();

    private final Pedigree pedigree;
    private final AnimalId animal;

    Family(Pedigree pedigree, AnimalId animal) {
        this.pedigree = pedigree;
        this.animal = animal;
        var young = new LinkedHashMap<List<AnimalId>, List<AnimalId>>();
        for (var one : pedigree.offspringOf(animal)) {
            young.computeIfAbsent(matesOf(one), _ -> new ArrayList<>()).add(one);
        }
        var lines = new HashMap<AnimalId, Set<List<AnimalId>>>();
        young.forEach(
                (mates, some) ->
                        descendants(some)
                                .forEach(
                                        one ->
                                                lines.computeIfAbsent(one, _ -> new HashSet<>())
                                                        .add(mates)));
        var direct = new HashSet<>(pedigree.offspringOf(animal));
        young.forEach(
                (mates, some) ->
                        branches.put(
                                mates,
                                new Branch(mates, some, new ArrayList<>(), new ArrayList<>())));
        lines.forEach(
                (one, through) -> {
                    if (!direct.contains(one)) {
                        (through.size() == 1
                                        ? theBranch(through.iterator().next()).further()
                                        : mixed)
                                .add(one);
                    }
                });
        placeOthers(lines.keySet());
    }

    private Branch theBranch(List<AnimalId> mates) {
        var branch = branches.get(mates);
        if (branch == null) {
            throw new IllegalStateException("no young with " + mates);
        }
        return branch;
    }

    /// Ancestors and how many generations back, nearest first.
    SequencedMap<AnimalId, Integer> ancestors() {
        var all = new LinkedHashMap<AnimalId, Integer>();
        var waiting = new ArrayDeque<AnimalId>();
        waiting.add(animal);
        while (!waiting.isEmpty()) {
            var one = waiting.remove();
            var generation = all.getOrDefault(one, 0) + 1;
            parents(one)
                    .filter(parent -> all.putIfAbsent(parent, generation) == null)
                    .forEach(waiting::add);
        }
        return all;
    }

    /// The animal's siblings, couple by couple; those who share both parents first.
    List<Brood> siblings() {
        var own = parents(animal).toList();
        var broods = new LinkedHashMap<Parentage, List<AnimalId>>();
        for (var parent : own) {
            for (var one : pedigree.offspringOf(parent)) {
                if (!one.equals(animal)) {
                    var some =
                            broods.computeIfAbsent(
                                    pedigree.theMember(one).parentage(), _ -> new ArrayList<>());
                    if (!some.contains(one)) {
                        some.add(one);
                    }
                }
            }
        }
        var mine = pedigree.theMember(animal).parentage();
        return broods.entrySet().stream()
                .sorted((a, b) -> Boolean.compare(b.getKey().equals(mine), a.getKey().equals(mine)))
                .map(
                        entry ->
                                new Brood(
                                        entry.getKey().dams(),
                                        entry.getKey().sires(),
                                        entry.getValue()))
                .toList();
    }

    /// The animals and all that descends from them.
    Set<AnimalId> descendants(Collection<AnimalId> some) {
        var all = new LinkedHashSet<>(some);
        var waiting = new ArrayDeque<>(some);
        while (!waiting.isEmpty()) {
            for (var young : pedigree.offspringOf(waiting.remove())) {
                if (all.add(young)) {
                    waiting.add(young);
                }
            }
        }
        return all;
    }

    /// Puts whoever does not descend from the animal on the side that leads to it soonest.
    private void placeOthers(Set<AnimalId> descendants) {
        var side = new HashMap<AnimalId, List<AnimalId>>();
        var waiting = new ArrayDeque<AnimalId>();
        side.put(animal, parentsSide);
        for (var parent : parents(animal).toList()) {
            side.put(parent, parentsSide);
            waiting.add(parent);
        }
        for (var branch : branches.values()) {
            for (var one : branch.young()) {
                if (side.putIfAbsent(one, branch.mateSide()) == null) {
                    waiting.add(one);
                }
            }
        }
        while (!waiting.isEmpty()) {
            var one = waiting.remove();
            var here = sideOf(side, one);
            if (!descendants.contains(one)) {
                here.add(one);
            }
            Stream.concat(parents(one), pedigree.offspringOf(one).stream())
                    .filter(next -> side.putIfAbsent(next, here) == null)
                    .forEach(waiting::add);
        }
    }

    private static List<AnimalId> sideOf(Map<AnimalId, List<AnimalId>> side, AnimalId one) {
        var found = side.get(one);
        if (found == null) {
            throw new IllegalStateException("no side of " + one);
        }
        return found;
    }

    private List<AnimalId> matesOf(AnimalId young) {
        var parentage = pedigree.theMember(young).parentage();
        return parentage.dams().contains(animal) ? parentage.sires() : parentage.dams();
    }

    private Stream<AnimalId> parents(AnimalId one) {
        var parentage = pedigree.theMember(one).parentage();
        return Stream.concat(parentage.dams().stream(), parentage.sires().stream());
    }
}
