package clutchwright.app.holding;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/// The collection that is being served: its store, its catalogues, and what follows from it.
///
/// What follows is computed when it is first asked for after a change, and kept until the next.
public final class Holding implements AutoCloseable {

    public static final String MAIN_SPECIES = "python-regius";

    private final Database database;
    private final Map<String, GeneLine> lines = new ConcurrentHashMap<>();
    private volatile Optional<Known> known = Optional.empty();

    public Holding(Database database) {
        this.database = database;
    }

    public Database database() {
        return database;
    }

    /// The species of animals unless something else is said.
    public String mainSpecies() {
        return MAIN_SPECIES;
    }

    public LocalDate today() {
        return LocalDate.now(database.clock());
    }

    /// Whoever sits at the keyboard.
    public Author author() {
        return new Author("keeper");
    }

    /// @throws IllegalArgumentException if there is no such catalogue
    public Catalogue catalogue(String species) {
        return lines(species).catalogue();
    }

    /// @throws IllegalArgumentException if there is no such catalogue
    public GeneLine lines(String species) {
        return findLines(species)
                .orElseThrow(() -> new IllegalArgumentException("no catalogue named " + species));
    }

    public Optional<GeneLine> findLines(String species) {
        if (!Catalogue.shippedSpecies().contains(species)) {
            return Optional.empty();
        }
        return Optional.of(lines.computeIfAbsent(species, Holding::read));
    }

    private static GeneLine read(String species) {
        return GeneLine.of(Catalogue.shipped(species));
    }

    /// What follows from the records as they are now.
    public Knowledge knowledge() {
        return keptFor(database.revision()).orElseGet(this::freshKnowledge);
    }

    /// One at a time: a second page that waits finds what the first has computed.
    private synchronized Knowledge freshKnowledge() {
        var revision = database.revision();
        return keptFor(revision)
                .orElseGet(
                        () -> {
                            var fresh = database.read(tx -> Knowledge.of(tx, this::catalogue));
                            known = Optional.of(new Known(revision, fresh));
                            return fresh;
                        });
    }

    private Optional<Knowledge> keptFor(long revision) {
        return known.filter(kept -> kept.revision() == revision).map(Known::knowledge);
    }

    /// The animal's genes in type.
    public GeneLineMarkup line(AnimalId animal) {
        var knowledge = knowledge();
        return knowledge
                .find(animal)
                .map(found -> catalogue(found.species()).model())
                .map(model -> GeneLineMarkup.of(model, knowledge.of(animal)))
                .orElseGet(() -> new GeneLineMarkup(List.of(), List.of()));
    }

    @Override
    public void close() {
        database.close();
    }

    private record Known(long revision, Knowledge knowledge) {}
}
