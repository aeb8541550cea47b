package clutchwright.engine.network;

/// The chances of the variables summed out at the rim, from the chances of those they were
/// tied to.
final class RimChances {

    final Reduction reduction;
    private final double[][] chances;

    /// For each live tie the chances of its variables' states together, as far as they are in
    /// it again.
    private final double[][] together;

    RimChances(Reduction reduction, Core core, double[][] askedFactors, double[][] chances) {
        this.reduction = reduction;
        this.chances = chances;
        together = new double[reduction.live][];
        for (var tie = 0; tie < reduction.live; tie++) {
            if (reduction.arity[tie] > 0) {
                var number = core.factorOf[tie];
                var asked = askedFactors[number];
                if (asked.length > 0) {
                    var places = core.placesOf(core.factors.get(number), reduction, tie);
                    together[tie] = places.length == 0 ? asked : permuted(asked, places);
                }
            }
        }
        for (var i = reduction.rim.size() - 1; i >= 0; i--) {
            answer(reduction.rim.get(i));
        }
    }

    /// Over the possible states of a variable that has a choice.
    double[] of(int variable) {
        return chances[variable];
    }

    /// How far each variable's chances are from others at most; both have the same reduction.
    double[] differences(RimChances that) {
        var differences = new double[chances.length];
        for (var v = 0; v < differences.length; v++) {
            if (!reduction.domains.isSettled(v)) {
                for (var s = 0; s < chances[v].length; s++) {
                    differences[v] =
                            Math.max(differences[v], Math.abs(chances[v][s] - that.chances[v][s]));
                }
            }
        }
        return differences;
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
