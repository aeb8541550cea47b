package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.Sex;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedCollection;
import java.util.SequencedMap;
import java.util.stream.Stream;

/// Who descends from whom: acyclic, every parent on record, parents before their offspring.
public final class Pedigree {

    private final SequencedMap<AnimalId, Member> members;
    private final Map<AnimalId, List<AnimalId>> offspring;

    private Pedigree(
            SequencedMap<AnimalId, Member> members, Map<AnimalId, List<AnimalId>> offspring) {
        this.members = members;
        this.offspring = offspring;
    }

    /// Orders and checks the members.
    ///
    /// @param members in any order
    public static Result of(Collection<Member> members) {
        var faults = new ArrayList<PedigreeFault>();
        var byId = new LinkedHashMap<AnimalId, Member>();
        for (var member : members) {
            if (byId.putIfAbsent(member.id(), member) != null) {
                faults.add(new PedigreeFault.ListedTwice(member.id()));
            }
        }
        byId.values().forEach(member -> checkParents(member, byId, faults));
        var ordered = new LinkedHashMap<AnimalId, Member>();
        byId.keySet().forEach(id -> place(id, byId, ordered, faults));
        if (!faults.isEmpty()) {
            return new Result.Faulty(faults);
        }
        var offspring = new HashMap<AnimalId, List<AnimalId>>();
        for (var member : ordered.values()) {
            parentsOf(member)
                    .forEach(
                            parent ->
                                    offspring
                                            .computeIfAbsent(parent, _ -> new ArrayList<>())
                                            .add(member.id()));
        }
        return new Result.Sound(
                new Pedigree(Collections.unmodifiableSequencedMap(ordered), offspring));
    }

    /// The same animals, in the same order, of the same descent.
    @Override
    public boolean equals(Object that) {
        return that instanceof Pedigree other
                && List.copyOf(members.values()).equals(List.copyOf(other.members.values()));
    }

    @Override
    public int hashCode() {
        return List.copyOf(members.values()).hashCode();
    }

    /// Parents before offspring.
    public SequencedCollection<Member> members() {
        return members.sequencedValues();
    }

    public boolean contains(AnimalId id) {
        return members.containsKey(id);
    }

    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public Member theMember(AnimalId id) {
        var member = members.get(id);
        if (member == null) {
            throw new IllegalArgumentException("animal " + id + " is not in the pedigree");
        }
        return member;
    }

    /// Its young, those of a sire in doubt included, parents before offspring.
    public List<AnimalId> offspringOf(AnimalId id) {
        return List.copyOf(offspring.getOrDefault(id, List.of()));
    }

    private static void checkParents(
            Member member, Map<AnimalId, Member> byId, List<PedigreeFault> faults) {
        var parentage = member.parentage();
        parentage.dams().forEach(dam -> checkParent(member, dam, Sex.FEMALE, byId, faults));
        parentage.sires().forEach(sire -> checkParent(member, sire, Sex.MALE, byId, faults));
        parentage.dams().stream()
                .filter(parentage.sires()::contains)
                .forEach(both -> faults.add(new PedigreeFault.DamIsSire(member.id(), both)));
    }

    private static void checkParent(
            Member member,
            AnimalId parentId,
            Sex needed,
            Map<AnimalId, Member> byId,
            List<PedigreeFault> faults) {
        var parent = byId.get(parentId);
        if (parent == null) {
            faults.add(new PedigreeFault.UnknownParent(member.id(), parentId));
            return;
        }
        parent.sex()
                .filter(sex -> sex != needed)
                .ifPresent(
                        sex -> faults.add(new PedigreeFault.WrongSex(member.id(), parentId, sex)));
        var young = member.hatched();
        var old = parent.hatched();
        if (young.isPresent()
                && old.isPresent()
                && !old.get().earliest().isBefore(young.get().latest())) {
            faults.add(new PedigreeFault.HatchedBeforeParent(member.id(), parentId));
        }
    }

    /// Puts the ancestors of an animal into the order, then the animal. Walks with a stack of its
    /// own: a line of descent may be longer than the machine's.
    private static void place(
            AnimalId start,
            Map<AnimalId, Member> byId,
            SequencedMap<AnimalId, Member> ordered,
            List<PedigreeFault> faults) {
        var path = new ArrayDeque<AnimalId>();
        var onPath = new HashSet<AnimalId>();
        path.push(start);
        while (!path.isEmpty()) {
            var id = path.peek();
            var member = byId.get(id);
            if (member == null || ordered.containsKey(id)) {
                path.pop();
                continue;
            }
            onPath.add(id);
            var waiting = parentsOf(member).filter(parent -> !ordered.containsKey(parent)).toList();
            var circle = waiting.stream().filter(onPath::contains).findFirst();
            if (circle.isPresent()) {
                faults.add(new PedigreeFault.OwnAncestor(id, circleOf(circle.get(), path, onPath)));
            }
            var open = waiting.stream().filter(parent -> !onPath.contains(parent)).toList();
            open = open.stream().filter(byId::containsKey).toList();
            if (open.isEmpty()) {
                ordered.put(id, member);
                onPath.remove(id);
                path.pop();
            } else {
                open.forEach(path::push);
            }
        }
    }

    private static List<AnimalId> circleOf(
            AnimalId first, SequencedCollection<AnimalId> path, Collection<AnimalId> onPath) {
        var circle = new ArrayList<AnimalId>();
        for (var id : path) {
            if (onPath.contains(id)) {
                circle.add(id);
            }
            if (id.equals(first)) {
                break;
            }
        }
        return circle;
    }

    private static Stream<AnimalId> parentsOf(Member member) {
        return Stream.concat(
                member.parentage().dams().stream(), member.parentage().sires().stream());
    }

    public sealed interface Result {

        record Sound(Pedigree pedigree) implements Result {}

        /// @param faults all of them, at least one
        record Faulty(List<PedigreeFault> faults) implements Result {

            public Faulty {
                faults = List.copyOf(faults);
            }
        }
    }
}
