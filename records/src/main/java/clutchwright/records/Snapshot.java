package clutchwright.records;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/// The whole collection at one moment, as the engine reads it.
///
/// @param animals    in the order in which they were entered
/// @param statements animal by animal, newest first; animals without one are left out
public record Snapshot(
        SequencedMap<AnimalId, Animal> animals,
        SequencedMap<AnimalId, List<Statement>> statements) {

    public Snapshot {
        animals = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(animals));
        statements = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(statements));
    }

    public static Snapshot of(Transaction tx) {
        var animals = new LinkedHashMap<AnimalId, Animal>();
        new Animals(tx).all().forEach(animal -> animals.put(animal.id(), animal));
        return new Snapshot(animals, new Statements(tx).all());
    }

    public Optional<Animal> find(AnimalId id) {
        return Optional.ofNullable(animals.get(id));
    }

    /// Newest first.
    public List<Statement> statementsOf(AnimalId id) {
        return statements.getOrDefault(id, List.of());
    }

    /// Every animal as a pedigree knows it.
    public List<Member> members() {
        return animals.values().stream().map(Animal::member).toList();
    }

    /// Who descends from whom, or why that cannot be.
    public Pedigree.Result pedigree() {
        return Pedigree.of(members());
    }
}
