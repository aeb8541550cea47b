package clutchwright.engine.network;

/// The chances of what is not in the core: variables tied to nothing, and those summed out at
/// the rim, from the chances of the variables they were tied to.
final class RimChances {

    private final Reduction reduction;
    private final double[][] chances;

    /// For each live tie the chances of its variables' states together, as far as they are in it
    /// again.
    private final double[][] together;

    RimChances(Reduction reduction, Core core, Passing passing, double[][] chances) {
        this.reduction = reduction;
        this.chances = chances;
        together = new double[reduction.live][];
        for (var tie = 0; tie < reduction.live; tie++) {
            if (reduction.arity[tie] > 0) {
                var number = core.factorOf[tie];
                var asked = passing.asked[number];
                if (asked.length > 0) {
                    var places = core.placesOf(core.factors.get(number), reduction, tie);
                    together[tie] = places.length == 0 ? asked : permuted(asked, places);
                }
            }
        }
    }

    /// The logarithm of the weight of everything, with the variables that nothing ties any more.
    double logOfAlone() {
        for (var v = 0; v < chances.length; v++) {
            if (chances[v] == null
                    && reduction.degree[v] == 0
                    && !reduction.domains.isSettled(v)
                    && !reduction.isAtRim(v)) {
                chances[v] = reduction.weights(v).clone();
                var sum = Blocks.sum(chances[v]);
                reduction.gone.times(sum);
                Blocks.scale(chances[v], 1 / sum);
            }
        }
        return reduction.gone.log();
    }

    void answer() {
        for (var i = reduction.rim.size() - 1; i >= 0; i--) {
            answer(reduction.rim.get(i));
        }
    }

    /// The chances of the kept tie's variables' states together.
    ///
    /// @param cells how many states its variables have together, the impossible ones included
    double[] kept(int cells, int... variables) {
        var kept = new double[cells];
        var state = new int[variables.length];
        for (var cell = 0; cell < cells; cell++) {
            var at = 0;
            var isPossible = true;
            for (var i = 0; i < state.length; i++) {
                var place = reduction.domains.placeOf(variables[i], state[i]);
                isPossible &= place >= 0;
                at = at * reduction.domains.size(variables[i]) + place;
            }
            if (isPossible) {
                kept[cell] = reduction.hasKept() ? together[reduction.keptLive][at] : 1;
            }
            for (var i = state.length - 1;
                    i >= 0 && ++state[i] == reduction.network.states(variables[i]);
                    i--) {
                state[i] = 0;
            }
        }
        return kept;
    }

    private void answer(Reduction.Rim rim) {
        var rest = together[rim.tie] == null ? chances[rim.rest[0]] : together[rim.tie];
        var size = rim.before.sizes[rim.place];
        var inner = rim.before.stride(rim.place);
        var joint = new double[rim.before.cells.length];
        var own = new double[size];
        for (var row = 0; row < rest.length; row++) {
            var start = row / inner * inner * size + row % inner;
            var sum = rim.after.cells[row];
            var share = sum == 0 ? 0 : rest[row] / sum;
            for (var state = 0; state < size; state++) {
                var at = start + state * inner;
                joint[at] = share * rim.before.cells[at] * rim.weights[state];
                own[state] += joint[at];
            }
        }
        Passing.toSumOne(own);
        Passing.toSumOne(joint);
        chances[rim.variable] = own;
        together[rim.tie] = joint;
    }

    private static double[] permuted(double[] cells, int[] places) {
        var permuted = new double[cells.length];
        for (var i = 0; i < cells.length; i++) {
            permuted[places[i]] = cells[i];
        }
        return permuted;
    }
}
