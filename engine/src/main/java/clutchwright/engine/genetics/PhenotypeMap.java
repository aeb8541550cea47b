package clutchwright.engine.genetics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.SequencedSet;

/// What each genotype of a locus looks like, how viable it is and what it masks.
///
/// The look belongs to the unordered pair of alleles, not to a number of copies: two different
/// alleles
/// of a series may look like neither of them.
///
/// @param looks one phenotype for every unordered pair of the locus's alleles
/// @param viabilities pairs that are not named have full viability
/// @param maskings visible phenotypes that are not named mask nothing
public record PhenotypeMap(
        Locus locus,
        SequencedMap<Genotype.Diploid, Phenotype> looks,
        Map<Genotype.Diploid, Viability> viabilities,
        Map<Phenotype, Masking> maskings) {

    public PhenotypeMap {
        var complete = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        for (var pair : locus.allPairs()) {
            var look = looks.get(pair);
            if (look == null) {
                throw new IllegalArgumentException(
                        "locus " + locus.id() + " has no look for " + pair);
            }
            if (!look.locus().equals(locus.id())) {
                throw new IllegalArgumentException("look " + look + " is not of " + locus.id());
            }
            complete.put(pair, look);
        }
        if (looks.size() != complete.size()) {
            throw new IllegalArgumentException("a look for a pair that " + locus.id() + " has not");
        }
        looks = Collections.unmodifiableSequencedMap(complete);
        viabilities = Map.copyOf(viabilities);
        maskings = Map.copyOf(maskings);
    }

    public Phenotype phenotypeOf(Genotype genotype) {
        var look = looks.get(genotype.pair());
        if (look == null) {
            throw new IllegalArgumentException(genotype + " is not of locus " + locus.id());
        }
        return look;
    }

    public Viability viabilityOf(Genotype genotype) {
        return viabilities.getOrDefault(genotype.pair(), Viability.FULL);
    }

    public Masking maskingOf(Phenotype phenotype) {
        return maskings.getOrDefault(phenotype, new Masking.Nothing());
    }

    /// Every form that can be told apart, in the order of the pairs that first show it.
    public SequencedSet<Phenotype> phenotypes() {
        return Collections.unmodifiableSequencedSet(new LinkedHashSet<>(looks.values()));
    }

    /// The pairs of alleles that look so.
    public List<Genotype.Diploid> showing(Phenotype phenotype) {
        var showing = new ArrayList<Genotype.Diploid>();
        looks.forEach(
                (pair, look) -> {
                    if (look.equals(phenotype)) {
                        showing.add(pair);
                    }
                });
        return List.copyOf(showing);
    }

    /// Whether naming the look names the allele: everything that looks so has it, or the look
    /// bears its name, as where several alleles look like the one the trade knows.
    public boolean reveals(Phenotype phenotype, Allele allele) {
        return phenotype.name().equals(allele.name())
                || showing(phenotype).stream().allMatch(pair -> pair.carries(allele));
    }
}
