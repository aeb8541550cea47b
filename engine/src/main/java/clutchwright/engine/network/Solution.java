package clutchwright.engine.network;

/// What came of solving a network.
public sealed interface Solution {

    /// The chances of all variables.
    non-sealed interface Solved extends Solution {

        /// Natural logarithm of the sum, over all combinations of states, of the product of
        /// all weights.
        double logTotal();

        /// The chance of one state, between 0 and 1.
        double chance(int variable, int state);

        /// The chances of the states of a variable, which sum to one within 1e-12; a copy.
        double[] chances(int variable);

        /// The chances of the combinations of several variables' states, the last varying
        /// fastest.
        ///
        /// @param variables each once; more than a few make it dear
        double[] joint(int... variables);

        /// This network after some changes. This solution stays as it is.
        Solution with(Change... changes);

        /// How the chances were reached.
        Quality quality();

        /// How far a chance of this variable may be off, absolute; 0 where all is exact.
        double error(int variable);
    }

    /// Every combination has the weight zero.
    record Impossible(Where where) implements Solution {}

    /// Exact work would pass the limits; nothing was computed.
    ///
    /// @param log2Cells binary logarithm of the cells of the largest clique of the best order
    ///     found
    record TooWide(double log2Cells) implements Solution {}

    /// Given up because it was asked to.
    record Stopped() implements Solution {}

    /// Where it showed that nothing is possible.
    sealed interface Where {

        /// No state of this variable was left.
        record AtVariable(int variable) implements Where {}

        /// No combination of this tie was left; ties are numbered in the order they were
        /// added.
        record AtTie(int tie) implements Where {}

        /// Only several together show it.
        record Together() implements Where {}
    }
}
