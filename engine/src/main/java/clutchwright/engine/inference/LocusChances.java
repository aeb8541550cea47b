package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusShape.State;
import clutchwright.engine.network.Change;
import clutchwright.engine.network.Quality;
import clutchwright.engine.network.Solution;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Predicate;

/// The chances of every animal's genotypes at one locus, given all records.
public final class LocusChances {

    /// Chances below this are left out: they are rounding, or as good as.
    static final double LEAST = 1e-12;

    /// Each genotype of an animal that others are to be judged together with costs a solution of
    /// its own: those of a series that are only there at the background are left out.
    private static final double LEAST_TOGETHER = 1e-9;

    private final CollectionRecords records;
    private final Kin kin;
    private final LocusNetwork network;
    private final Solution.Solved solved;
    private final double logLikelihood;
    private final double sireError;

    /// @param sireError how far a chance may be off because the sires in doubt are too many to
    ///     be weighed all together; 0 where they are not
    LocusChances(
            CollectionRecords records,
            Kin kin,
            LocusNetwork network,
            Solution.Solved solved,
            double logLikelihood,
            double sireError) {
        this.records = records;
        this.sireError = sireError;
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
            case Quality.Exact() ->
                    sireError > 0 ? new Method.Estimated(sireError) : new Method.Exact();
            case Quality.Estimated(var error) -> new Method.Estimated(error + sireError);
            case Quality.Sampled(var error) -> new Method.Sampled(error + sireError);
        };
    }

    /// How far the animal's chances may be off, absolute; 0 where they are exact.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public double errorOf(AnimalId animal) {
        return solved.error(kin.numberOf(animal)) + sireError;
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

    /// The chances of an animal's genotype together with those of each of some others, by the
    /// other: pairs of genotypes, the animal's first. Worked out for all of them at once;
    /// genotypes of the animal below 1e-9 are left out and the rest sum to one.
    ///
    /// @param others not the animal itself
    /// @throws IllegalArgumentException if one is not in the pedigree
    public Map<AnimalId, SequencedMap<List<Genotype>, Double>> togetherWithEach(
            AnimalId animal, Collection<AnimalId> others) {
        if (others.contains(animal)) {
            throw new IllegalArgumentException(animal + " together with itself");
        }
        var number = kin.numberOf(animal);
        var all = new LinkedHashMap<AnimalId, SequencedMap<List<Genotype>, Double>>();
        others.forEach(other -> all.put(other, new LinkedHashMap<>()));
        var states = network.shape.states(kin.builds[number]);
        var whole = 0.0;
        for (var s = 0; s < states.size(); s++) {
            var chance = solved.chance(number, s);
            whole += chance >= LEAST_TOGETHER ? chance : 0;
        }
        for (var s = 0; s < states.size(); s++) {
            var chance = solved.chance(number, s);
            if (chance >= LEAST_TOGETHER) {
                var genotype = states.get(s).genotype();
                var share = chance / whole;
                var given = given(number, s);
                all.forEach((other, joint) -> add(joint, genotype, share, other, given));
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /// Of the others, if the animal were in that state.
    private Solution.Solved given(int number, int state) {
        var only = new double[network.shape.states(kin.builds[number]).size()];
        only[state] = 1;
        if (solved.with(Change.weigh(number, only)) instanceof Solution.Solved given) {
            return given;
        }
        throw new IllegalStateException("no answer at " + locus() + " given a possible genotype");
    }

    private void add(
            SequencedMap<List<Genotype>, Double> joint,
            Genotype genotype,
            double chance,
            AnimalId other,
            Solution.Solved given) {
        var number = kin.numberOf(other);
        var states = network.shape.states(kin.builds[number]);
        for (var s = 0; s < states.size(); s++) {
            var both = chance * given.chance(number, s);
            if (both > 0) {
                joint.merge(List.of(genotype, states.get(s).genotype()), both, Double::sum);
            }
        }
    }

    /// The chances as they would be if nobody had looked at these animals at this locus, or
    /// tested them. What the other loci say of sires in doubt stays.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public LocusChances withoutSightOf(Collection<AnimalId> animals) {
        var changes =
                animals.stream()
                        .map(animal -> network.unseen(records, kin, kin.numberOf(animal)))
                        .toArray(Change[]::new);
        // With less evidence nothing that was possible becomes impossible.
        if (solved.with(changes) instanceof Solution.Solved less) {
            return solvedAs(records, less);
        }
        throw new IllegalStateException("no answer at " + locus() + " without " + animals);
    }

    /// The answer as it would be with other records of some animals at this locus. What the
    /// other loci say of sires in doubt stays.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public LocusAnswer with(Map<AnimalId, OwnRecords> others) {
        var changed = records.with(others);
        var changes =
                others.keySet().stream()
                        .map(kin::numberOf)
                        .map(
                                number ->
                                        Change.reweigh(
                                                number, network.weightsOf(changed, kin, number)))
                        .toArray(Change[]::new);
        return switch (solved.with(changes)) {
            case Solution.Solved less -> new LocusAnswer.Settled(solvedAs(changed, less));
            case Solution.Impossible _ -> new LocusAnswer.Contradicted(locus());
            case Solution.Stopped() -> new LocusAnswer.Stopped(locus());
            case Solution.TooWide(var log2Cells) ->
                    throw new IllegalStateException("too wide: 2^" + log2Cells + " cells");
        };
    }

    /// The chances given also that some animals' genotypes are such; the likelihood is that of
    /// the records and of these events together. Empty if that cannot be.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public Optional<LocusChances> given(Map<AnimalId, Predicate<Genotype>> events) {
        var changes = new ArrayList<Change>();
        events.forEach(
                (animal, event) -> {
                    var number = kin.numberOf(animal);
                    var states = network.shape.states(kin.builds[number]);
                    var such = new double[states.size()];
                    for (var s = 0; s < such.length; s++) {
                        such[s] = event.test(states.get(s).genotype()) ? 1 : 0;
                    }
                    changes.add(Change.weigh(number, such));
                });
        return solved.with(changes.toArray(Change[]::new)) instanceof Solution.Solved less
                ? Optional.of(solvedAs(records, less))
                : Optional.empty();
    }

    private LocusChances solvedAs(CollectionRecords of, Solution.Solved less) {
        var log = logLikelihood + (less.logTotal() - solved.logTotal());
        return new LocusChances(of, kin, network, less, log, sireError);
    }

    /// The forms that a keeper may have seen of the animal at this locus; empty if nobody
    /// looked, or another gene hid them.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public Optional<Set<Phenotype>> lookAt(AnimalId animal) {
        kin.numberOf(animal);
        return records.of(animal).seen().flatMap(network::look);
    }

    /// The genotypes of living young of two animals that had these, each with its chance, sons
    /// and daughters together; empty if no such young lives.
    ///
    /// @throws IllegalArgumentException if no female or no male has such a genotype
    public SequencedMap<Genotype, Double> youngOf(Genotype dam, Genotype sire) {
        return network.young(dam, sire);
    }

    /// The chances of an animal of unknown origin of which nothing is recorded.
    public SequencedMap<Genotype, Double> ofAnybody(Sex sex) {
        var build = LocusShape.Build.of(sex);
        var population = network.population(build);
        var chances = new LinkedHashMap<Genotype, Double>();
        for (var s = 0; s < population.length; s++) {
            chances.merge(
                    network.shape.states(build).get(s).genotype(), population[s], Double::sum);
        }
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
