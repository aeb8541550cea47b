package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/// Divides the active loci into blocks that are independent of each other.
final class Partition {

    private Partition() {}

    /// In naming order of each block's first locus.
    static List<Block> blocks(
            GeneticModel model,
            List<ActiveLocus> loci,
            List<Haplotype> damHaplotypes,
            List<Haplotype> sireHaplotypes) {
        var units = new ArrayList<Embryos>();
        var placed = new BitSet();
        var sexLinked = loci.stream().filter(ActiveLocus::isSexLinked).toList();
        if (!sexLinked.isEmpty()) {
            sexLinked.forEach(locus -> placed.set(locus.place));
            units.add(
                    Embryos.of(
                            sexLinked,
                            Meiosis.ofSexLinked(sexLinked, Sex.FEMALE, model.sexes()),
                            Meiosis.ofSexLinked(sexLinked, Sex.MALE, model.sexes())));
        }
        for (var group : model.linkage().groups()) {
            var linked = LinkedLoci.of(group, loci);
            if (linked.loci().size() > 1) {
                linked.loci().forEach(locus -> placed.set(locus.place));
                units.add(linked.embryos(loci, damHaplotypes, sireHaplotypes));
            }
        }
        for (var locus : loci) {
            if (!placed.get(locus.place)) {
                units.add(
                        Embryos.of(
                                List.of(locus),
                                Meiosis.ofOne(locus, Sex.FEMALE),
                                Meiosis.ofOne(locus, Sex.MALE),
                                locus.couples()));
            }
        }
        return joined(units, Lethality.allOf(model, loci));
    }

    private static List<Block> joined(List<Embryos> units, List<Lethality> lethalities) {
        var groups = new ArrayList<>(units);
        for (var lethality : lethalities) {
            var touched = groups.stream().filter(unit -> touches(lethality, unit.loci())).toList();
            if (touched.size() > 1) {
                groups.removeAll(touched);
                groups.add(touched.stream().reduce(Embryos::and).orElseThrow());
            }
        }
        groups.sort(Comparator.comparingInt(unit -> unit.loci().getFirst().place));
        var blocks = new ArrayList<Block>(groups.size());
        for (var unit : groups) {
            var own =
                    lethalities.isEmpty()
                            ? lethalities
                            : lethalities.stream()
                                    .filter(lethality -> touches(lethality, unit.loci()))
                                    .toList();
            blocks.add(new Block(unit, own));
        }
        return List.copyOf(blocks);
    }

    private static boolean touches(Lethality lethality, List<ActiveLocus> loci) {
        return loci.stream().anyMatch(locus -> lethality.places().get(locus.place));
    }

    /// The active loci of one linkage group.
    ///
    /// @param gaps recombination between neighbours among them
    private record LinkedLoci(List<ActiveLocus> loci, List<Fraction> gaps) {

        static LinkedLoci of(LinkageMap.Group group, List<ActiveLocus> active) {
            var loci = new ArrayList<ActiveLocus>();
            var gaps = new ArrayList<Fraction>();
            var sinceLast = Fraction.NONE;
            for (var i = 0; i < group.loci().size(); i++) {
                if (i > 0) {
                    sinceLast = over(sinceLast, group.gaps().get(i - 1));
                }
                var id = group.loci().get(i);
                var found = active.stream().filter(locus -> locus.id.equals(id)).findFirst();
                if (found.isPresent()) {
                    if (!loci.isEmpty()) {
                        gaps.add(sinceLast);
                    }
                    loci.add(found.get());
                    sinceLast = Fraction.NONE;
                }
            }
            return new LinkedLoci(loci, gaps);
        }

        /// Two gaps in a row show recombination when just one of them recombines.
        private static Fraction over(Fraction r, Fraction s) {
            return r.times(s.complement()).plus(s.times(r.complement()));
        }

        Embryos embryos(List<ActiveLocus> active, List<Haplotype> dam, List<Haplotype> sire) {
            return Embryos.of(
                    loci,
                    Meiosis.ofLinked(loci, gaps, Sex.FEMALE, atActive(dam, active)),
                    Meiosis.ofLinked(loci, gaps, Sex.MALE, atActive(sire, active)));
        }

        /// Where both parents are wild type, a haplotype of anything else speaks of no one.
        private static List<Haplotype> atActive(
                List<Haplotype> haplotypes, List<ActiveLocus> active) {
            return haplotypes.stream()
                    .filter(
                            haplotype ->
                                    haplotype.alleles().values().stream()
                                            .allMatch(
                                                    allele ->
                                                            allele.isWild()
                                                                    || isActive(allele, active)))
                    .toList();
        }

        private static boolean isActive(Allele allele, List<ActiveLocus> active) {
            return active.stream().anyMatch(locus -> locus.id.equals(allele.locus()));
        }
    }
}
