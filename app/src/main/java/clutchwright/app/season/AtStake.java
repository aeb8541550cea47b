package clutchwright.app.season;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedSet;
import java.util.Set;

/// What two parents may hand down, without regard to how often.
public record AtStake(GeneticModel model, ParentGenotype dam, ParentGenotype sire) {

    /// Loci at which a parent may have anything, in naming order.
    List<LocusId> loci() {
        return model.loci().keySet().stream()
                .filter(locus -> dam.loci().containsKey(locus) || sire.loci().containsKey(locus))
                .toList();
    }

    /// The pairs of alleles that an embryo may have.
    SequencedSet<Genotype.Diploid> pairs(LocusId locus) {
        var pairs = new LinkedHashSet<Genotype.Diploid>();
        for (var fromDam : alleles(dam, locus)) {
            for (var fromSire : alleles(sire, locus)) {
                pairs.add(new Genotype.Diploid(fromDam, fromSire));
            }
        }
        return pairs;
    }

    /// The visible forms that an embryo may have at a locus, in the order of the locus.
    List<Phenotype> forms(LocusId locus) {
        var map = model.theLocus(locus);
        var possible = pairs(locus);
        return map.looks().entrySet().stream()
                .filter(look -> possible.contains(look.getKey()))
                .map(look -> look.getValue())
                .filter(Phenotype::visible)
                .distinct()
                .toList();
    }

    /// Alleles of which every embryo has a copy that does not show by itself.
    List<Allele> certainHets() {
        return loci().stream()
                .flatMap(
                        locus ->
                                model.theLocus(locus).locus().alleles().stream()
                                        .filter(allele -> isCertainHet(allele)))
                .toList();
    }

    private boolean isCertainHet(Allele allele) {
        if (allele.isWild()) {
            return false;
        }
        var pairs = pairs(allele.locus());
        var map = model.theLocus(allele.locus());
        return pairs.stream().allMatch(pair -> pair.carries(allele))
                && pairs.stream().anyMatch(pair -> !map.phenotypeOf(pair).visible());
    }

    /// Whether young may have all these parts; linkage is not looked at.
    boolean mayGive(List<Caution.Part> parts) {
        return parts.stream().allMatch(this::mayGive);
    }

    private boolean mayGive(Caution.Part part) {
        return pairs(part.allele().locus()).stream().anyMatch(part::holdsFor);
    }

    /// Whether a parent may have all these parts.
    static boolean mayHave(ParentGenotype parent, List<Caution.Part> parts) {
        return parts.stream()
                .allMatch(
                        part -> {
                            var genotypes = parent.loci().get(part.allele().locus());
                            return genotypes == null
                                    ? part.allele().isWild()
                                    : genotypes.outcomes().stream().anyMatch(part::holdsFor);
                        });
    }

    private static Set<Allele> alleles(ParentGenotype parent, LocusId locus) {
        var genotypes = parent.loci().get(locus);
        if (genotypes == null) {
            return Set.of(Allele.wildOf(locus));
        }
        var alleles = new LinkedHashSet<Allele>();
        genotypes.outcomes().forEach(genotype -> alleles.addAll(genotype.alleles()));
        return alleles;
    }
}
