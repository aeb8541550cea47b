package clutchwright.engine.network;

import java.util.Arrays;

/// The chances of a network whose next to impossible states were left out.
///
/// @param way how it is solved again when something changes: what was next to impossible may
///     not be so then
record NarrowedAnswer(FactorNetwork whole, Narrowed narrowed, Way way, Solution.Solved rest)
        implements Solution.Solved {

    @Override
    public double logTotal() {
        return rest.logTotal();
    }

    @Override
    public double chance(int variable, int state) {
        if (state < 0 || state >= whole.states(variable)) {
            throw new IndexOutOfBoundsException(state);
        }
        return narrowed.placeOf(variable, state)
                .map(place -> rest.chance(variable, place))
                .orElse(0.0);
    }

    @Override
    public double[] chances(int variable) {
        var all = new double[whole.states(variable)];
        var left = rest.chances(variable);
        for (var place = 0; place < left.length; place++) {
            all[narrowed.states[variable][place]] = left[place];
        }
        return all;
    }

    @Override
    public double[] joint(int... variables) {
        var left = rest.joint(variables);
        var all =
                new double
                        [Arrays.stream(variables)
                                .map(whole::states)
                                .reduce(1, Math::multiplyExact)];
        for (var cell = 0; cell < left.length; cell++) {
            var remaining = cell;
            var at = 0;
            var stride = 1;
            for (var i = variables.length - 1; i >= 0; i--) {
                var states = narrowed.states[variables[i]];
                at += states[remaining % states.length] * stride;
                remaining /= states.length;
                stride *= whole.states(variables[i]);
            }
            all[at] = left[cell];
        }
        return all;
    }

    @Override
    public Solution with(Change... changes) {
        return way.solve(Changed.of(whole, changes), Way.NONE, Stop.never());
    }

    @Override
    public Quality quality() {
        var error = rest.quality() instanceof Quality.Estimated(var largest) ? largest : 0;
        return error + narrowed.lost == 0
                ? new Quality.Exact()
                : new Quality.Estimated(Math.min(1, error + narrowed.lost));
    }

    @Override
    public double error(int variable) {
        return Math.min(1, rest.error(variable) + narrowed.lost);
    }
}
