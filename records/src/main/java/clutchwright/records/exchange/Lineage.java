package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Parent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// Who would descend from whom after the import: the animals on record with those of the file
/// over them, as a pedigree that the engine can check and order.
final class Lineage {

    /// One animal of it.
    ///
    /// @param row of the file, empty where the file does not speak of it
    private record Person(AnimalEntry entry, Optional<Integer> row) {

        Tag tag() {
            return entry.tag();
        }
    }

    private final SequencedMap<String, Person> people = new LinkedHashMap<>();
    private final Map<String, AnimalId> ids = new LinkedHashMap<>();
    private final List<Person> byNumber = new ArrayList<>();

    void onRecord(AnimalEntry entry) {
        put(entry, Optional.empty());
    }

    /// Replaces the animal of the same tag.
    void inFile(AnimalEntry entry, int row) {
        put(entry, Optional.of(row));
    }

    private void put(AnimalEntry entry, Optional<Integer> row) {
        people.put(Keys.of(entry.tag()), new Person(entry, row));
    }

    /// What stands against it, and the tags of the file in an order that has parents first.
    Checked check() {
        people.forEach(
                (key, person) -> {
                    ids.put(key, new AnimalId(byNumber.size()));
                    byNumber.add(person);
                });
        var members = byNumber.stream().map(this::member).toList();
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new Checked(
                            List.of(),
                            pedigree.members().stream()
                                    .map(member -> person(member.id()))
                                    .filter(person -> person.row().isPresent())
                                    .map(Person::tag)
                                    .toList());
            case Pedigree.Result.Faulty(var faults) ->
                    new Checked(
                            faults.stream().flatMap(fault -> found(fault).stream()).toList(),
                            List.of());
        };
    }

    /// @param order of the animals that the file speaks of; empty if there are faults
    record Checked(List<Fault> faults, List<Tag> order) {}

    /// @param as the column at fault
    record Fault(int row, Parent as, Finding finding) {}

    private Member member(Person person) {
        var entry = person.entry();
        return new Member(
                theId(entry.tag()),
                entry.sex(),
                entry.hatched().span(),
                entry.parentage(this::theId));
    }

    private AnimalId theId(Tag tag) {
        var id = ids.get(Keys.of(tag));
        if (id == null) {
            throw new IllegalStateException("a parent that was not resolved: " + tag);
        }
        return id;
    }

    private Person person(AnimalId id) {
        return byNumber.get(Math.toIntExact(id.value()));
    }

    /// Faults between animals on record alone are not the file's.
    private Optional<Fault> found(PedigreeFault fault) {
        var animal = person(fault.animal());
        return switch (fault) {
            case PedigreeFault.ListedTwice _, PedigreeFault.UnknownParent _ -> Optional.empty();
            case PedigreeFault.WrongSex(_, var parent, var sex) -> {
                var as = sex == Sex.MALE ? Parent.DAM : Parent.SIRE;
                yield at(
                        animal,
                        person(parent),
                        as,
                        new Finding.WrongSex(as, person(parent).tag().value(), sex));
            }
            case PedigreeFault.DamIsSire(_, var parent) ->
                    at(
                            animal,
                            person(parent),
                            Parent.SIRE,
                            new Finding.DamIsSire(person(parent).tag().value()));
            case PedigreeFault.HatchedBeforeParent(_, var parent) -> {
                var as =
                        animal.entry().dam().map(dam -> theId(dam).equals(parent)).orElse(false)
                                ? Parent.DAM
                                : Parent.SIRE;
                yield at(
                        animal,
                        person(parent),
                        as,
                        new Finding.HatchedBeforeParent(
                                as,
                                animal.entry().hatched().iso(),
                                person(parent).tag().value(),
                                person(parent).entry().hatched().iso()));
            }
            case PedigreeFault.OwnAncestor(_, var circle) -> {
                var inFile =
                        circle.stream()
                                .map(this::person)
                                .filter(person -> person.row().isPresent())
                                .findFirst();
                yield inFile.map(
                        person ->
                                new Fault(
                                        person.row().orElseThrow(),
                                        Parent.DAM,
                                        new Finding.OwnAncestor(
                                                circle.stream()
                                                        .map(id -> person(id).tag().value())
                                                        .toList())));
            }
        };
    }

    private static Optional<Fault> at(Person animal, Person parent, Parent as, Finding finding) {
        return animal.row().or(parent::row).map(row -> new Fault(row, as, finding));
    }
}
