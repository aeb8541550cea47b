package clutchwright.engine.network;

import java.util.stream.IntStream;

/// With some nodes cut out of their ties, so few that the rest is as wide as can be borne.
///
/// Two estimates are made, one with more cuts than the other; how far they are apart, and how
/// doubtful the cut nodes are, says how far the better one may be off.
record EstimateWay(Limits limits) implements Way {

    /// Two estimates, each with some passes until messages settle.
    private static final long PASSES = 16;

    /// More cells than these bring little: errors are far below what anybody can see.
    private static final long MOST_CELLS = 1L << 18;

    /// The second estimate cuts so many more for each node cut, and some more.
    private static final int COARSER_BY_ONE_IN = 4;

    private static final int COARSER_BY_AT_LEAST = 4;

    /// How much larger than the difference an error is called; see `docs/mathematics.md`.
    private static final double CAUTION = 2;

    /// Variables of more states are those of a series of alleles.
    private static final int FEW_STATES = 6;

    /// Tables of more cells, all ties together, are not tried whole.
    private static final double MOST_WHOLE = 1L << 24;

    @Override
    public Solution solve(FactorNetwork network, int kept, Stop stop) {
        if (kept != NONE || !hasManyStates(network)) {
            return Way.super.solve(network, kept, stop);
        }
        if (cells(network) <= MOST_WHOLE) {
            var whole =
                    Way.reduce(
                            network,
                            kept,
                            reduced -> new ExactWay(limits).solve(reduced, stop, this));
            if (!(whole instanceof Solution.TooWide)) {
                return whole;
            }
        }
        return Narrowed.of(network)
                .map(narrowed -> solve(network, narrowed, stop))
                .filter(solution -> !(solution instanceof Solution.Impossible))
                // What looked next to impossible was not: together the records allow nothing else.
                .orElseGet(() -> Way.super.solve(network, kept, stop));
    }

    private Solution solve(FactorNetwork network, Narrowed narrowed, Stop stop) {
        return narrowed.answer(network, this, Way.super.solve(narrowed.network, NONE, stop));
    }

    private static boolean hasManyStates(FactorNetwork network) {
        return IntStream.range(0, network.variables())
                .anyMatch(v -> network.states(v) > FEW_STATES);
    }

    private static double cells(FactorNetwork network) {
        var cells = 0.0;
        for (var tie = 0; tie < network.ties(); tie++) {
            cells += network.table(network.form(network.formNumber(tie)).table).length;
        }
        return cells;
    }

    @Override
    public Solution solve(Reduced reduced, Stop stop) {
        var exact = new ExactWay(limits).solve(reduced, stop, this);
        if (!(exact instanceof Solution.TooWide)) {
            return exact;
        }
        var most = (double) Math.min(MOST_CELLS, limits.operations() / PASSES);
        return solve(reduced, stop, most);
    }

    Solution solve(Reduced reduced, Stop stop, double cells) {
        var core = reduced.core;
        var guesses = new LoopyBeliefs(core, reduced.weights);
        var cutting = new Cutting(core, guesses);
        var count = cutting.enoughFor(cells, limits.cells());
        var more = count + count / COARSER_BY_ONE_IN + COARSER_BY_AT_LEAST;
        var fine = new CutMessages(reduced, new CutCore(core, cutting.first(count)), guesses);
        var coarse = new CutMessages(reduced, new CutCore(core, cutting.first(more)), guesses);
        if (!fine.settle(stop) || (count > 0 && !coarse.settle(stop))) {
            return new Solution.Stopped();
        }
        var logTotal = reduced.logOfGone() + fine.logTotal;
        if (Double.isNaN(logTotal) || logTotal == Double.NEGATIVE_INFINITY) {
            return new Solution.Impossible(new Solution.Where.Together());
        }
        var rim = reduced.answer(fine.chances, fine.asked);
        if (fine.isWhole()) {
            return new Answer(this, rim, logTotal, Answer.NO_ERRORS, new Quality.Exact());
        }
        var other = reduced.answer(coarse.chances, coarse.asked);
        // Chances were hardly ever found to be off by more than the doubt about the last cut.
        var least = CAUTION * cutting.largestDoubt(count) + fine.change + coarse.change;
        var errors = rim.differences(other);
        var largest = 0.0;
        for (var v = 0; v < errors.length; v++) {
            errors[v] =
                    reduced.reduction.domains.isSettled(v)
                            ? 0
                            : Math.min(1, CAUTION * errors[v] + least);
            largest = Math.max(largest, errors[v]);
        }
        return new Answer(this, rim, logTotal, errors, new Quality.Estimated(largest));
    }
}
