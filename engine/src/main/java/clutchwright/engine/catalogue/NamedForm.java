package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import java.util.List;

/// A name for a look of one locus, with the pairs of alleles that it stands for.
///
/// A name such as `Highway` stands for one pair; a name such as `Blue-Eyed Leucistic` for several.
///
/// @param synonyms other names and abbreviations, as people write them
/// @param pairs at least one
public record NamedForm(
        Phenotype phenotype, List<String> synonyms, List<Genotype.Diploid> pairs, String note) {

    public NamedForm {
        synonyms = List.copyOf(synonyms);
        pairs = List.copyOf(pairs);
    }
}
