package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/// All loci worked out together where sires are in doubt: each given what the others say of
/// them.
///
/// With one group of questions the second round is exact. With several, rounds are repeated
/// until nothing moves.
final class SireCoupling {

    private static final int MOST_ROUNDS = 20;
    private static final double SETTLED = 1e-10;

    /// Those that are settled.
    final List<LocusAttempt> attempts;

    /// Those that are not: each has chances alone, but no sires suit it and some of the others;
    /// or the work was stopped.
    final List<LocusAnswer> unsettled;

    /// What each settled locus's records say by themselves, as [LocusAttempt#logTotal].
    private final List<Double> logAlone;

    /// The answers' weights given all that is settled.
    final AnswerWeights posterior;

    private SireCoupling(
            List<LocusAttempt> attempts,
            List<LocusAnswer> unsettled,
            List<Double> logAlone,
            AnswerWeights posterior) {
        this.attempts = attempts;
        this.unsettled = unsettled;
        this.logAlone = logAlone;
        this.posterior = posterior;
    }

    /// @param alone each locus under the prior of the answers, all of them solved
    static SireCoupling of(
            List<LocusAttempt> alone,
            SireAnswers sires,
            BiFunction<LocusId, AnswerWeights, LocusAttempt> attempt) {
        var unsettled = new ArrayList<LocusAnswer>();
        var conflict = sires.conflicting(alone.stream().map(LocusAttempt::likelihoods).toList());
        conflict.forEach(i -> unsettled.add(new LocusAnswer.Contradicted(alone.get(i).locus())));
        var first =
                IntStream.range(0, alone.size())
                        .filter(i -> !conflict.contains(i))
                        .mapToObj(alone::get)
                        .toList();
        var attempts = first;
        for (var round = 0; round < MOST_ROUNDS; round++) {
            var last = attempts;
            var said = last.stream().map(LocusAttempt::likelihoods).toList();
            var next =
                    IntStream.range(0, last.size())
                            .parallel()
                            .mapToObj(
                                    i -> attempt.apply(last.get(i).locus(), sires.without(said, i)))
                            .toList();
            attempts = next.stream().filter(LocusAttempt::isSolved).toList();
            next.stream()
                    .filter(one -> !one.isSolved())
                    .forEach(one -> unsettled.add(one.answer()));
            if (attempts.size() == next.size()
                    && (sires.isOneGroup() || furthest(last, attempts) < SETTLED)) {
                break;
            }
        }
        var likelihoods = attempts.stream().map(LocusAttempt::likelihoods).toList();
        return new SireCoupling(
                attempts, unsettled, logAlone(attempts, first), sires.posterior(likelihoods));
    }

    /// Each locus as if the others said nothing of the sires: what there is to compare with
    /// where no two questions can be weighed together.
    static SireCoupling uncoupled(List<LocusAttempt> alone, SireAnswers sires) {
        return new SireCoupling(alone, List.of(), logAlone(alone, alone), sires.prior());
    }

    private static List<Double> logAlone(List<LocusAttempt> attempts, List<LocusAttempt> first) {
        var found = new HashMap<LocusId, Double>();
        first.forEach(attempt -> found.put(attempt.locus(), attempt.logTotal()));
        return attempts.stream().map(attempt -> found.getOrDefault(attempt.locus(), 0.0)).toList();
    }

    private static double furthest(List<LocusAttempt> last, List<LocusAttempt> next) {
        return furthestOf(
                last.stream().map(LocusAttempt::likelihoods).toList(),
                next.stream().map(LocusAttempt::likelihoods).toList());
    }

    private static double furthestOf(List<List<double[]>> before, List<List<double[]>> after) {
        var most = 0.0;
        for (var locus = 0; locus < before.size(); locus++) {
            for (var group = 0; group < before.get(locus).size(); group++) {
                var one = normalised(before.get(locus).get(group));
                var other = normalised(after.get(locus).get(group));
                for (var i = 0; i < one.length; i++) {
                    most = Math.max(most, Math.abs(one[i] - other[i]));
                }
            }
        }
        return most;
    }

    private static double[] normalised(double... weights) {
        var sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    /// The answers, each with the error that the grouping of the questions may have made.
    ///
    /// @param other the same with the questions grouped otherwise; this itself where one group
    ///     holds them all
    List<LocusAnswer> answers(SireCoupling other) {
        var answers = new ArrayList<>(unsettled);
        for (var i = 0; i < attempts.size(); i++) {
            answers.add(attempts.get(i).answer(logAlone.get(i), error(attempts.get(i), other)));
        }
        return List.copyOf(answers);
    }

    /// Twice what the two groupings differ by: neither is the exact one. All, where the other
    /// has no answer.
    private static double error(LocusAttempt attempt, SireCoupling other) {
        return other.attempts.stream()
                .filter(one -> one.locus().equals(attempt.locus()))
                .mapToDouble(one -> 2 * attempt.difference(one))
                .findFirst()
                .orElse(1);
    }
}
