package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;

/// Gene lines of the species that come with the program.
final class ShippedLines {

    static final GeneLine ROYAL = GeneLine.of(Catalogue.shipped("python-regius"));
    static final GeneLine CORN = GeneLine.of(Catalogue.shipped("pantherophis-guttatus"));
    static final GeneLine BOA = GeneLine.of(Catalogue.shipped("boa-imperator"));

    private ShippedLines() {}
}
