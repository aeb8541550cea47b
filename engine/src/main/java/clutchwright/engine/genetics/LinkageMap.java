package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.List;

/// Which autosomal loci lie on one chromosome, in order, with the recombination fraction of
/// each gap.
///
/// Gaps recombine independently (no interference); loci that stand in no group assort
/// independently.
///
/// @param groups no locus in two of them
public record LinkageMap(List<Group> groups) {

    public static final LinkageMap NONE = new LinkageMap(List.of());

    public LinkageMap {
        groups = List.copyOf(groups);
        var all = groups.stream().flatMap(group -> group.loci().stream()).toList();
        if (all.stream().distinct().count() != all.size()) {
            throw new IllegalArgumentException("a locus stands in two linkage groups: " + groups);
        }
    }

    /// @param loci at least two, in the order on the chromosome
    /// @param gaps one fewer than loci: recombination fraction between neighbours, 0 to 1/2
    public record Group(List<LocusId> loci, List<Fraction> gaps) {

        public Group {
            loci = List.copyOf(loci);
            gaps = List.copyOf(gaps);
            if (loci.size() < 2 || gaps.size() != loci.size() - 1) {
                throw new IllegalArgumentException(
                        "%d loci with %d gaps between them".formatted(loci.size(), gaps.size()));
            }
            for (var gap : gaps) {
                if (gap.compareTo(Fraction.NONE) < 0 || gap.compareTo(Fraction.HALF) > 0) {
                    throw new IllegalArgumentException(
                            "recombination is " + gap + ", not between 0 and 1/2");
                }
            }
        }
    }
}
