package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Standing;
import java.util.List;

/// One allele as the trade knows it.
///
/// @param synonyms other names and abbreviations, as people write them
/// @param source where the statement rests: a citation, or `common practice, no source`
/// @param note plain words for a keeper; may be empty
public record Trait(
        Allele allele,
        Mode mode,
        List<String> synonyms,
        Standing standing,
        String source,
        String note) {

    public Trait {
        synonyms = List.copyOf(synonyms);
    }

    public String name() {
        return allele.name();
    }
}
