package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/// Hatchlings that look alike: what shows, how often, and what they may hold unseen.
///
/// @param shows the visible forms in naming order; empty where nothing shows
/// @param chance among the embryos that live, above zero
/// @param sexes chance of each sex within the group, summing to one
/// @param loci every locus that the pairing touches, in naming order, given this group
/// @param carries alleles that the look does not reveal, in naming order, each with a chance
///     above zero
/// @param homozygous alleles that show and of which there may be an unseen second copy
public record Outcome(
        List<Phenotype> shows,
        Fraction chance,
        Map<Sex, Fraction> sexes,
        List<AtLocus> loci,
        List<Held> carries,
        List<Held> homozygous) {

    public Outcome {
        shows = List.copyOf(shows);
        sexes = Collections.unmodifiableMap(new EnumMap<>(sexes));
        loci = List.copyOf(loci);
        carries = List.copyOf(carries);
        homozygous = List.copyOf(homozygous);
    }

    /// The forms in naming order, or `Normal`.
    public String name() {
        return shows.isEmpty()
                ? Phenotype.NORMAL
                : shows.stream().map(Phenotype::name).collect(Collectors.joining(" "));
    }

    /// An allele with its chance of being there.
    public record Held(Allele allele, Fraction chance) {}

    /// One locus within the group.
    ///
    /// @param fromDam the allele on the strand from the dam, given the group
    /// @param fromSire the allele on the strand from the sire, given the group
    /// @param masked whether another locus hides this one in the whole group
    public record AtLocus(
            LocusId locus,
            Distribution<Genotype> genotypes,
            Distribution<Allele> fromDam,
            Distribution<Allele> fromSire,
            boolean masked) {}
}
