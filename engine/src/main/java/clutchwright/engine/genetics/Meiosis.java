package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// How a parent makes gametes. Mendel's laws, and recombination without interference.
/// Source: `docs/mathematics.md`, section "Cross".
final class Meiosis {

    private Meiosis() {}

    /// At one autosomal locus.
    static List<Gamete.Source> ofOne(ActiveLocus locus, Sex parent) {
        var sources = new ArrayList<Gamete.Source>();
        genotypes(locus, parent)
                .chances()
                .forEach(
                        (genotype, weight) ->
                                sources.add(
                                        new Gamete.Source(
                                                weight,
                                                segregate(
                                                        List.of(Gamete.EMPTY), locus, genotype))));
        return sources;
    }

    /// At several linked autosomal loci, in the order on the chromosome.
    ///
    /// @param gaps recombination between neighbours
    static List<Gamete.Source> ofLinked(
            List<ActiveLocus> loci, List<Fraction> gaps, Sex parent, List<Haplotype> haplotypes) {
        var sources = new ArrayList<Gamete.Source>();
        for (var held : allGenotypes(loci, parent)) {
            var phases = Phases.of(loci, held.genotypes(), haplotypes);
            var weight = held.weight().dividedBy(Fraction.of(phases.size(), 1));
            for (var phase : phases) {
                sources.add(new Gamete.Source(weight, phase.gametes(gaps)));
            }
        }
        return sources;
    }

    /// At all sex-linked loci. Given the sex that the gamete decides, or in the parent that does
    /// not decide it, the loci are independent: each has its own recombination with the part of
    /// the chromosome that decides the sex.
    static List<Gamete.Source> ofSexLinked(
            List<ActiveLocus> loci, Sex parent, SexDetermination sexes) {
        var sources = new ArrayList<Gamete.Source>();
        for (var held : allGenotypes(loci, parent)) {
            var gametes = new ArrayList<Gamete>();
            if (parent == sexes.heterogametic()) {
                for (var sex : Sex.values()) {
                    gametes.addAll(deciding(loci, held.genotypes(), sex, sexes));
                }
            } else {
                List<Gamete> product = List.of(Gamete.EMPTY);
                for (var i = 0; i < loci.size(); i++) {
                    product = segregate(product, loci.get(i), held.genotypes().get(i));
                }
                gametes.addAll(product);
            }
            sources.add(new Gamete.Source(held.weight(), List.copyOf(gametes)));
        }
        return sources;
    }

    private static List<Gamete> deciding(
            List<ActiveLocus> loci, List<Genotype> genotypes, Sex sex, SexDetermination sexes) {
        List<Gamete> product = List.of(new Gamete(List.of(), Fraction.HALF, Optional.of(sex)));
        for (var i = 0; i < loci.size(); i++) {
            var locus = loci.get(i);
            var r = recombination(locus);
            var alleles = genotypes.get(i).alleles();
            // Phased lists the shared chromosome's allele first, the limited one's last.
            var kept = sex == sexes.heterogametic() ? alleles.getLast() : alleles.getFirst();
            var changed = sex == sexes.heterogametic() ? alleles.getFirst() : alleles.getLast();
            var next = new ArrayList<Gamete>();
            for (var gamete : product) {
                if (kept.equals(changed)) {
                    next.add(gamete.with(locus.numberOf(kept), Fraction.WHOLE));
                } else {
                    next.add(gamete.with(locus.numberOf(kept), r.complement()));
                    if (!r.isNone()) {
                        next.add(gamete.with(locus.numberOf(changed), r));
                    }
                }
            }
            product = next;
        }
        return product;
    }

    private static Fraction recombination(ActiveLocus locus) {
        return switch (locus.map.locus().inheritance()) {
            case Inheritance.SexLinked(var r) -> r;
            case Inheritance.Autosomal() -> Fraction.HALF;
        };
    }

    private static List<Gamete> segregate(
            List<Gamete> product, ActiveLocus locus, Genotype genotype) {
        var alleles = genotype.alleles();
        var first = locus.numberOf(alleles.getFirst());
        var second = locus.numberOf(alleles.getLast());
        var next = new ArrayList<Gamete>();
        for (var gamete : product) {
            if (first == second) {
                next.add(gamete.with(first, Fraction.WHOLE));
            } else {
                next.add(gamete.with(first, Fraction.HALF));
                next.add(gamete.with(second, Fraction.HALF));
            }
        }
        return next;
    }

    /// Genotypes that a parent may have at several loci together.
    private record Held(Fraction weight, List<Genotype> genotypes) {}

    private static List<Held> allGenotypes(List<ActiveLocus> loci, Sex parent) {
        List<Held> product = List.of(new Held(Fraction.WHOLE, List.of()));
        for (var locus : loci) {
            var next = new ArrayList<Held>();
            for (var held : product) {
                for (var entry : genotypes(locus, parent).chances().entrySet()) {
                    var more = new ArrayList<>(held.genotypes());
                    more.add(entry.getKey());
                    next.add(new Held(held.weight().times(entry.getValue()), more));
                }
            }
            product = next;
        }
        return product;
    }

    private static Distribution<Genotype> genotypes(ActiveLocus locus, Sex parent) {
        return switch (parent) {
            case FEMALE -> locus.dam;
            case MALE -> locus.sire;
        };
    }

    /// Gametes that bring the same, as one.
    static List<Gamete> merged(List<Gamete> gametes) {
        var chances = new LinkedHashMap<List<Integer>, Fraction>();
        gametes.forEach(gamete -> chances.merge(gamete.alleles(), gamete.chance(), Fraction::plus));
        var merged = new ArrayList<Gamete>();
        chances.forEach(
                (alleles, chance) -> merged.add(new Gamete(alleles, chance, Optional.empty())));
        return merged;
    }
}
