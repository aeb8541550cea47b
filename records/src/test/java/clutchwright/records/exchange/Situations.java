package clutchwright.records.exchange;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.notation.GeneLine;

/// What the tests of this package share.
final class Situations {

    static final SpeciesLines LINES =
            new SpeciesLines(
                    Catalogue.shippedSpecies().stream()
                            .map(species -> GeneLine.of(Catalogue.shipped(species)))
                            .toList());

    private Situations() {}
}
