package clutchwright.engine.genetics;

import java.util.Comparator;
import java.util.List;

/// Finds the welfare cautions that a pairing calls for.
record CautionSearch(GeneticModel model, List<ActiveLocus> loci, List<Block> blocks) {

    /// Those of the parents and of every embryo the pairing can give, living or not.
    List<Caution> all() {
        return model.cautions().stream()
                .filter(
                        caution ->
                                canBe(caution.parts(), Sex.FEMALE)
                                        || canBe(caution.parts(), Sex.MALE)
                                        || canGive(caution.parts()))
                .distinct()
                .sorted(Comparator.comparing(Caution::concern).thenComparing(Caution::standing))
                .toList();
    }

    /// Loci of a parent are independent, so it is enough that each one may be so.
    private boolean canBe(List<Caution.Part> parts, Sex parent) {
        return parts.stream()
                        .filter(part -> !isActive(part))
                        .allMatch(part -> part.allele().isWild())
                && loci.stream().allMatch(locus -> canBeAt(locus, parts, parent));
    }

    private static boolean canBeAt(ActiveLocus locus, List<Caution.Part> parts, Sex parent) {
        var here = parts.stream().filter(part -> part.allele().locus().equals(locus.id)).toList();
        var genotypes = parent == Sex.FEMALE ? locus.dam : locus.sire;
        return here.isEmpty()
                || genotypes.outcomes().stream()
                        .anyMatch(
                                genotype ->
                                        here.stream().allMatch(part -> part.holdsFor(genotype)));
    }

    private boolean canGive(List<Caution.Part> parts) {
        return parts.stream()
                        .filter(part -> !isActive(part))
                        .allMatch(part -> part.allele().isWild())
                && blocks.stream()
                        .allMatch(
                                block ->
                                        block.conceived.stream()
                                                .anyMatch(
                                                        kind ->
                                                                Lethality.holdFor(
                                                                        parts, kind, block.loci)));
    }

    private boolean isActive(Caution.Part part) {
        return loci.stream().anyMatch(locus -> locus.id.equals(part.allele().locus()));
    }
}
