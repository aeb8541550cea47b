package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.Combination;
import clutchwright.engine.genetics.LocusId;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Statements.AlleleCount;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Puts together all that is known of one locus.
record LocusReading(Holding holding, Guide guide) {

    static LocusReading of(Holding holding, String species) {
        return new LocusReading(holding, Guide.of(holding, species, ""));
    }

    Optional<LocusEntry> find(String locus) {
        return LocusId.isWellFormed(locus)
                ? guide.catalogue().species().findLocus(new LocusId(locus))
                : Optional.empty();
    }

    /// @param refused tags of animals that stand in the way of what was asked; empty as a rule
    LocusView view(LocusEntry entry, List<Link> refused) {
        var id = entry.id();
        var species = guide.catalogue().species();
        var kept = kept(id);
        return new LocusView(
                species.id(),
                SpeciesWords.name(species),
                id.value(),
                entry.title(),
                !entry.ownEntry() ? "" : guide.isShipped(id) ? "changed by you" : "your own",
                guide.isShipped(id),
                kept.entry().map(own -> Long.toString(own.version())).orElse(""),
                GeneWords.inheritance(
                        entry.map().locus().inheritance(), guide.catalogue().model().sexes()),
                basis(entry),
                entry.note().lines().toList(),
                PairTable.of(entry, this::title),
                entry.traits().stream()
                        .map(
                                trait ->
                                        AlleleLine.of(
                                                guide,
                                                trait,
                                                kept.counts()
                                                        .getOrDefault(
                                                                trait.name(),
                                                                new AlleleCount(0, 0))))
                        .toList(),
                entry.forms().stream()
                        .filter(FormLine::isTelling)
                        .map(form -> FormLine.of(entry, form, this::title))
                        .toList(),
                guide.cautionsOf(id).stream().map(CareLine::of).distinct().toList(),
                guide.catalogue().model().combinations().stream()
                        .filter(combination -> concerns(combination, id))
                        .map(LocusReading::together)
                        .toList(),
                species.combinations().stream()
                        .filter(
                                named ->
                                        named.phenotypes().stream()
                                                .anyMatch(look -> look.locus().equals(id)))
                        .map(named -> CombinationLine.of(guide, named))
                        .toList(),
                refused);
    }

    String title(LocusId locus) {
        return guide.catalogue()
                .species()
                .findLocus(locus)
                .map(LocusEntry::title)
                .orElse(locus.value());
    }

    private static String basis(LocusEntry entry) {
        var one = entry.traits().size() > 1 ? "That these are one series: " : "";
        var standing = one + CautionWords.standing(entry.standing()) + "; " + entry.source() + ".";
        return GeneWords.capital(standing);
    }

    private static boolean concerns(Combination combination, LocusId locus) {
        return combination.parts().stream().anyMatch(part -> part.allele().locus().equals(locus));
    }

    private static String together(Combination combination) {
        return "%s together: %s (%s)."
                .formatted(
                        CautionWords.parts(combination.parts()),
                        GeneWords.living(combination.viability()),
                        GeneWords.standing(combination.viability()));
    }

    private Kept kept(LocusId locus) {
        var species = guide.catalogue().species().id();
        return holding.database()
                .read(
                        tx ->
                                new Kept(
                                        new Overlay(tx).find(species, locus),
                                        new Statements(tx).animalsByAllele(species, locus)));
    }

    private record Kept(Optional<OverlayEntry> entry, Map<String, AlleleCount> counts) {}
}
