package clutchwright.engine.planning;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.random.RandomGenerator;

/// Draws what two parents have in truth, as far as that is not known, and gives the kinds of
/// young that they then have: all eggs of a clutch come from the same two animals.
public final class ParentDraw {

    private final GeneticModel model;
    private final ParentGenotype dam;
    private final ParentGenotype sire;
    private final SequencedMap<LocusId, Distribution<ParentPair>> together;
    private final PriceList prices;
    private final List<LocusId> loci;
    private final Map<List<ParentPair>, ClutchKinds> known = new HashMap<>();

    /// @param together their genotypes at the loci where what one carries says something of the
    ///     other
    public ParentDraw(
            GeneticModel model,
            ParentGenotype dam,
            ParentGenotype sire,
            SequencedMap<LocusId, Distribution<ParentPair>> together,
            PriceList prices) {
        this.model = model;
        this.dam = dam;
        this.sire = sire;
        this.together = together;
        this.prices = prices;
        SequencedSet<LocusId> all = new LinkedHashSet<>(dam.loci().keySet());
        all.addAll(sire.loci().keySet());
        this.loci = List.copyOf(all);
    }

    /// The kinds of one draw; not for two threads at once.
    public ClutchKinds draw(RandomGenerator random) {
        var drawn = new ArrayList<ParentPair>(loci.size());
        for (var locus : loci) {
            drawn.add(pair(locus, random));
        }
        return known.computeIfAbsent(List.copyOf(drawn), this::kinds);
    }

    private ClutchKinds kinds(List<ParentPair> drawn) {
        var hers = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        var his = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        for (var i = 0; i < loci.size(); i++) {
            hers.put(loci.get(i), Distribution.certain(drawn.get(i).dam()));
            his.put(loci.get(i), Distribution.certain(drawn.get(i).sire()));
        }
        return ClutchKinds.of(
                Cross.of(
                        model,
                        new ParentGenotype(hers, dam.haplotypes()),
                        new ParentGenotype(his, sire.haplotypes())),
                prices);
    }

    private ParentPair pair(LocusId locus, RandomGenerator random) {
        var joint = Optional.ofNullable(together.get(locus));
        if (joint.isPresent() && !model.theLocus(locus).locus().isSexLinked()) {
            return one(joint.get(), random);
        }
        return new ParentPair(
                genotype(dam, locus, Sex.FEMALE, random), genotype(sire, locus, Sex.MALE, random));
    }

    private Genotype genotype(
            ParentGenotype parent, LocusId locus, Sex sex, RandomGenerator random) {
        return Optional.ofNullable(parent.loci().get(locus))
                .map(genotypes -> one(genotypes, random))
                .orElseGet(() -> model.wildType(locus, sex));
    }

    private static <T> T one(Distribution<T> of, RandomGenerator random) {
        var left = random.nextDouble();
        T last = of.outcomes().getLast();
        for (var each : of.chances().entrySet()) {
            left -= each.getValue().value();
            if (left < 0) {
                return each.getKey();
            }
        }
        return last;
    }
}
