package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusShape.State;
import clutchwright.engine.network.Quality;
import clutchwright.engine.network.Solution;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.function.Predicate;

/// The chances of every animal's genotypes at one locus, given all records.
public final class LocusChances {

    /// Chances below this are left out: they are rounding, or as good as.
    static final double LEAST = 1e-12;

    private final Kin kin;
    private final LocusNetwork network;
    private final Solution.Solved solved;
    private final double logLikelihood;

    LocusChances(Kin kin, LocusNetwork network, Solution.Solved solved, double logLikelihood) {
        this.kin = kin;
        this.network = network;
        this.solved = solved;
        this.logLikelihood = logLikelihood;
    }

    public LocusId locus() {
        return network.shape.map.locus().id();
    }

    /// Natural logarithm of the chance of all that was seen and tested at this locus.
    public double logLikelihood() {
        return logLikelihood;
    }

    public Method method() {
        return switch (solved.quality()) {
            case Quality.Exact() -> new Method.Exact();
            case Quality.Estimated(var error) -> new Method.Sampled(error);
            case Quality.Sampled(var error) -> new Method.Sampled(error);
        };
    }

    /// How far the animal's chances may be off, absolute; 0 where they are exact.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public double errorOf(AnimalId animal) {
        return solved.error(kin.numberOf(animal));
    }

    /// Genotype to chance, in the order of the locus's alleles; those below 1e-12 are left out
    /// and the rest sum to one. Of an animal whose sex is not known, sex-linked genotypes of
    /// both sexes stand side by side.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public SequencedMap<Genotype, Double> of(AnimalId animal) {
        var number = kin.numberOf(animal);
        var states = network.shape.states(kin.builds[number]);
        var chances = new LinkedHashMap<Genotype, Double>();
        var sum = 0.0;
        for (var s = 0; s < states.size(); s++) {
            var chance = solved.chance(number, s);
            if (chance >= LEAST) {
                chances.merge(states.get(s).genotype(), chance, Double::sum);
                sum += chance;
            }
        }
        var whole = sum;
        chances.replaceAll((_, chance) -> chance / whole);
        return Collections.unmodifiableSequencedMap(chances);
    }

    /// The chance that the animal's genotype is such a one.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public double chanceThat(AnimalId animal, Predicate<Genotype> event) {
        var number = kin.numberOf(animal);
        var states = network.shape.states(kin.builds[number]);
        var sum = 0.0;
        for (var s = 0; s < states.size(); s++) {
            if (event.test(states.get(s).genotype())) {
                sum += solved.chance(number, s);
            }
        }
        return Math.min(1, sum);
    }

    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public double chanceOfCarrying(AnimalId animal, Allele allele) {
        return chanceThat(animal, genotype -> genotype.carries(allele));
    }

    /// The chances of several animals' genotypes together, in the order of the animals. Animals
    /// are not independent of each other: possible hets of one clutch are het together or not.
    ///
    /// @param animals each once, a few
    /// @throws IllegalArgumentException if one is not in the pedigree or stands there twice
    public SequencedMap<List<Genotype>, Double> together(List<AnimalId> animals) {
        if (animals.stream().distinct().count() != animals.size()) {
            throw new IllegalArgumentException("an animal twice: " + animals);
        }
        var numbers = animals.stream().mapToInt(kin::numberOf).toArray();
        var table = solved.joint(numbers);
        var chances = new LinkedHashMap<List<Genotype>, Double>();
        for (var cell = 0; cell < table.length; cell++) {
            if (table[cell] >= LEAST) {
                var genotypes = new ArrayList<Genotype>();
                for (var state : statesOf(cell, numbers)) {
                    genotypes.add(state.genotype());
                }
                chances.merge(List.copyOf(genotypes), table[cell], Double::sum);
            }
        }
        var sum = chances.values().stream().mapToDouble(Double::doubleValue).sum();
        chances.replaceAll((_, chance) -> chance / sum);
        return Collections.unmodifiableSequencedMap(chances);
    }

    private List<State> statesOf(int cell, int... numbers) {
        var states = new State[numbers.length];
        var rest = cell;
        for (var i = numbers.length - 1; i >= 0; i--) {
            var all = network.shape.states(kin.builds[numbers[i]]);
            states[i] = all.get(rest % all.size());
            rest /= all.size();
        }
        return Arrays.asList(states);
    }

    LocusNetwork network() {
        return network;
    }

    Kin kin() {
        return kin;
    }

    Solution.Solved solved() {
        return solved;
    }
}
