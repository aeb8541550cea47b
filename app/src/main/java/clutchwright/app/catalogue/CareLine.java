package clutchwright.app.catalogue;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.engine.genetics.Caution;

/// A welfare caution in plain words.
///
/// @param about what it is about, and which animals
/// @param basis standing and source
public record CareLine(String about, String words, String basis) {

    static CareLine of(Caution caution) {
        return new CareLine(
                "%s: %s"
                        .formatted(
                                CautionWords.concern(caution.concern()),
                                CautionWords.animals(caution)),
                caution.words(),
                GeneWords.capital(CautionWords.basis(caution)));
    }
}
