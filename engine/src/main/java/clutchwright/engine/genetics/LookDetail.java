package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/// What is known, locus by locus, of offspring with a certain look in one block.
///
/// @param sexes empty where the block does not tell the sex
record LookDetail(List<LocusDetail> loci, Map<Sex, Fraction> sexes) {

    static LookDetail of(
            Block block, MaskingCase masking, Look look, SexDetermination determination) {
        var loci = new ArrayList<LocusDetail>(block.loci.size());
        for (var i = 0; i < block.loci.size(); i++) {
            var at = i;
            var locus = block.loci.get(i);
            loci.add(
                    LocusDetail.of(
                            locus,
                            look.shown().get(i),
                            masking.hides(locus.place),
                            distribution(
                                    block, look, kind -> genotype(kind, locus, at, determination)),
                            distribution(
                                    block, look, kind -> locus.alleles.get(kind.fromDam().get(at))),
                            distribution(
                                    block,
                                    look,
                                    kind -> locus.alleles.get(kind.fromSire().get(at)))));
        }
        var sexes = new EnumMap<Sex, Fraction>(Sex.class);
        if (block.tellsSex()) {
            var bySex = distribution(block, look, kind -> kind.sex().orElseThrow());
            for (var sex : Sex.values()) {
                sexes.put(sex, bySex.chanceOf(sex));
            }
        }
        return new LookDetail(loci, sexes);
    }

    private static Genotype genotype(
            Embryo kind, ActiveLocus locus, int at, SexDetermination determination) {
        // Only sex-linked loci ask for the sex, and their block knows it.
        return locus.genotype(
                kind.fromDam().get(at),
                kind.fromSire().get(at),
                kind.sex().orElse(Sex.FEMALE),
                determination);
    }

    private static <T> Distribution<T> distribution(
            Block block, Look look, Function<Embryo, T> of) {
        var sums = new LinkedHashMap<T, Fraction>();
        for (var kind : look.kinds()) {
            sums.merge(of.apply(kind), block.chanceOf(kind), Fraction::plus);
        }
        return Distribution.proportionalTo(sums).orElseThrow();
    }
}
