package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Phenotype;
import java.util.List;

/// A trade name for forms at several loci, such as `Pewter` for Pastel and Cinnamon.
///
/// @param phenotypes at least two, of different loci
public record NamedCombination(String name, List<String> synonyms, List<Phenotype> phenotypes) {

    public NamedCombination {
        synonyms = List.copyOf(synonyms);
        phenotypes = List.copyOf(phenotypes);
    }
}
