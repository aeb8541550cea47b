package clutchwright.app.season;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Strands;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.inference.Held;
import clutchwright.records.animals.Animal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// One parent of a prediction: an animal on record, or genes that were typed.
///
/// @param animal empty where the genes were typed
/// @param title tag, or the genes where they are short
/// @param name what the animal is called besides its tag; may be blank
/// @param species short name of the species
/// @param notes what deserves a word of how it was read, as sentences
public record ParentCard(
        Optional<Animal> animal,
        String title,
        String name,
        String species,
        GeneLineMarkup line,
        Strands strands,
        ParentGenotype genotype,
        List<String> notes) {

    public ParentCard {
        notes = List.copyOf(notes);
    }

    /// Where more of it is to be read; empty where the genes were typed.
    public String path() {
        return animal.map(found -> "/collection/" + found.id()).orElse("");
    }

    /// Both alleles of a locus of which nobody said from whom they came, one a strand.
    static Strands strands(ParentGenotype genotype) {
        var loci = new LinkedHashMap<LocusId, Held.Strands>();
        genotype.loci()
                .forEach(
                        (locus, genotypes) ->
                                loci.put(
                                        locus,
                                        new Held.Strands(
                                                genotypes.map(pair -> pair.alleles().getFirst()),
                                                genotypes.map(pair -> pair.alleles().getLast()))));
        return Strands.of(loci);
    }
}
