package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;

/// What is known at one locus of a group, with what the look leaves open.
record LocusDetail(Outcome.AtLocus at, List<Outcome.Held> carries, List<Outcome.Held> homozygous) {

    /// @param shown number of the form that shows, or [ActiveLocus#NOTHING]
    static LocusDetail of(
            ActiveLocus locus,
            int shown,
            boolean masked,
            Distribution<Genotype> genotypes,
            Distribution<Allele> fromDam,
            Distribution<Allele> fromSire) {
        var carries = new ArrayList<Outcome.Held>();
        var homozygous = new ArrayList<Outcome.Held>();
        for (var allele : locus.alleles) {
            if (allele.isWild()) {
                continue;
            }
            // Where nothing shows the wild type may be there, so that the look reveals no allele.
            if (shown != ActiveLocus.NOTHING && locus.map.reveals(locus.forms.get(shown), allele)) {
                var twice = genotypes.chanceThat(genotype -> genotype.copiesOf(allele) == 2);
                if (!twice.isNone() && !twice.isWhole()) {
                    homozygous.add(new Outcome.Held(allele, twice));
                }
            } else {
                var there = genotypes.chanceThat(genotype -> genotype.carries(allele));
                if (!there.isNone()) {
                    carries.add(new Outcome.Held(allele, there));
                }
            }
        }
        return new LocusDetail(
                new Outcome.AtLocus(locus.id, genotypes, fromDam, fromSire, masked),
                carries,
                homozygous);
    }

    /// The same locus in groups that look alike, mixed by weight.
    static LocusDetail mixed(
            ActiveLocus locus, int shown, List<LocusDetail> details, List<Fraction> weights) {
        var masked = details.stream().allMatch(detail -> detail.at.masked());
        return of(
                locus,
                shown,
                masked,
                Mixture.of(details.stream().map(detail -> detail.at.genotypes()).toList(), weights),
                Mixture.of(details.stream().map(detail -> detail.at.fromDam()).toList(), weights),
                Mixture.of(details.stream().map(detail -> detail.at.fromSire()).toList(), weights));
    }
}
