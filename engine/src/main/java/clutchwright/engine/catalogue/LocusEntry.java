package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Standing;
import java.util.List;

/// One locus with all that is known and said of it.
///
/// @param title what the trade calls the locus or the complex
/// @param standing how well it stands that these alleles are one series
/// @param traits one an allele, the wild type left out, in the order of the locus
/// @param forms named looks, the plain ones of single alleles included, in the order of the pairs;
///     a look that the file describes in several blocks stands once a block, and `Normal` stands
///     only where the file says something of a pair that does not show
/// @param cautions those that concern this locus alone
/// @param ownEntry whether the keeper added or changed it
public record LocusEntry(
        String title,
        PhenotypeMap map,
        Standing standing,
        String source,
        String note,
        List<Trait> traits,
        List<NamedForm> forms,
        List<Caution> cautions,
        boolean ownEntry) {

    public LocusEntry {
        traits = List.copyOf(traits);
        forms = List.copyOf(forms);
        cautions = List.copyOf(cautions);
    }

    public LocusId id() {
        return map.locus().id();
    }
}
