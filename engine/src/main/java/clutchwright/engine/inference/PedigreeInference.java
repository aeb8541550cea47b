package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import clutchwright.engine.network.JunctionTree;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Solution;
import clutchwright.engine.network.Stop;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;
import java.util.stream.IntStream;

/// What every animal of a collection carries, given everything that is recorded of all of them.
///
/// Per locus the chances are those of a Bayesian network: priors of animals without recorded
/// parents, Mendel's law among the living, and the likelihoods of sightings and tests. Loci are
/// independent but for the sires in doubt, who are the same at every locus. Linked autosomal
/// loci are treated as independent. Source of the formulas: `docs/mathematics.md`, section
/// "What an animal carries".
public final class PedigreeInference {

    private static final int MOST_ROUNDS = 20;
    private static final double SETTLED = 1e-10;

    private final CollectionRecords records;
    private final Assumptions assumptions;
    private final Limits limits;
    private final Stop stop;
    private final Kin kin;
    private final SireAnswers sires;
    private final SequencedMap<LocusId, LocusAnswer> answers = new LinkedHashMap<>();
    private AnswerWeights sireWeights;

    private PedigreeInference(
            CollectionRecords records, Assumptions assumptions, Limits limits, Stop stop, Kin kin) {
        this.records = records;
        this.assumptions = assumptions;
        this.limits = limits;
        this.stop = stop;
        this.kin = kin;
        this.sires = new SireAnswers(kin);
        this.sireWeights = sires.prior();
    }

    /// Every locus of which anything is said or seen.
    public static PedigreeInference of(CollectionRecords records, Assumptions assumptions) {
        return of(records, assumptions, touched(records), Limits.standard(), Stop.never());
    }

    /// Some loci, and those that bear on them: all of which anything is said or seen, where a
    /// sire is in doubt.
    public static PedigreeInference of(
            CollectionRecords records,
            Assumptions assumptions,
            Collection<LocusId> loci,
            Limits limits,
            Stop stop) {
        var kin = new Kin(records.pedigree(), assumptions);
        var inference = new PedigreeInference(records, assumptions, limits, stop, kin);
        inference.run(List.copyOf(new LinkedHashSet<>(loci)));
        return inference;
    }

    /// What follows from other records, mostly the same as these. What the change cannot touch
    /// is not worked out again: a new hatchling or sighting costs a small part of the whole.
    /// This answer stays as it is.
    public PedigreeInference with(CollectionRecords changed) {
        return Renewal.between(records, changed, kin, assumptions)
                .map(renewal -> renewed(changed, renewal))
                .orElseGet(() -> of(changed, assumptions, asked(changed), limits, stop));
    }

    /// The loci asked for before, and those that the changed records touch for the first time.
    private SequencedSet<LocusId> asked(CollectionRecords changed) {
        var before = touched(records);
        var asked = new LinkedHashSet<>(changed.model().loci().keySet());
        var now = touched(changed);
        asked.removeIf(
                locus ->
                        !answers.containsKey(locus)
                                && (before.contains(locus) || !now.contains(locus)));
        return asked;
    }

