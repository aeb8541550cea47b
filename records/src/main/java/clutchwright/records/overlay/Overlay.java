package clutchwright.records.overlay;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// The keeper's own genes, species by species. Whether a text is well formed is the catalogue's
/// to say; it is asked before.
public final class Overlay {

    private final Transaction tx;

    public Overlay(Transaction tx) {
        this.tx = tx;
    }

    /// Writes down a locus that has no entry yet.
    public Edit<OverlayEntry> add(String species, LocusId locus, String text) {
        return new Findings(tx.today())
                .notBlank(Field.SPECIES, species)
                .notBlank(Field.LOCUS, text)
                .addIf(
                        find(species, locus).isPresent(),
                        new Problem.NameTaken(Field.LOCUS, locus.value()))
                .<OverlayEntry>refusal()
                .orElseGet(
                        () -> {
                            long id =
                                    tx.insert(
                                            "overlay_entry",
                                            Values.of()
                                                    .set("species", species)
                                                    .set("locus", locus.value())
                                                    .set("written", text));
                            return new Edit.Saved<>(new OverlayEntry(id, 1, species, locus, text));
                        });
    }

    /// Changes the text of an entry, if it still is of the version that was edited.
    public Edit<OverlayEntry> update(OverlayEntry changed) {
        var current = find(changed.species(), changed.locus());
        if (current.isEmpty() || current.get().id() != changed.id()) {
            return Edit.refused(new Problem.Missing(Field.LOCUS, changed.id()));
        }
        if (changed.text().isBlank()) {
            return Edit.refused(new Problem.Blank(Field.LOCUS));
        }
        return tx.update(
                        "overlay_entry",
                        changed.id(),
                        changed.version(),
                        Values.of().set("written", changed.text()))
                ? new Edit.Saved<>(find(changed.species(), changed.locus()).orElseThrow())
                : new Edit.Stale<>(current.get());
    }

    /// Takes an entry away; not while an animal's gene line mentions the locus.
    ///
    /// @return the entry that was removed
    public Edit<OverlayEntry> remove(OverlayEntry entry) {
        return remove(entry, animalsUsing(entry.species(), entry.locus()));
    }

    /// Takes away what the keeper changed of a locus that the species comes with; not while an
    /// animal's gene line mentions an allele that would be lost.
    ///
    /// @param lost alleles that the species itself does not have there
    /// @return the entry that was removed
    public Edit<OverlayEntry> remove(OverlayEntry entry, Collection<Allele> lost) {
        return remove(entry, animalsUsing(entry.species(), lost));
    }

    private Edit<OverlayEntry> remove(OverlayEntry entry, List<AnimalId> animals) {
        var current = find(entry.species(), entry.locus());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.LOCUS, entry.id()));
        }
        if (current.get().version() != entry.version()) {
            return new Edit.Stale<>(current.get());
        }
        if (!animals.isEmpty()) {
            return Edit.refused(
                    new Problem.LocusInUse(entry.species(), entry.locus().value(), animals));
        }
        tx.delete("overlay_entry", entry.id());
        return new Edit.Saved<>(current.get());
    }

    public Optional<OverlayEntry> find(String species, LocusId locus) {
        return tx.first(
                Overlay::read,
                "select * from overlay_entry where species = ? and locus = ?",
                species,
                locus.value());
    }

    /// By locus.
    public List<OverlayEntry> of(String species) {
        return tx.list(
                Overlay::read,
                "select * from overlay_entry where species = ? order by locus",
                species);
    }

    /// By species and locus.
    public List<OverlayEntry> all() {
        return tx.list(Overlay::read, "select * from overlay_entry order by species, locus");
    }

    /// The animals of which any statement ever mentioned that locus.
    public List<AnimalId> animalsUsing(String species, LocusId locus) {
        return tx.list(
                row -> new AnimalId(row.number("animal")),
                "select distinct animal from animal_gene where species = ? and locus = ?"
                        + " order by animal",
                species,
                locus.value());
    }

    /// The animals of which any statement ever mentioned that allele.
    public List<AnimalId> animalsUsing(String species, LocusId locus, String allele) {
        return tx.list(
                row -> new AnimalId(row.number("animal")),
                "select distinct animal from animal_gene"
                        + " where species = ? and locus = ? and allele = ? order by animal",
                species,
                locus.value(),
                allele);
    }

    /// The animals of which any statement ever mentioned one of the alleles.
    public List<AnimalId> animalsUsing(String species, Collection<Allele> alleles) {
        return alleles.stream()
                .flatMap(allele -> animalsUsing(species, allele.locus(), allele.name()).stream())
                .distinct()
                .sorted(Comparator.comparingLong(AnimalId::value))
                .toList();
    }

    private static OverlayEntry read(Row row) {
        return new OverlayEntry(
                row.number("id"),
                row.number("version"),
                row.text("species"),
                new LocusId(row.text("locus")),
                row.text("written"));
    }
}
