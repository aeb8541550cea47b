package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Haplotype;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.List;

/// What an animal has at the loci of a [GeneUnit], phases of linked loci included.
///
/// @param genotypes in the order of the unit's loci
/// @param strands of each set of linked loci the two chromosomes, in a fixed order; each a list of
///     alleles
record UnitState(List<Genotype> genotypes, List<List<Allele>> strands) {

    UnitState {
        genotypes = List.copyOf(genotypes);
        strands = List.copyOf(strands);
    }

    /// As a certain parent.
    ParentGenotype asParent() {
        var parent = ParentGenotype.WILD;
        for (var genotype : genotypes) {
            parent = parent.with(Distribution.certain(genotype));
        }
        for (var strand : strands) {
            parent = parent.withTogether(Haplotype.of(strand));
        }
        return parent;
    }

    /// The two chromosomes in the order in which they are always listed.
    static List<List<Allele>> ordered(List<Allele> one, List<Allele> other) {
        for (var i = 0; i < one.size(); i++) {
            var order = one.get(i).name().compareTo(other.get(i).name());
            if (order != 0) {
                return order < 0
                        ? List.of(List.copyOf(one), List.copyOf(other))
                        : List.of(List.copyOf(other), List.copyOf(one));
            }
        }
        return List.of(List.copyOf(one), List.copyOf(other));
    }

    /// Every way in which alleles can stand on two chromosomes, each once.
    static List<List<List<Allele>>> phases(List<Genotype> genotypes) {
        var phases = new ArrayList<List<List<Allele>>>();
        extend(genotypes, List.of(), List.of(), phases);
        return phases.stream().distinct().toList();
    }

    private static void extend(
            List<Genotype> genotypes,
            List<Allele> one,
            List<Allele> other,
            List<List<List<Allele>>> phases) {
        if (one.size() == genotypes.size()) {
            phases.add(ordered(one, other));
            return;
        }
        var alleles = genotypes.get(one.size()).alleles();
        var first = alleles.getFirst();
        var second = alleles.getLast();
        extend(genotypes, plus(one, first), plus(other, second), phases);
        extend(genotypes, plus(one, second), plus(other, first), phases);
    }

    private static List<Allele> plus(List<Allele> alleles, Allele allele) {
        var more = new ArrayList<>(alleles);
        more.add(allele);
        return more;
    }
}
