package clutchwright.engine.reasons;

import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Pedigree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;

/// The part of a collection around one animal; whoever is at its rim has unknown parents.
final class Vicinity {

    private Vicinity() {}

    /// The animal and its kin, nearest first.
    ///
    /// @param most so many animals at most
    static Set<AnimalId> near(Pedigree pedigree, AnimalId animal, int steps, int most) {
        var found = new LinkedHashMap<AnimalId, Integer>();
        var waiting = new ArrayDeque<AnimalId>();
        found.put(animal, 0);
        waiting.add(animal);
        while (!waiting.isEmpty()) {
            var one = waiting.remove();
            var distance = found.getOrDefault(one, 0) + 1;
            if (distance > steps) {
                break;
            }
            var parentage = pedigree.theMember(one).parentage();
            Stream.of(parentage.dams(), parentage.sires(), pedigree.offspringOf(one))
                    .flatMap(Collection::stream)
                    .filter(next -> found.size() < most)
                    .filter(next -> found.putIfAbsent(next, distance) == null)
                    .forEach(waiting::add);
        }
        return new LinkedHashSet<>(found.keySet());
    }

    /// @param near the animals of the part
    static CollectionRecords of(CollectionRecords records, Set<AnimalId> near) {
        var members = new ArrayList<Member>();
        var own = new HashMap<AnimalId, OwnRecords>();
        for (var one : near) {
            var member = records.pedigree().theMember(one);
            members.add(
                    new Member(
                            one, member.sex(), member.hatched(), within(member.parentage(), near)));
            if (records.own().containsKey(one)) {
                own.put(one, records.of(one));
            }
        }
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new CollectionRecords(records.model(), pedigree, own);
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalStateException("fewer records of descent, and " + faults);
        };
    }

    private static Parentage within(Parentage parentage, Set<AnimalId> near) {
        return switch (parentage) {
            case Parentage.Founder() -> parentage;
            case Parentage.Parthenogenetic(var dam) ->
                    near.contains(dam) ? parentage : new Parentage.Founder();
            case Parentage.Biparental(var dam, var sire) ->
                    Parentage.of(
                            near.containsAll(parentage.dams()) ? dam : new Dam.Unknown(),
                            near.containsAll(parentage.sires()) ? sire : new Sire.Unknown());
        };
    }
}
