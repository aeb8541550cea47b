package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.network.FactorNetwork;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// One locus of a collection as a network: a variable for each animal's genotype and for each
/// question of a sire, tied by Mendel's law.
final class LocusNetwork {

    final LocusShape shape;
    final LocusWeights weights;
    final FactorNetwork network;

    /// The variable of each of the pedigree's questions; animals have their own numbers.
    final int[] questions;

    private final Kin kin;
    private final Transmission transmission;
    private final FactorNetwork.Builder builder = new FactorNetwork.Builder();
    private final int[] trueSires;
    private final Map<Build, double[]> byStranger = new EnumMap<>(Build.class);
    private final Map<Build, double[]> ofStranger = new EnumMap<>(Build.class);

    /// @param answers how the answers of the questions are weighed together, the last question's
    ///     fastest
    LocusNetwork(
            CollectionRecords records,
            Kin kin,
            LocusId locus,
            Assumptions assumptions,
            AnswerWeights answers) {
        this.kin = kin;
        shape = new LocusShape(records.model(), records.model().theLocus(locus));
        weights = new LocusWeights(records.model(), shape, assumptions);
        transmission = new Transmission(shape, assumptions.secondDivision());
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            var build = kin.builds[animal];
            var own = records.of(kin.animals.get(animal));
            builder.variable(shape.states(build).size());
            var number = animal;
            weights.likelihood(build, own).ifPresent(seen -> builder.weigh(number, seen));
            if (kin.founder[animal]) {
                builder.weigh(animal, weights.founder(build, own));
            }
        }
        questions = new int[kin.questions.size()];
        trueSires = new int[kin.questions.size()];
        for (var question = 0; question < questions.length; question++) {
            ask(question);
        }
        answers.weigh(builder, questions);
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            tieToParents(animal);
        }
        network = builder.build();
    }

    private void ask(int number) {
        var question = kin.questions.get(number);
        var states = shape.states(Build.MALE).size();
        questions[number] = builder.variable(question.prior().size());
        trueSires[number] = builder.variable(states);
        if (question.isWhetherAny()) {
            builder.weigh(trueSires[number], weights.population(Build.MALE));
            return;
        }
        for (var answer = 0; answer < question.candidates().size(); answer++) {
            // Where he is the sire, the true sire's genotype is his; else the tie says nothing.
            var table = new double[question.prior().size() * states * states];
            for (var given = 0; given < question.prior().size(); given++) {
                for (var truly = 0; truly < states; truly++) {
                    for (var his = 0; his < states; his++) {
                        table[(given * states + truly) * states + his] =
                                given != answer || truly == his ? 1 : 0;
                    }
                }
            }
            builder.tie(
                    table, questions[number], trueSires[number], question.candidates().get(answer));
        }
    }

    private void tieToParents(int animal) {
        if (kin.founder[animal]) {
            return;
        }
        var build = kin.builds[animal];
        var dam = kin.dam[animal];
        var question = kin.question[animal];
        if (kin.withoutSire[animal]) {
            builder.tie(transmission.fromDam(build), animal, dam);
        } else if (question != Kin.NONE && kin.questions.get(question).isWhetherAny()) {
            builder.tie(
                    transmission.perhapsFromDam(build),
                    animal,
                    dam,
                    trueSires[question],
                    questions[question]);
        } else {
            var sire = question == Kin.NONE ? kin.sire[animal] : trueSires[question];
            if (dam == Kin.NONE) {
                builder.tie(ofStranger(build), animal, sire);
            } else if (sire == Kin.NONE) {
                builder.tie(byStranger(build), animal, dam);
            } else {
                builder.tie(transmission.fromTwo(build), animal, dam, sire);
            }
        }
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

    /// How the answers of all questions are weighed, and in what groups their weights hang
    /// together.
    ///
    /// @see SireAnswers
    record AnswerWeights(List<Group> groups) {

        AnswerWeights {
            groups = List.copyOf(groups);
        }

        /// @param weights of the combinations of answers, the last question's fastest
        record Group(List<Integer> questions, List<Double> weights) {}

        void weigh(FactorNetwork.Builder builder, int... variables) {
            for (var group : groups) {
                var scope = group.questions().stream().mapToInt(q -> variables[q]).toArray();
                builder.tie(
                        group.weights().stream().mapToDouble(Double::doubleValue).toArray(), scope);
            }
        }
    }
}
