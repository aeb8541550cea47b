package clutchwright.engine.inference;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.network.Change;
import clutchwright.engine.network.FactorNetwork;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.IntStream;

/// One locus of a collection as a network: a variable for each animal's genotype and for each
/// question of a sire, tied by Mendel's law.
final class LocusNetwork {

    final LocusShape shape;

    private final LocusWeights weights;
    private final Transmission transmission;
    private final boolean claimOfHalfKnown;
    private final Map<Build, double[]> byStranger = new EnumMap<>(Build.class);
    private final Map<Build, double[]> ofStranger = new EnumMap<>(Build.class);

    LocusNetwork(CollectionRecords records, LocusId locus, Assumptions assumptions) {
        shape =
                new LocusShape(
                        records.model(),
                        records.model().theLocus(locus),
                        MetAlleles.of(records, locus, assumptions));
        weights = new LocusWeights(records.model(), shape, assumptions);
        transmission = new Transmission(shape, assumptions.secondDivision());
        claimOfHalfKnown = assumptions.claimOfHalfKnown();
    }

    /// The network of a collection; animals are variables under their own numbers, then come two
    /// for each question: its answer, and the genotype of whoever that makes the sire.
    ///
    /// @param answers how the answers of the questions are weighed together
    synchronized FactorNetwork of(CollectionRecords records, Kin kin, AnswerWeights answers) {
        var builder = new FactorNetwork.Builder();
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            var build = kin.builds[animal];
            var own = records.of(kin.animals.get(animal));
            builder.variable(shape.states(build).size());
            var seen = weights.likelihood(build, own);
            if (seen.isPresent()) {
                builder.weigh(animal, seen.get());
            }
            if (kin.founder[animal]) {
                builder.weigh(animal, weights.founder(build, own));
            }
        }
        for (var question : kin.questions) {
            ask(builder, question);
        }
        for (var group : answers.groups()) {
            builder.tie(group.table(), answerVariables(kin, group));
        }
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            tieToParents(builder, records, kin, animal);
        }
        return builder.build();
    }

    static int[] answerVariables(Kin kin, AnswerWeights.Group group) {
        return group.questions().stream().mapToInt(q -> answerVariable(kin, q)).toArray();
    }

    private static int answerVariable(Kin kin, int question) {
        return kin.animals.size() + 2 * question;
    }

    static int trueSire(Kin kin, int question) {
        return answerVariable(kin, question) + 1;
    }

    /// All that an animal's own records say of its genotypes.
    synchronized double[] weightsOf(CollectionRecords records, Kin kin, int animal) {
        return weightsOf(records.of(kin.animals.get(animal)), kin, animal);
    }

    private double[] weightsOf(OwnRecords own, Kin kin, int animal) {
        var build = kin.builds[animal];
        var product = new double[shape.states(build).size()];
        Arrays.fill(product, 1);
        weights.likelihood(build, own).ifPresent(seen -> multiply(product, seen));
        if (kin.founder[animal]) {
            multiply(product, weights.founder(build, own));
        }
        return product;
    }

    /// Hardy-Weinberg proportions among the living.
    synchronized double[] population(Build build) {
        return weights.population(build).clone();
    }

    /// The chances of an animal's genotypes, or weights in proportion to them, by its own
    /// records alone: as if it had neither recorded parents nor young.
    synchronized double[] alone(OwnRecords own, Build build) {
        var product = weights.founder(build, own).clone();
        weights.likelihood(build, own).ifPresent(seen -> multiply(product, seen));
        return product;
    }

    /// As if nobody had looked at the animal here, or tested it.
    synchronized Change unseen(CollectionRecords records, Kin kin, int animal) {
        var id = shape.map.locus().id();
        var own = records.of(kin.animals.get(animal));
        var untested =
                own.tests().stream().filter(test -> !test.allele().locus().equals(id)).toList();
        var blind = new OwnRecords(own.claims(), own.withoutSight(id).seen(), untested);
        return Change.reweigh(animal, weightsOf(blind, kin, animal));
    }

    /// What was seen here; empty if it could not be read.
    Optional<Set<Phenotype>> look(OwnRecords.Seen seen) {
        return weights.look(seen);
    }

    /// The genotypes of living young of the two, of either sex; empty if none lives.
    synchronized SequencedMap<Genotype, Double> young(Genotype dam, Genotype sire) {
        var sires = shape.states(Build.MALE).size();
        var dams = shape.states(Build.FEMALE).size();
        var column = numberOf(Build.FEMALE, dam) * sires + numberOf(Build.MALE, sire);
        var table = transmission.fromTwo(Build.UNSEXED);
        var states = shape.states(Build.UNSEXED);
        var chances = new LinkedHashMap<Genotype, Double>();
        for (var s = 0; s < states.size(); s++) {
            var chance = table[s * dams * sires + column];
            if (chance > 0) {
                chances.merge(states.get(s).genotype(), chance, Double::sum);
            }
        }
        return Collections.unmodifiableSequencedMap(chances);
    }

    private int numberOf(Build build, Genotype genotype) {
        var states = shape.states(build);
        return IntStream.range(0, states.size())
                .filter(s -> states.get(s).genotype().equals(genotype))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        genotype + " is no genotype of a " + build));
    }

    /// An animal that joins the collection without young, as a change of its network. The sire
    /// is known, or nobody knows who he is.
    synchronized Change newcomer(CollectionRecords records, Kin kin, int animal) {
        var own = weightsOf(records, kin, animal);
        var build = kin.builds[animal];
        var tied =
                Arrays.stream(new int[] {kin.dam[animal], kin.sire[animal]})
                        .filter(parent -> parent != Kin.NONE)
                        .toArray();
        var table =
                kin.founder[animal]
                        ? ones(own.length)
                        : kin.withoutSire[animal]
                                ? transmission.fromDam(build)
                                : descent(records, kin, animal, kin.sire[animal]);
        return Change.leaf(own, youngLast(table, own.length), tied);
    }

    private void ask(FactorNetwork.Builder builder, Kin.Question question) {
        var states = shape.states(Build.MALE).size();
        var answer = builder.variable(question.prior().size());
        var truly = builder.variable(states);
        if (question.isWhetherAny()) {
            builder.weigh(truly, weights.population(Build.MALE));
            return;
        }
        for (var given = 0; given < question.candidates().size(); given++) {
            builder.tie(
                    sameIf(given, question.prior().size(), states),
                    answer,
                    truly,
                    question.candidates().get(given));
        }
    }

    /// Answer by true sire by one candidate: where he is the answer, the true sire's genotype is
    /// his; where not, the tie says nothing.
    private static double[] sameIf(int answer, int answers, int states) {
        var table = new double[answers * states * states];
        for (var given = 0; given < answers; given++) {
            for (var truly = 0; truly < states; truly++) {
                for (var his = 0; his < states; his++) {
                    table[(given * states + truly) * states + his] =
                            given != answer || truly == his ? 1 : 0;
                }
            }
        }
        return table;
    }

    private void tieToParents(
            FactorNetwork.Builder builder, CollectionRecords records, Kin kin, int animal) {
        var dam = kin.dam[animal];
        var question = kin.question[animal];
        if (kin.founder[animal]) {
            return;
        }
        if (kin.withoutSire[animal]) {
            builder.tie(transmission.fromDam(kin.builds[animal]), animal, dam);
        } else if (question != Kin.NONE
                && kin.questions.get(question).isWhetherAny()
                && claimOfHalfKnown(records, kin, animal).isEmpty()) {
            builder.tie(
                    transmission.perhapsFromDam(kin.builds[animal]),
                    animal,
                    dam,
                    trueSire(kin, question),
                    answerVariable(kin, question));
        } else {
            var asked = question != Kin.NONE && !kin.questions.get(question).isWhetherAny();
            var sire = asked ? trueSire(kin, question) : kin.sire[animal];
            var table = descent(records, kin, animal, sire);
            if (dam == Kin.NONE) {
                builder.tie(table, animal, sire);
            } else if (sire == Kin.NONE) {
                builder.tie(table, animal, dam);
            } else {
                builder.tie(table, animal, dam, sire);
            }
        }
    }

    private double[] descent(CollectionRecords records, Kin kin, int animal, int sire) {
        var build = kin.builds[animal];
        var dam = kin.dam[animal];
        if (dam != Kin.NONE && sire != Kin.NONE) {
            return transmission.fromTwo(build);
        }
        var usual = dam == Kin.NONE ? ofStranger(build) : byStranger(build);
        return claimOfHalfKnown(records, kin, animal)
                .map(
                        stated ->
                                asStated(
                                        usual,
                                        possible(build, /* byDam= */ dam != Kin.NONE),
                                        stated))
                .orElse(usual);
    }

    /// What is stated to be carried of an animal of which one parent is recorded, where that
    /// counts. It supposes that there was a sire.
    private Optional<double[]> claimOfHalfKnown(CollectionRecords records, Kin kin, int animal) {
        return claimOfHalfKnown
                ? weights.statedCarried(kin.builds[animal], records.of(kin.animals.get(animal)))
                : Optional.empty();
    }

    /// Young by its one recorded parent, as stated of the young within what that parent can
    /// give. What is stated of the young tells nothing of the parent.
    private static double[] asStated(double[] usual, boolean[] possible, double... stated) {
        var parents = usual.length / stated.length;
        var table = usual.clone();
        for (var parent = 0; parent < parents; parent++) {
            var sum = 0.0;
            for (var s = 0; s < stated.length; s++) {
                sum += possible[s * parents + parent] ? stated[s] : 0;
            }
            for (var s = 0; sum > 0 && s < stated.length; s++) {
                var cell = s * parents + parent;
                table[cell] = possible[cell] ? stated[s] / sum : 0;
            }
        }
        return table;
    }

    /// Young by one parent: whether it can be, with any mate.
    private boolean[] possible(Build young, boolean byDam) {
        var two = transmission.fromTwo(young);
        var sires = shape.states(Build.MALE).size();
        var dams = shape.states(Build.FEMALE).size();
        var parents = byDam ? dams : sires;
        var possible = new boolean[two.length / (dams * sires) * parents];
        for (var cell = 0; cell < two.length; cell++) {
            var pair = cell % (dams * sires);
            var parent = byDam ? pair / sires : pair % sires;
            possible[cell / (dams * sires) * parents + parent] |= two[cell] > 0;
        }
        return possible;
    }

    /// Young by dam, the sire any male of the population.
    private double[] byStranger(Build young) {
        return byStranger.computeIfAbsent(
                young,
                build -> {
                    var any = weights.population(Build.MALE);
                    var two = transmission.fromTwo(build);
                    var table = new double[two.length / any.length];
                    for (var cell = 0; cell < two.length; cell++) {
                        table[cell / any.length] += two[cell] * any[cell % any.length];
                    }
                    return table;
                });
    }

    /// Young by sire, the dam any female of the population.
    private double[] ofStranger(Build young) {
        return ofStranger.computeIfAbsent(
                young,
                build -> {
                    var any = weights.population(Build.FEMALE);
                    var sires = shape.states(Build.MALE).size();
                    var two = transmission.fromTwo(build);
                    var table = new double[two.length / any.length];
                    for (var cell = 0; cell < two.length; cell++) {
                        var youngState = cell / (any.length * sires);
                        var damState = cell / sires % any.length;
                        table[youngState * sires + cell % sires] += two[cell] * any[damState];
                    }
                    return table;
                });
    }

    private static double[] youngLast(double[] table, int young) {
        var rest = table.length / young;
        var turned = new double[table.length];
        for (var y = 0; y < young; y++) {
            for (var r = 0; r < rest; r++) {
                turned[r * young + y] = table[y * rest + r];
            }
        }
        return turned;
    }

    private static double[] ones(int size) {
        var ones = new double[size];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static void multiply(double[] product, double... factor) {
        for (var i = 0; i < product.length; i++) {
            product[i] *= factor[i];
        }
    }

    /// How the answers of all questions are weighed; those of one group together.
    record AnswerWeights(List<Group> groups) {

        AnswerWeights {
            groups = List.copyOf(groups);
        }

        /// @param weights of the combinations of answers, the last question's fastest
        record Group(List<Integer> questions, List<Double> weights) {

            Group {
                questions = List.copyOf(questions);
                weights = List.copyOf(weights);
            }

            double[] table() {
                return weights.stream().mapToDouble(Double::doubleValue).toArray();
            }
        }
    }
}
