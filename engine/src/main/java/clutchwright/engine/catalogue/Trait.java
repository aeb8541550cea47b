package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Standing;
import java.util.List;

/// One allele as the trade knows it.
///
/// @param synonyms other names and abbreviations, as people write them
/// @param asks alleles of other loci that are often meant by this name: lines of a gene, where the
///     line was not said; whoever writes the name is asked which
/// @param source where the statement rests: a citation, or `common practice, no source`
/// @param note plain words for a keeper; may be empty
public record Trait(
        Allele allele,
        Mode mode,
        List<String> synonyms,
        List<String> asks,
        Standing standing,
        String source,
        String note) {

    public Trait {
        synonyms = List.copyOf(synonyms);
        asks = List.copyOf(asks);
    }

    public String name() {
        return allele.name();
    }
}
