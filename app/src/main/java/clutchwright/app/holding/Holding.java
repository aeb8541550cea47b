package clutchwright.app.holding;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.overlay.OwnGenes;
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
    private final Map<String, Catalogue> shipped = new ConcurrentHashMap<>();
    private final Map<String, OfSpecies> species = new ConcurrentHashMap<>();
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

    /// With the keeper's own genes as they are now.
    public Optional<GeneLine> findLines(String species) {
        return find(species).map(OfSpecies::lines);
    }

    /// The catalogue as it comes with the program.
    ///
    /// @throws IllegalArgumentException if there is no such catalogue
    public Catalogue shipped(String species) {
        return shipped.computeIfAbsent(species, Catalogue::shipped);
    }

    /// The keeper's own genes of a species that its catalogue cannot take; empty as a rule.
    public List<OwnGenes.Unread> unreadGenes(String species) {
        return find(species).map(OfSpecies::unread).orElseGet(List::of);
    }

    private Optional<OfSpecies> find(String id) {
        if (!Catalogue.shippedSpecies().contains(id)) {
            return Optional.empty();
        }
        var revision = database.revision();
        return Optional.of(
                species.compute(
                        id,
                        (_, kept) ->
                                kept != null && kept.revision() >= revision
                                        ? kept
                                        : asOf(revision, id, Optional.ofNullable(kept))));
    }

    /// Read anew only where the keeper's genes have changed: most writes are of something else.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private OfSpecies asOf(long revision, String id, Optional<OfSpecies> kept) {
        var entries = database.read(tx -> new Overlay(tx).of(id));
        return kept.filter(found -> found.entries().equals(entries))
                .map(found -> found.at(revision))
                .orElseGet(() -> OfSpecies.of(revision, entries, shipped(id)));
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
                            // Before the store is read: a read within a read takes a second
                            // connection.
                            Catalogue.shippedSpecies().forEach(this::catalogue);
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

    private record OfSpecies(
            long revision,
            List<OverlayEntry> entries,
            GeneLine lines,
            List<OwnGenes.Unread> unread) {

        static OfSpecies of(long revision, List<OverlayEntry> entries, Catalogue shipped) {
            var own = OwnGenes.over(shipped, entries);
            return new OfSpecies(revision, entries, GeneLine.of(own.catalogue()), own.unread());
        }

        OfSpecies at(long later) {
            return new OfSpecies(later, entries, lines, unread);
        }
    }

    private record Known(long revision, Knowledge knowledge) {}
}
