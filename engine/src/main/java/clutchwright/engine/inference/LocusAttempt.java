package clutchwright.engine.inference;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.LocusNetwork.AnswerWeights;
import clutchwright.engine.network.Quality;
import clutchwright.engine.network.Solution;
import java.util.List;

/// A locus worked out under some weights of the sires' answers.
///
/// @param weights of the answers that the network was given
record LocusAttempt(
        CollectionRecords records,
        Kin kin,
        LocusId locus,
        AnswerWeights weights,
        LocusNetwork network,
        Solution solution) {

    boolean isSolved() {
        return solution instanceof Solution.Solved;
    }

    boolean isExact() {
        return switch (solution) {
            case Solution.Solved solved -> solved.quality() instanceof Quality.Exact;
            case Solution.Impossible _ -> true;
            case Solution.Stopped() -> true;
            case Solution.TooWide _ -> false;
        };
    }

    /// @throws IllegalStateException if it is not solved
    double logTotal() {
        return solved().logTotal();
    }

    private Solution.Solved solved() {
        if (solution instanceof Solution.Solved solved) {
            return solved;
        }
        throw new IllegalStateException("no chances at " + locus + ": " + solution);
    }

    /// How likely the locus's records are under the answers, group by group, up to a factor.
    List<double[]> likelihoods() {
        return weights.groups().stream()
                .map(
                        group ->
                                SireAnswers.likelihood(
                                        solved().joint(LocusNetwork.answerVariables(kin, group)),
                                        group.table()))
                .toList();
    }

    LocusAnswer answer() {
        return solution instanceof Solution.Solved ? answer(logTotal(), 0) : unsettled();
    }

    /// @param logAlone the logarithm of the chance of the locus's records by themselves
    LocusAnswer answer(double logAlone, double sireError) {
        return new LocusAnswer.Settled(
                new LocusChances(records, kin, network, solved(), logAlone, sireError));
    }

    private LocusAnswer unsettled() {
        return switch (solution) {
            case Solution.Impossible _ -> new LocusAnswer.Contradicted(locus);
            case Solution.Stopped() -> new LocusAnswer.Stopped(locus);
            // Nobody has to wait for what would pass the limits.
            case Solution.TooWide _ -> new LocusAnswer.Stopped(locus);
            case Solution.Solved solved ->
                    throw new IllegalStateException("settled at " + locus + ": " + solved);
        };
    }

    /// The largest difference of any animal's chance between two attempts at a locus.
    double difference(LocusAttempt that) {
        var most = 0.0;
        for (var animal = 0; animal < kin.animals.size(); animal++) {
            var one = solved().chances(animal);
            var other = that.solved().chances(animal);
            for (var s = 0; s < one.length; s++) {
                most = Math.max(most, Math.abs(one[s] - other[s]));
            }
        }
        return most;
    }
}
