package clutchwright.engine.agreement;

import clutchwright.engine.agreement.RandomCollection.Draws;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;

/// A species of one to three loci: series of up to four alleles (now and then seven), sex linked
/// or not, with lethals, forms that look alike and forms that mask.
final class RandomGenes {

    private static final List<Fraction> RECOMBINATIONS =
            List.of(Fraction.NONE, Fraction.of(1, 20), Fraction.of(1, 3), Fraction.HALF);
    private static final List<Fraction> VIABILITIES =
            List.of(Fraction.NONE, Fraction.NONE, Fraction.HALF, Fraction.of(3, 4));

    final GeneticModel model;
    private final Draws draws;

    RandomGenes(Draws draws) {
        this.draws = draws;
        var loci = new LinkedHashMap<LocusId, PhenotypeMap>();
        var many = draws.oneIn(2) ? 1 : 1 + draws.below(3);
        var sevenAlleles = many == 1 && draws.oneIn(25);
        for (var i = 0; i < many; i++) {
            var id = new LocusId("l" + i);
            loci.put(
                    id,
                    locus(
                            id,
                            sevenAlleles
                                    ? 6
                                    : Math.min(3, 1 + draws.below(4) / 2 + draws.below(2))));
        }
        model =
                new GeneticModel(
                        draws.oneIn(4) ? SexDetermination.ZW : SexDetermination.XY,
                        loci,
                        LinkageMap.NONE,
                        List.of(),
                        List.of());
    }

    int loci() {
        return model.loci().size();
    }

    boolean hasLongSeries() {
        return model.loci().values().stream().anyMatch(map -> map.locus().alleles().size() > 4);
    }

    /// An unknown sex ties sex-linked loci to each other, which the inference says it leaves
    /// out.
    boolean maySexBeUnknown() {
        return model.loci().values().stream().filter(map -> map.locus().isSexLinked()).count() < 2;
    }

    private PhenotypeMap locus(LocusId id, int mutants) {
        var alleles = new ArrayList<Allele>();
        alleles.add(Allele.wildOf(id));
        for (var i = 0; i < mutants; i++) {
            alleles.add(new Allele(id, "a" + i));
        }
        Inheritance inheritance =
                draws.oneIn(3)
                        ? new Inheritance.SexLinked(draws.pick(RECOMBINATIONS))
                        : new Inheritance.Autosomal();
        var locus = new Locus(id, inheritance, alleles);
        var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        var viabilities = new HashMap<Genotype.Diploid, Viability>();
        for (var pair : locus.allPairs()) {
            var plain = looks.isEmpty() || draws.oneIn(2) && !pair.isHomozygous();
            var form = new Phenotype(id, "Form " + draws.below(3), true);
            looks.put(pair, plain ? Phenotype.normalOf(id) : form);
            if (looks.size() > 1 && draws.oneIn(6)) {
                var standing = draws.oneIn(4) ? Standing.DISPUTED : Standing.SETTLED;
                viabilities.put(pair, new Viability(draws.pick(VIABILITIES), standing));
            }
        }
        var maskings = new HashMap<Phenotype, Masking>();
        for (var look : looks.values()) {
            if (look.visible() && draws.oneIn(6)) {
                maskings.put(
                        look,
                        draws.oneIn(2)
                                ? new Masking.Everything()
                                : new Masking.These(Set.of(new LocusId("l" + draws.below(3)))));
            }
        }
        return new PhenotypeMap(locus, looks, viabilities, maskings);
    }
}
