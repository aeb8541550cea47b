package clutchwright.app.wording;

import clutchwright.engine.catalogue.CatalogueText;

/// What is wrong with a text of the catalogue, as sentences.
public final class CatalogueFaultWords {

    private CatalogueFaultWords() {}

    /// Without the line, which is said beside it: `Unknown mode 'recesive': expected ...`
    public static String of(CatalogueText.Fault fault) {
        return "%s: expected %s.".formatted(GeneWords.capital(fault.found()), fault.expected());
    }
}
