package clutchwright.records.exchange;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.notation.GeneLine;
import java.util.List;

/// What the tests of this package share.
final class Situations {

    static final SpeciesLines LINES =
            new SpeciesLines(
                    Catalogue.shippedSpecies().stream()
                            .map(species -> GeneLine.of(Catalogue.shipped(species)))
                            .toList());

    private Situations() {}

    /// Royal pythons with a gene of the keeper's own.
    static SpeciesLines withOwn(String text) {
        var base = LINES.all().getFirst().catalogue().species();
        var read = (CatalogueText.Result.Loaded) CatalogueText.readOver(base, "own", text);
        return new SpeciesLines(List.of(GeneLine.of(Catalogue.of(read.species()))));
    }
}
