package clutchwright.records.exchange;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.records.animals.Animal;
import clutchwright.records.statements.Statement;
import clutchwright.records.store.StoreFailure;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.stream.Collectors;

/// A collection read from files alone: what an import would put on record, without any records.
///
/// A folder, a .zip or a single table, read by the same readers and with the same problems as an
/// import. Its animals and statements have numbers of their own, in the order of the file.
public final class PackageCollection {

    private final SpeciesLines lines;
    private final Pedigree pedigree;
    private final SequencedMap<AnimalId, Animal> animals;
    private final SequencedMap<AnimalId, List<Statement>> statements;
    private final List<Problem> notes;
    private final Map<String, AnimalId> byTag;

    PackageCollection(
            SpeciesLines lines,
            Pedigree pedigree,
            SequencedMap<AnimalId, Animal> animals,
            SequencedMap<AnimalId, List<Statement>> statements,
            List<Problem> notes) {
        this.lines = lines;
        this.pedigree = pedigree;
        this.animals = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(animals));
        this.statements = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(statements));
        this.notes = List.copyOf(notes);
        this.byTag =
                animals.values().stream()
                        .collect(Collectors.toMap(animal -> Keys.of(animal.tag()), Animal::id));
    }

    /// What reading came to.
    public sealed interface Result {

        record Sound(PackageCollection collection) implements Result {}

        /// @param table    which file a problem is in that names none itself
        /// @param problems all of them, at least one that stops
        record Refused(String table, List<Problem> problems) implements Result {

            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /// Reads a collection; nothing is written anywhere.
    ///
    /// @param path  what exists: a folder, a .zip, or a table
    /// @param lines the species that animals may be of
    /// @param today no animal has hatched after it
    /// @throws StoreFailure if the machine cannot read it
    public static Result read(Path path, Choices choices, SpeciesLines lines, LocalDate today) {
        try {
            return new CollectionReader(choices, lines, today).read(path);
        } catch (IOException e) {
            throw new StoreFailure("the files cannot be read", e);
        }
    }

    /// The species with the genes that the package brings along.
    public SpeciesLines lines() {
        return lines;
    }

    /// Who descends from whom; the animals of every species.
    public Pedigree pedigree() {
        return pedigree;
    }

    /// In the order of the file.
    public SequencedMap<AnimalId, Animal> animals() {
        return animals;
    }

    /// Animal by animal, newest first; animals without one are left out.
    public SequencedMap<AnimalId, List<Statement>> statements() {
        return statements;
    }

    /// What is worth knowing about the files and does not stop anything.
    public List<Problem> notes() {
        return notes;
    }

    /// Upper and lower case are alike, as they are everywhere.
    public Optional<Animal> find(String tag) {
        return Optional.ofNullable(byTag.get(Keys.of(tag))).map(animals::get);
    }

    /// @throws IllegalArgumentException if there is no such animal
    public Animal theAnimal(AnimalId id) {
        var animal = animals.get(id);
        if (animal == null) {
            throw new IllegalArgumentException("animal " + id + " is not in the collection");
        }
        return animal;
    }

    /// Tags close to what was written, nearest first; none if none is near.
    public List<String> tagsNear(String written) {
        return Nearest.to(
                written, animals.values().stream().map(animal -> animal.tag().value()).toList());
    }
}
