package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Ways in which a parent's alleles at linked loci can stand on its two chromosomes.
final class Phases {

    private Phases() {}

    /// Two homologous chromosomes.
    ///
    /// @param one number of the allele at each locus
    record Phase(List<Integer> one, List<Integer> other) {

        /// @param gaps recombination between neighbours; no interference
        List<Gamete> gametes(List<Fraction> gaps) {
            var strands = List.of(one, other);
            var made = new ArrayList<Gamete>();
            for (var start = 0; start < 2; start++) {
                walk(strands, gaps, start, new ArrayList<>(), Fraction.HALF, made);
            }
            return Meiosis.merged(made);
        }

        private static void walk(
                List<List<Integer>> strands,
                List<Fraction> gaps,
                int strand,
                List<Integer> soFar,
                Fraction chance,
                List<Gamete> made) {
            var place = soFar.size();
            var alleles = new ArrayList<>(soFar);
            alleles.add(strands.get(strand).get(place));
            if (place == gaps.size()) {
                made.add(new Gamete(List.copyOf(alleles), chance, Optional.empty()));
                return;
            }
            var r = gaps.get(place);
            walk(strands, gaps, strand, alleles, chance.times(r.complement()), made);
            if (!r.isNone()) {
                walk(strands, gaps, 1 - strand, alleles, chance.times(r), made);
            }
        }
    }

    /// Every phase of these genotypes that no statement rules out, each once.
    ///
    /// @throws IllegalArgumentException if the statements contradict each other
    static List<Phase> of(
            List<ActiveLocus> loci, List<Genotype> genotypes, List<Haplotype> haplotypes) {
        var phases = new ArrayList<Phase>();
        extend(loci, genotypes, false, List.of(), List.of(), phases);
        for (var haplotype : haplotypes) {
            if (concerns(haplotype, loci, genotypes)) {
                phases.removeIf(phase -> !agrees(haplotype, loci, phase));
            }
        }
        if (phases.isEmpty()) {
            throw new IllegalArgumentException(
                    "no phase of " + genotypes + " has all these together: " + haplotypes);
        }
        return phases;
    }

    /// The first locus with two alleles fixes which chromosome is called `one`.
    private static void extend(
            List<ActiveLocus> loci,
            List<Genotype> genotypes,
            boolean fixed,
            List<Integer> one,
            List<Integer> other,
            List<Phase> phases) {
        var place = one.size();
        if (place == loci.size()) {
            phases.add(new Phase(one, other));
            return;
        }
        var genotype = genotypes.get(place);
        var first = loci.get(place).numberOf(genotype.alleles().getFirst());
        var second = loci.get(place).numberOf(genotype.alleles().getLast());
        var later = fixed || first != second;
        extend(loci, genotypes, later, plus(one, first), plus(other, second), phases);
        if (fixed && first != second) {
            extend(loci, genotypes, true, plus(one, second), plus(other, first), phases);
        }
    }

    private static List<Integer> plus(List<Integer> alleles, int allele) {
        var more = new ArrayList<>(alleles);
        more.add(allele);
        return more;
    }

    /// A parent that lacks one of the alleles is not what the statement speaks of.
    private static boolean concerns(
            Haplotype haplotype, List<ActiveLocus> loci, List<Genotype> genotypes) {
        for (var i = 0; i < loci.size(); i++) {
            var allele = haplotype.alleles().get(loci.get(i).id);
            if (allele != null && !genotypes.get(i).carries(allele)) {
                return false;
            }
        }
        return true;
    }

    private static boolean agrees(Haplotype haplotype, List<ActiveLocus> loci, Phase phase) {
        return holds(haplotype, loci, phase.one()) || holds(haplotype, loci, phase.other());
    }

    private static boolean holds(
            Haplotype haplotype, List<ActiveLocus> loci, List<Integer> strand) {
        for (var i = 0; i < loci.size(); i++) {
            var allele = haplotype.alleles().get(loci.get(i).id);
            if (allele != null && loci.get(i).numberOf(allele) != strand.get(i)) {
                return false;
            }
        }
        return true;
    }
}
