package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import clutchwright.engine.network.EdgeDeletion;
import clutchwright.engine.network.Limits;
import clutchwright.engine.network.Solution;
import clutchwright.engine.network.Stop;
import clutchwright.engine.pedigree.AnimalId;
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

/// What every animal of a collection carries, given everything that is recorded of all of them.
///
/// Per locus the chances are those of a Bayesian network: priors of animals without recorded
/// parents, Mendel's law among the living, and the likelihoods of sightings and tests. Loci are
/// independent but for the sires in doubt, who are the same at every locus. Linked autosomal
/// loci are treated as independent. Source of the formulas: `docs/mathematics.md`, section
/// "What an animal carries".
public final class PedigreeInference {

    /// How many combinations of sires' answers are weighed together; fewer where that is too
    /// wide.
    private static final List<Integer> TOGETHER = List.of(4096, 64, 1);

    private final CollectionRecords records;
    private final Assumptions assumptions;
    private final Limits limits;
    private final Stop stop;
    private final Kin kin;
    private final SequencedMap<LocusId, LocusAnswer> answers = new LinkedHashMap<>();
    private AnswerWeights sireWeights;

    private PedigreeInference(
            CollectionRecords records, Assumptions assumptions, Limits limits, Stop stop, Kin kin) {
        this.records = records;
        this.assumptions = assumptions;
        this.limits = limits;
        this.stop = stop;
        this.kin = kin;
        this.sireWeights = SireAnswers.byDam(kin, TOGETHER.getFirst()).prior();
    }

    /// Every locus of which anything is said or seen.
    public static PedigreeInference of(CollectionRecords records, Assumptions assumptions) {
        return of(records, assumptions, touched(records), Limits.standard(), Stop.never());
    }

    /// Some loci, and those that bear on them.
    public static PedigreeInference of(
            CollectionRecords records, Assumptions assumptions, Collection<LocusId> loci) {
        return of(records, assumptions, loci, Limits.standard(), Stop.never());
    }

    /// Some loci, and those that bear on them: all of which anything is said or seen, where a
    /// sire is in doubt.
    public static PedigreeInference of(
            CollectionRecords records,
            Assumptions assumptions,
            Collection<LocusId> loci,
            Limits limits,
            Stop stop) {
        var kin = new Kin(records.pedigree(), records.model().sexes(), assumptions);
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
        if (before.isPresent()
                && before.get() instanceof LocusAnswer.Settled(var chances)
                && chances.network()
                        .shape
                        .alleles
                        .equals(MetAlleles.of(records, locus, assumptions))) {
            var network = chances.network();
            var changes = renewal.changes(network);
            if (changes.length == 0) {
                return before.get();
            }
            var solution = chances.solved().with(changes);
            if (!(solution instanceof Solution.TooWide)) {
                return new LocusAttempt(records, kin, locus, sireWeights, network, solution)
                        .answer();
            }
        }
        return attempt(locus, sireWeights).answer();
    }

    public CollectionRecords records() {
        return records;
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    Kin kin() {
        return kin;
    }

    /// The loci that were asked for, in naming order.
    public SequencedSet<LocusId> loci() {
        return Collections.unmodifiableSequencedSet(answers.sequencedKeySet());
    }

    public Collection<LocusAnswer> answers() {
        return Collections.unmodifiableCollection(answers.sequencedValues());
    }

    /// The answer at a locus, worked out now if it was not asked for: then with the sires as
    /// the loci that were asked for have them.
    ///
    /// @throws IllegalArgumentException if the model does not know the locus
    public LocusAnswer at(LocusId locus) {
        var found = answers.get(locus);
        if (found != null) {
            return found;
        }
        var attempt = attempt(locus, sireWeights);
        if (kin.questions.isEmpty() || !attempt.isSolved()) {
            return attempt.answer();
        }
        var alone = attempt(locus, SireAnswers.byDam(kin, TOGETHER.getFirst()).prior());
        return alone.isSolved() ? attempt.answer(alone.logTotal(), 0) : alone.answer();
    }

    /// The chances at a locus; empty if its records contradict each other.
    public Optional<LocusChances> chancesAt(LocusId locus) {
        return at(locus) instanceof LocusAnswer.Settled(var chances)
                ? Optional.of(chances)
                : Optional.empty();
    }

    /// Chances of the candidates for each sire in doubt, by the key of the question. Loci whose
    /// records contradict each other say nothing of them.
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

    /// The chance that an animal had no sire: one where that is recorded, none where it has a
    /// sire or no dam on record.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public double chanceOfNoSire(AnimalId animal) {
        if (kin.withoutSire[kin.numberOf(animal)]) {
            return 1;
        }
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
                    .map(locus -> attempt(locus, sireWeights).answer())
                    .toList()
                    .forEach(answer -> answers.put(answer.locus(), answer));
            return;
        }
        var bearing = new LinkedHashSet<>(touched(records));
        bearing.addAll(asked);
        var coupled = couple(List.copyOf(bearing));
        for (var locus : asked) {
            Optional.ofNullable(coupled.get(locus)).ifPresent(answer -> answers.put(locus, answer));
        }
    }

    private Map<LocusId, LocusAnswer> couple(List<LocusId> loci) {
        for (var most : TOGETHER) {
            var sires = SireAnswers.byDam(kin, most);
            var alone = attempts(loci, sires);
            if (most.equals(TOGETHER.getLast()) || alone.stream().allMatch(LocusAttempt::isExact)) {
                return couple(alone, sires, SireAnswers.scattered(kin, most));
            }
            // Weighing many answers together made a tree too wide: fewer, then.
        }
        throw new IllegalStateException("no way to group the questions");
    }

    private Map<LocusId, LocusAnswer> couple(
            List<LocusAttempt> alone, SireAnswers sires, SireAnswers otherwise) {
        var found = new HashMap<LocusId, LocusAnswer>();
        alone.stream()
                .filter(attempt -> !attempt.isSolved())
                .forEach(attempt -> found.put(attempt.locus(), attempt.answer()));
        var solved = alone.stream().filter(LocusAttempt::isSolved).toList();
        var coupling = SireCoupling.of(solved, sires, this::attempt);
        var other = coupling;
        if (!sires.isOneGroup()) {
            var loci = coupling.attempts.stream().map(LocusAttempt::locus).toList();
            other =
                    sires.isGroupedAs(otherwise)
                            ? SireCoupling.uncoupled(solved, sires)
                            : SireCoupling.of(attempts(loci, otherwise), otherwise, this::attempt);
        }
        sireWeights = coupling.posterior;
        coupling.answers(other).forEach(answer -> found.put(answer.locus(), answer));
        return found;
    }

    private List<LocusAttempt> attempts(List<LocusId> loci, SireAnswers sires) {
        return loci.parallelStream().map(locus -> attempt(locus, sires.prior())).toList();
    }

    private LocusAttempt attempt(LocusId locus, AnswerWeights weights) {
        var network = new LocusNetwork(records, locus, assumptions);
        return new LocusAttempt(
                records,
                kin,
                locus,
                weights,
                network,
                EdgeDeletion.solve(network.of(records, kin, weights), limits, stop));
    }
}
