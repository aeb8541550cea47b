package clutchwright.app.holding;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.web.Figures;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.OnRecord;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.overlay.OwnGenes;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/// The collection that is being served: its store, its catalogues, and what follows from it.
///
/// What is on record is read when it is first asked for after a change. What follows from it is
/// worked out behind the pages: a page waits for it no longer than one hardly notices, and then
/// shows what was worked out last.
public final class Holding implements Figures, AutoCloseable {

    public static final String MAIN_SPECIES = "python-regius";

    private final Database database;
    private final Map<String, Catalogue> shipped = new ConcurrentHashMap<>();
    private final Map<String, OfSpecies> species = new ConcurrentHashMap<>();
    private final Concluding concluding = new Concluding();
    private final Duration patience;
    private volatile Optional<Facts> read = Optional.empty();
    private volatile Optional<Known> known = Optional.empty();

    /// For whoever has the time to wait for what follows.
    public Holding(Database database) {
        this(database, Duration.ofHours(1));
    }

    /// @param patience how long a page waits for what follows from a change
    public Holding(Database database, Duration patience) {
        this.database = database;
        this.patience = patience;
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

    /// The records as they are now, with what was worked out last of what follows from them.
    public Knowledge knowledge() {
        var facts = factsAt(database.revision());
        var last = concluding.last();
        return known.filter(kept -> kept.isOf(facts, last))
                .map(Known::knowledge)
                .orElseGet(() -> knowledge(facts, last));
    }

    private Knowledge knowledge(Facts facts, Concluding.Concluded last) {
        var knowledge = Knowledge.of(facts.onRecord(), last.conclusions());
        known = Optional.of(new Known(facts.revision(), last.revision(), knowledge));
        return knowledge;
    }

    private Facts factsAt(long revision) {
        var kept = read;
        return kept.isPresent() && kept.get().revision() == revision ? kept.get() : freshFacts();
    }

    /// One at a time: a second page that waits finds what the first has read.
    private synchronized Facts freshFacts() {
        var revision = database.revision();
        if (read.isPresent() && read.get().revision() == revision) {
            return read.get();
        }
        // Before the store is read: a read within a read takes a second connection.
        Catalogue.shippedSpecies().forEach(this::catalogue);
        var fresh = new Facts(revision, database.read(tx -> OnRecord.of(tx, this::catalogue)));
        concluding.ask(revision, fresh.onRecord());
        concluding.await(patience);
        read = Optional.of(fresh);
        return fresh;
    }

    @Override
    public State state() {
        if (concluding.isDone()) {
            return concluding.hasFailed() ? State.FAILED : State.FRESH;
        }
        return concluding.hasBegun() ? State.BEHIND : State.FIRST;
    }

    /// Waits until what follows from the records as they are now is worked out.
    ///
    /// @return whether it was within that time
    public boolean await(Duration longest) {
        knowledge();
        return concluding.await(longest);
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
        concluding.close();
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

    private record Facts(long revision, OnRecord onRecord) {}

    private record Known(long revision, long concluded, Knowledge knowledge) {

        boolean isOf(Facts facts, Concluding.Concluded last) {
            return revision == facts.revision() && concluded == last.revision();
        }
    }
}
