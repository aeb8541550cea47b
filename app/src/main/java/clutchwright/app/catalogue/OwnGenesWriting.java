package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.LocusId;
import clutchwright.records.checks.Edit;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.overlay.OwnGenes;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// Writes the keeper's own genes, if they can stand beside all that is on record.
record OwnGenesWriting(Holding holding, String species) {

    /// Writes down a locus that nobody has named yet.
    Written<OwnOutcome> add(String text) {
        var known =
                holding.catalogue(species).species().loci().stream()
                        .map(entry -> entry.id().value())
                        .collect(Collectors.toSet());
        var own = new OwnText(text);
        var faults = own.faultsAsNew(known);
        return faults.isEmpty()
                ? write(new LocusId(own.locus().orElseThrow()), "Added the gene %s", own, "")
                : refused(new OwnOutcome.Faulty(faults));
    }

    /// Changes a locus, one of the shipped ones too.
    ///
    /// @param version of the keeper's entry when it was opened; empty where there was none
    Written<OwnOutcome> change(LocusId locus, String version, String text) {
        var own = new OwnText(text);
        var faults = own.faultsAs(locus.value());
        return faults.isEmpty()
                ? write(locus, "Changed the gene %s", own, version)
                : refused(new OwnOutcome.Faulty(faults));
    }

    /// Takes the keeper's entry away: the gene, or what was changed of a shipped one.
    Written<OwnOutcome> remove(LocusId locus, String version) {
        return Written.to(
                holding,
                "Removed the own gene " + locus,
                tx -> {
                    var overlay = new Overlay(tx);
                    var entry = overlay.find(species, locus);
                    if (entry.isEmpty() || !version(entry.get()).equals(version)) {
                        return new OwnOutcome.Stale(entry);
                    }
                    var others = others(overlay, locus);
                    var before = catalogue(Stream.concat(others.stream(), entry.stream()).toList());
                    var judgement =
                            new OwnJudgement(before.catalogue(), catalogue(others).catalogue());
                    var animals = judgement.animalsInTheWay(tx, locus);
                    if (!animals.isEmpty()) {
                        return new OwnOutcome.InUse(animals);
                    }
                    return outcome(overlay.remove(entry.get(), judgement.lost(locus)), List.of());
                });
    }

    private Written<OwnOutcome> write(LocusId locus, String what, OwnText text, String version) {
        return Written.to(holding, what.formatted(locus), tx -> write(tx, locus, text, version));
    }

    private OwnOutcome write(Transaction tx, LocusId locus, OwnText text, String version) {
        var overlay = new Overlay(tx);
        var entry = overlay.find(species, locus);
        if (!entry.map(OwnGenesWriting::version).orElse("").equals(version)) {
            return new OwnOutcome.Stale(entry);
        }
        var others = catalogue(others(overlay, locus)).catalogue();
        return switch (CatalogueText.readOver(others.species(), OwnGenes.FILE, text.text())) {
            case CatalogueText.Result.Faulty(var faults) -> new OwnOutcome.Faulty(faults);
            case CatalogueText.Result.Loaded(var loaded) -> {
                var written = loaded.findLocus(locus).orElseThrow();
                yield write(tx, entry, written, text);
            }
        };
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private OwnOutcome write(
            Transaction tx, Optional<OverlayEntry> entry, LocusEntry written, OwnText text) {
        var overlay = new Overlay(tx);
        var locus = written.id();
        var others = others(overlay, locus);
        var before = catalogue(Stream.concat(others.stream(), entry.stream()).toList());
        var next = new OverlayEntry(0, 0, species, locus, text.text());
        var after = catalogue(Stream.concat(others.stream(), Stream.of(next)).toList());
        var broken =
                after.unread().stream()
                        .filter(unread -> !isUnread(before, unread.entry()))
                        .toList();
        if (!broken.isEmpty()) {
            return new OwnOutcome.Faulty(List.of(breaking(broken.getFirst())));
        }
        var judgement = new OwnJudgement(before.catalogue(), after.catalogue());
        var taken = judgement.namesTaken(written, text);
        if (!taken.isEmpty()) {
            return new OwnOutcome.Faulty(taken);
        }
        var animals = judgement.animalsInTheWay(tx, locus);
        if (!animals.isEmpty()) {
            return new OwnOutcome.InUse(animals);
        }
        var saved =
                entry.map(
                                found ->
                                        overlay.update(
                                                new OverlayEntry(
                                                        found.id(),
                                                        found.version(),
                                                        species,
                                                        locus,
                                                        text.text())))
                        .orElseGet(() -> overlay.add(species, locus, text.text()));
        return outcome(saved, judgement.namesShared(written));
    }

    private static OwnOutcome outcome(Edit<OverlayEntry> edit, List<String> shared) {
        return switch (edit) {
            case Edit.Saved<OverlayEntry>(var entry) -> new OwnOutcome.Saved(entry.locus(), shared);
            case Edit.Stale<OverlayEntry>(var current) ->
                    new OwnOutcome.Stale(Optional.of(current));
            case Edit.Refused<OverlayEntry>(var problems) ->
                    throw new IllegalStateException("refused after all was asked: " + problems);
        };
    }

    private static boolean isUnread(OwnGenes genes, OverlayEntry entry) {
        return genes.unread().stream().anyMatch(unread -> unread.entry().equals(entry));
    }

    /// Another own gene needs what the text leaves out.
    private static CatalogueText.Fault breaking(OwnGenes.Unread unread) {
        var fault = unread.faults().getFirst();
        return new CatalogueText.Fault(
                "",
                1,
                "a text with which your gene '%s' cannot be read (its line %d: %s)"
                        .formatted(unread.entry().locus(), fault.line(), fault.found()),
                fault.expected());
    }

    private List<OverlayEntry> others(Overlay overlay, LocusId locus) {
        return overlay.of(species).stream().filter(entry -> !entry.locus().equals(locus)).toList();
    }

    private OwnGenes catalogue(List<OverlayEntry> entries) {
        return OwnGenes.over(holding.shipped(species), entries);
    }

    private static String version(OverlayEntry entry) {
        return Long.toString(entry.version());
    }

    private static Written<OwnOutcome> refused(OwnOutcome outcome) {
        return new Written<>(outcome, Optional.empty());
    }
}