    private PedigreeInference renewed(CollectionRecords changed, Renewal renewal) {
        var next = new PedigreeInference(changed, assumptions, limits, stop, renewal.kin());
        asked(changed).parallelStream()
                .map(
                        locus ->
                                next.renewedAnswer(
                                        locus, Optional.ofNullable(answers.get(locus)), renewal))
                .toList()
                .forEach(answer -> next.answers.put(answer.locus(), answer));
        return next;
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private LocusAnswer renewedAnswer(
            LocusId locus, Optional<LocusAnswer> before, Renewal renewal) {
        if (before.isPresent() && before.get() instanceof LocusAnswer.Settled(var chances)) {
            var network = chances.network();
            var changes = renewal.changes(network);
            if (changes.length == 0) {
                return before.get();
            }
            var solution = chances.solved().with(changes);
            if (!(solution instanceof Solution.TooWide)) {
                return new Attempt(locus, sireWeights, network, solution).answer(Optional.empty());
            }
        }
        return attempt(locus, sireWeights).answer(Optional.empty());
    }

    public CollectionRecords records() {
        return records;
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    /// The loci that were asked for, in naming order.
    public SequencedSet<LocusId> loci() {
        return Collections.unmodifiableSequencedSet(answers.sequencedKeySet());
    }

    public Collection<LocusAnswer> answers() {
        return Collections.unmodifiableCollection(answers.sequencedValues());
    }

    /// The answer at a locus, worked out now if it was not asked for.
    ///
    /// @throws IllegalArgumentException if the model does not know the locus
    public LocusAnswer at(LocusId locus) {
        var found = answers.get(locus);
        return found != null ? found : attempt(locus, sireWeights).answer(Optional.empty());
    }

    /// The chances at a locus; empty if its records contradict each other.
    public Optional<LocusChances> chancesAt(LocusId locus) {
        return at(locus) instanceof LocusAnswer.Settled(var chances)
                ? Optional.of(chances)
                : Optional.empty();
    }

    /// Chances of the candidates for each sire in doubt, by the key of the question.
    public SequencedMap<String, SequencedMap<AnimalId, Double>> sireChances() {
        var all = new LinkedHashMap<String, SequencedMap<AnimalId, Double>>();
        eachAnswer(
                (question, chances) -> {
                    if (!question.isWhetherAny()) {
                        var males = new LinkedHashMap<AnimalId, Double>();
                        for (var i = 0; i < chances.length; i++) {
                            var male = kin.animals.get(question.candidates().get(i));
                            males.put(male, chances[i]);
                        }
                        all.put(question.key(), males);
                    }
                });
        return all;
    }

    /// The chance that an animal whose sire is not recorded had none.
    public double chanceOfNoSire(AnimalId animal) {
        var asked = kin.question[kin.numberOf(animal)];
        var chance = new double[1];
        eachAnswer(
                (question, chances) -> {
                    if (asked != Kin.NONE
                            && question.equals(kin.questions.get(asked))
                            && question.isWhetherAny()) {
                        chance[0] = chances[1];
                    }
                });
        return chance[0];
    }

    private interface AnswerReader {
        void read(Kin.Question question, double... chances);
    }

    private void eachAnswer(AnswerReader reader) {
        for (var group : sireWeights.groups()) {
            var cells = group.weights();
            var inner = cells.size();
            for (var number : group.questions()) {
                var question = kin.questions.get(number);
                var size = question.prior().size();
                inner /= size;
                var chances = new double[size];
                for (var cell = 0; cell < cells.size(); cell++) {
                    chances[cell / inner % size] += cells.get(cell);
                }
                reader.read(question, chances);
            }
        }
    }

    /// The loci of which anything is said, seen or tested that is not simply normal.
    public static SequencedSet<LocusId> touched(CollectionRecords records) {
        var named = new LinkedHashSet<LocusId>();
        for (var own : records.own().values()) {
            named.addAll(own.claims().keySet());
            own.seen().ifPresent(seen -> named.addAll(seen.looks().keySet()));
            own.tests().forEach(test -> named.add(test.allele().locus()));
        }
        var ordered = new LinkedHashSet<>(records.model().loci().keySet());
        ordered.retainAll(named);
        return ordered;
    }

    private void run(List<LocusId> asked) {
        if (kin.questions.isEmpty()) {
            asked.parallelStream()
                    .map(locus -> attempt(locus, sireWeights).answer(Optional.empty()))
                    .toList()
                    .forEach(answer -> answers.put(answer.locus(), answer));
            return;
        }
        var bearing = new LinkedHashSet<>(touched(records));
        bearing.addAll(asked);
        var coupled = couple(List.copyOf(bearing));
        asked.forEach(locus -> answers.put(locus, answerOf(locus, coupled)));
    }

    private LocusAnswer answerOf(LocusId locus, Map<LocusId, LocusAnswer> coupled) {
        var found = coupled.get(locus);
        if (found == null) {
            throw new IllegalStateException("no answer at " + locus);
        }
        return found;
    }

    /// Rounds of: each locus given what the others say of the sires. One group needs two.
    private Map<LocusId, LocusAnswer> couple(List<LocusId> loci) {
        var alone = new HashMap<LocusId, Attempt>();
        loci.parallelStream()
                .map(locus -> attempt(locus, sires.prior()))
                .toList()
                .forEach(attempt -> alone.put(attempt.locus, attempt));
        var answers = new HashMap<LocusId, LocusAnswer>();
        var possible = new ArrayList<Attempt>();
        for (var locus : loci) {
            var attempt = alone.get(locus);
            if (attempt != null && attempt.solution instanceof Solution.Solved) {
                possible.add(attempt);
            } else if (attempt != null) {
                answers.put(locus, attempt.answer(Optional.empty()));
            }
        }
        var logAlone =
                possible.stream()
                        .map(attempt -> ((Solution.Solved) attempt.solution).logTotal())
                        .toList();
        var attempts = new ArrayList<>(possible);
        var likelihoods = new ArrayList<>(attempts.stream().map(Attempt::likelihoods).toList());
        for (var round = 0; round < MOST_ROUNDS; round++) {
            var said = List.copyOf(likelihoods);
            var next =
                    IntStream.range(0, attempts.size())
                            .parallel()
                            .mapToObj(i -> attempt(attempts.get(i).locus, sires.without(said, i)))
                            .toList();
            if (next.stream().anyMatch(one -> !(one.solution instanceof Solution.Solved))) {
                // Each locus has an answer alone, but no sire suits all of them.
                break;
            }
            var moved = 0.0;
            for (var i = 0; i < next.size(); i++) {
                attempts.set(i, next.get(i));
                var now = next.get(i).likelihoods();
                moved = Math.max(moved, difference(likelihoods.get(i), now));
                likelihoods.set(i, now);
            }
            if (sires.isOneGroup() || moved < SETTLED) {
                break;
            }
        }
        var posterior = sires.posterior(likelihoods);
        if (posterior.stream().allMatch(PedigreeInference::isPossible)) {
            sireWeights = weights(posterior);
        }
        for (var i = 0; i < attempts.size(); i++) {
            answers.put(
                    attempts.get(i).locus, attempts.get(i).answer(Optional.of(logAlone.get(i))));
        }
        return answers;
    }

    private AnswerWeights weights(List<double[]> tables) {
        var groups = new ArrayList<AnswerWeights.Group>();
        for (var g = 0; g < tables.size(); g++) {
            groups.add(
                    new AnswerWeights.Group(
                            sires.groups().get(g), Arrays.stream(tables.get(g)).boxed().toList()));
        }
        return new AnswerWeights(groups);
    }

    private static boolean isPossible(double... weights) {
        return Arrays.stream(weights).sum() > 0;
    }

    private static double difference(List<double[]> before, List<double[]> after) {
        var most = 0.0;
        for (var g = 0; g < before.size(); g++) {
            var one = normalised(before.get(g));
            var other = normalised(after.get(g));
            for (var i = 0; i < one.length; i++) {
                most = Math.max(most, Math.abs(one[i] - other[i]));
            }
        }
        return most;
    }

    private static double[] normalised(double... weights) {
        var sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    private Attempt attempt(LocusId locus, AnswerWeights weights) {
        var network = new LocusNetwork(records, locus, assumptions);
        return new Attempt(
                locus,
                weights,
                network,
                JunctionTree.solve(network.of(records, kin, weights), limits, stop));
    }

    /// A locus worked out under some weights of the sires' answers.
    private final class Attempt {
        private final LocusId locus;
        private final AnswerWeights weights;
        private final LocusNetwork network;
        private final Solution solution;

        Attempt(LocusId locus, AnswerWeights weights, LocusNetwork network, Solution solution) {
            this.locus = locus;
            this.weights = weights;
            this.network = network;
            this.solution = solution;
        }

        List<double[]> likelihoods() {
            var solved = (Solution.Solved) solution;
            return weights.groups().stream()
                    .map(
                            group ->
                                    SireAnswers.likelihood(
                                            solved.joint(LocusNetwork.answerVariables(kin, group)),
                                            group.table()))
                    .toList();
        }

        @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
        LocusAnswer answer(Optional<Double> logAlone) {
            return switch (solution) {
                case Solution.Solved solved ->
                        new LocusAnswer.Settled(
                                new LocusChances(
                                        records,
                                        kin,
                                        network,
                                        solved,
                                        logAlone.orElseGet(solved::logTotal)));
                case Solution.Impossible _ -> new LocusAnswer.Contradicted(locus);
                case Solution.Stopped() -> new LocusAnswer.Stopped(locus);
                case Solution.TooWide(var log2Cells) ->
                        throw new IllegalStateException(
                                "too wide: 2^" + log2Cells + " cells at " + locus);
            };
        }
    }
}
