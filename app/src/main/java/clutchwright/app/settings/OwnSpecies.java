package clutchwright.app.settings;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;
import clutchwright.records.exchange.SpeciesLines;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OwnGenes;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Optional;

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

    /// Faults of the keeper's own genes are shown where they are edited.
    private static Catalogue withOwn(Transaction tx, String species) {
        return OwnGenes.over(Catalogue.shipped(species), new Overlay(tx).of(species)).catalogue();
    }
}
