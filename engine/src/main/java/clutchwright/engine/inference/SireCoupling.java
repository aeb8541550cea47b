package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import java.util.ArrayList;
import java.util.Arrays;
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

    final List<LocusAttempt> attempts;

    /// What each locus's records say by themselves, as [LocusAttempt#logTotal].
    final List<Double> logAlone;

    /// The answers' weights given everything; the prior where no answer suits all loci.
    final AnswerWeights posterior;

    private SireCoupling(
            List<LocusAttempt> attempts, List<Double> logAlone, AnswerWeights posterior) {
        this.attempts = attempts;
        this.logAlone = logAlone;
        this.posterior = posterior;
    }

    /// @param alone each locus under the prior of the answers, all of them solved
    static SireCoupling of(
            List<LocusAttempt> alone,
            SireAnswers sires,
            BiFunction<LocusId, AnswerWeights, LocusAttempt> attempt) {
        var logAlone = alone.stream().map(LocusAttempt::logTotal).toList();
        var attempts = alone;
        var likelihoods = alone.stream().map(LocusAttempt::likelihoods).toList();
        for (var round = 0; round < MOST_ROUNDS; round++) {
            var last = attempts;
            var said = likelihoods;
            var next =
                    IntStream.range(0, last.size())
                            .parallel()
                            .mapToObj(
                                    i -> attempt.apply(last.get(i).locus(), sires.without(said, i)))
                            .toList();
            if (!next.stream().allMatch(LocusAttempt::isSolved)) {
                // Each locus has an answer alone, but no sire suits all of them.
                return new SireCoupling(alone, logAlone, sires.prior());
            }
            attempts = next;
            likelihoods = next.stream().map(LocusAttempt::likelihoods).toList();
            if (sires.isOneGroup() || furthest(said, likelihoods) < SETTLED) {
                break;
            }
        }
        return new SireCoupling(attempts, logAlone, sires.posterior(likelihoods));
    }

    private static double furthest(List<List<double[]>> before, List<List<double[]>> after) {
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
        var answers = new ArrayList<LocusAnswer>();
        for (var i = 0; i < attempts.size(); i++) {
            // Twice what the two groupings differ by: neither is the exact one.
            var error = 2 * attempts.get(i).difference(other.attempts.get(i));
            answers.add(attempts.get(i).answer(logAlone.get(i), error));
        }
        return List.copyOf(answers);
    }
}
