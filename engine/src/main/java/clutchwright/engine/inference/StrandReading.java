package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Held.AtLocus;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.inference.LocusShape.State;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// Which parent an animal has each of its two alleles of a locus from.
final class StrandReading {

    private final Posteriors posteriors;
    private final Kin kin;
    private final LocusId locus;

    StrandReading(Posteriors posteriors, LocusId locus) {
        this.posteriors = posteriors;
        this.kin = posteriors.inference().kin();
        this.locus = locus;
    }

    Held.Strands of(AnimalId animal, AtLocus at) {
        var fromDam = new LinkedHashMap<Allele, Fraction>();
        var fromSire = new LinkedHashMap<Allele, Fraction>();
        at.genotypes()
                .chances()
                .forEach(
                        (genotype, chance) ->
                                laid(animal, genotype)
                                        .chances()
                                        .forEach(
                                                (pair, share) -> {
                                                    var part = chance.times(share);
                                                    fromDam.merge(pair.dam(), part, Fraction::plus);
                                                    fromSire.merge(
                                                            pair.sire(), part, Fraction::plus);
                                                }));
        return new Held.Strands(new Distribution<>(fromDam), new Distribution<>(fromSire));
    }

    private record Laid(Allele dam, Allele sire) {

        Laid turned() {
            return new Laid(/* dam= */ sire, /* sire= */ dam);
        }
    }

    /// One genotype on its two strands.
    private Distribution<Laid> laid(AnimalId animal, Genotype genotype) {
        var plain = plain(genotype);
        if (genotype instanceof Genotype.Phased || genotype.isHomozygous()) {
            return Distribution.certain(plain);
        }
        var number = kin.numberOf(animal);
        var hasParents = !kin.founder[number] && !kin.withoutSire[number];
        if (!hasParents
                || !(posteriors.inference().at(locus)
                        instanceof LocusAnswer.Settled(var chances))) {
            return Distribution.certain(plain);
        }
        var weights = new LinkedHashMap<Laid, Double>();
        var asPlain = weight(chances, number, plain, genotype);
        var turned = weight(chances, number, plain.turned(), genotype);
        if (!(asPlain + turned > 0)) {
            return Distribution.certain(plain);
        }
        put(weights, plain, asPlain / (asPlain + turned));
        put(weights, plain.turned(), turned / (asPlain + turned));
        return NearFractions.of(weights);
    }

    private static void put(SequencedMap<Laid, Double> weights, Laid laid, double chance) {
        if (chance >= LocusChances.LEAST) {
            weights.put(laid, chance);
        }
    }

    /// One way to lay a genotype on two strands when nothing tells which parent gave which.
    private Laid plain(Genotype genotype) {
        var sexes = posteriors.inference().records().model().sexes();
        return switch (genotype) {
            // What is not wild first: it is what one looks for.
            case Genotype.Diploid(var first, var second) ->
                    first.isWild() ? new Laid(second, first) : new Laid(first, second);
            // The chromosome that only one sex has comes from the parent of that sex.
            case Genotype.Phased(var shared, var limited) ->
                    sexes.heterogametic() == Sex.MALE
                            ? new Laid(shared, limited)
                            : new Laid(limited, shared);
        };
    }

    /// In proportion to the chance that the parents gave the genotype just so: their chances
    /// together given it, times the share of that way among the two ways they can give it.
    private double weight(LocusChances chances, int number, Laid laid, Genotype genotype) {
        var shape = chances.network().shape;
        var dam = kin.dam[number];
        var sire = sireVariable(number);
        var scope = new int[1 + (dam == Kin.NONE ? 0 : 1) + (sire == Kin.NONE ? 0 : 1)];
        scope[0] = number;
        if (dam != Kin.NONE) {
            scope[1] = dam;
        }
        if (sire != Kin.NONE) {
            scope[scope.length - 1] = sire;
        }
        var table = chances.solved().joint(scope);
        var young = shape.states(kin.builds[number]);
        var dams = dam == Kin.NONE ? List.<State>of() : shape.states(Build.FEMALE);
        var sires = sire == Kin.NONE ? List.<State>of() : shape.states(Build.MALE);
        var inner = Math.max(1, dams.size()) * Math.max(1, sires.size());
        var sum = 0.0;
        for (var cell = 0; cell < table.length; cell++) {
            var state = young.get(cell / inner);
            if (table[cell] > 0 && state.genotype().pair().equals(genotype.pair())) {
                var ofDam =
                        dams.isEmpty()
                                ? stranger(chances, Sex.FEMALE, state)
                                : gametes(
                                        shape,
                                        dams.get(cell % inner / Math.max(1, sires.size())),
                                        Sex.FEMALE,
                                        state);
                var ofSire =
                        sires.isEmpty()
                                ? stranger(chances, Sex.MALE, state)
                                : gametes(
                                        shape,
                                        sires.get(cell % inner % sires.size()),
                                        Sex.MALE,
                                        state);
                var so = chance(shape, ofDam, laid.dam()) * chance(shape, ofSire, laid.sire());
                var other = chance(shape, ofDam, laid.sire()) * chance(shape, ofSire, laid.dam());
                sum += so + other > 0 ? table[cell] * so / (so + other) : 0;
            }
        }
        return sum;
    }

    private int sireVariable(int number) {
        return kin.question[number] == Kin.NONE
                ? kin.sire[number]
                : LocusNetwork.trueSire(kin, kin.question[number]);
    }

    private static double chance(LocusShape shape, double[] gametes, Allele allele) {
        return gametes[shape.alleles.indexOf(allele)];
    }

    /// Of a young one of unknown sex the mean over both sexes.
    private static double[] gametes(LocusShape shape, State parent, Sex parentSex, State young) {
        var mean = new double[shape.alleles.size()];
        for (var sex : young.sex()) {
            var one = shape.gametes(parent, parentSex, sex);
            for (var a = 0; a < mean.length; a++) {
                mean[a] += one[a] / young.sex().size();
            }
        }
        return mean;
    }

    private static double[] stranger(LocusChances chances, Sex sex, State young) {
        var shape = chances.network().shape;
        var states = shape.states(Build.of(sex));
        var weights = chances.network().population(Build.of(sex));
        var mean = new double[shape.alleles.size()];
        for (var s = 0; s < states.size(); s++) {
            var one = gametes(shape, states.get(s), sex, young);
            for (var a = 0; a < mean.length; a++) {
                mean[a] += weights[s] * one[a];
            }
        }
        return mean;
    }
}
