package clutchwright.app.settings;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.notation.GeneLine;
import clutchwright.records.exchange.SpeciesLines;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OverlayEntry;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/// The species that come with the program, with the keeper's own genes over them.
final class OwnSpecies {

    static List<String> names() {
        return Catalogue.shippedSpecies();
    }

    Optional<String> find(String species) {
        return names().stream().filter(species::equals).findFirst();
    }

    SpeciesLines lines(Transaction tx) {
        return new SpeciesLines(
                names().stream().map(species -> GeneLine.of(withOwn(tx, species))).toList());
    }

    private static Catalogue withOwn(Transaction tx, String species) {
        var shipped = Catalogue.shipped(species);
        var own =
                new Overlay(tx)
                        .of(species).stream()
                                .map(OverlayEntry::text)
                                .collect(Collectors.joining("\n"));
        return switch (own.isBlank()
                ? new CatalogueText.Result.Loaded(shipped.species())
                : CatalogueText.readOver(shipped.species(), species, own)) {
            case CatalogueText.Result.Loaded(var extended) -> Catalogue.of(extended);
            // Faults of the keeper's own genes are shown where they are edited.
            case CatalogueText.Result.Faulty _ -> shipped;
        };
    }
}
