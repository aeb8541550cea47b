package clutchwright.engine.network;

import java.util.function.Function;

/// How a network is solved, and solved again when something is asked or changed.
interface Way {

    /// No tie is kept.
    int NONE = Integer.MAX_VALUE;

    /// Solves a network that is reduced already.
    Solution solve(Reduced reduced, Stop stop);

    /// @param kept a tie whose variables' chances together are asked for, or [#NONE]
    default Solution solve(FactorNetwork network, int kept, Stop stop) {
        return reduce(network, kept, reduced -> solve(reduced, stop));
    }

    /// Strikes out what is impossible and sums out the rim, then solves the rest.
    static Solution reduce(FactorNetwork network, int kept, Function<Reduced, Solution> rest) {
        var domains = new Domains(network);
        var nowhere = domains.narrow();
        if (nowhere.isPresent()) {
            return new Solution.Impossible(nowhere.get());
        }
        return rest.apply(new Reduced(network, domains, kept));
    }
}
