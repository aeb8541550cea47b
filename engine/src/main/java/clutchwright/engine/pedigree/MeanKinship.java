package clutchwright.engine.pedigree;

import java.util.List;

/// How closely each animal is related to a group, itself included where it is of the group.
///
/// An animal of low mean kinship has genes that few others of the group have. Source: J.D. Ballou
/// and R.C. Lacy (1995); `docs/mathematics.md`, section "Kinship".
public final class MeanKinship {

    private final List<AnimalId> group;
    private final NumberedPedigree numbered;
    private final double[] ofNodes;
    private final double mean;

    MeanKinship(List<AnimalId> group, NumberedPedigree numbered, double[] ofNodes) {
        this.group = List.copyOf(group);
        this.numbered = numbered;
        this.ofNodes = ofNodes;
        this.mean = group.stream().mapToDouble(this::of).average().orElseThrow();
    }

    public List<AnimalId> group() {
        return group;
    }

    /// Mean of the animal's kinship with all of the group.
    ///
    /// @throws IllegalArgumentException if it is not in the pedigree
    public double of(AnimalId animal) {
        return ofNodes[numbered.theNode(animal)];
    }

    /// Mean over all pairs of the group, each with itself too.
    public double ofGroup() {
        return mean;
    }

    /// Expected heterozygosity of the group's young mated at random, as a part of the founders'.
    public double geneDiversity() {
        return 1 - mean;
    }

    /// So many founders, unrelated and equally represented, would have the same diversity.
    public double founderGenomeEquivalents() {
        return 1 / (2 * mean);
    }
}
