package clutchwright.engine.network;

/// A small change to a network that is solved already.
public sealed interface Change {

    /// One more weight for each state of a variable.
    static Change weigh(int variable, double[] weights) {
        return new Weigh(variable, weights);
    }

    /// All weights of a variable, its own and those it got by changes, replaced by these. Ties
    /// stay. Weights of one everywhere withdraw them.
    static Change reweigh(int variable, double[] weights) {
        return new Reweigh(variable, weights);
    }

    /// A new variable that is tied by one table to some that are there; it gets the next
    /// number.
    ///
    /// @param weights of the new variable's states
    /// @param table   row by row, the new variable last
    /// @param tied    the other variables of the table
    static Change leaf(double[] weights, double[] table, int... tied) {
        return new Leaf(weights, table, tied);
    }

    /// One more weight for each state of a variable.
    final class Weigh implements Change {

        final int variable;
        final double[] weights;

        private Weigh(int variable, double[] weights) {
            this.variable = variable;
            this.weights = weights.clone();
        }
    }

    /// Other weights for each state of a variable.
    final class Reweigh implements Change {

        final int variable;
        final double[] weights;

        private Reweigh(int variable, double[] weights) {
            this.variable = variable;
            this.weights = weights.clone();
        }
    }

    /// A new variable at the rim of the network.
    final class Leaf implements Change {

        final double[] weights;
        final double[] table;
        final int[] tied;

        private Leaf(double[] weights, double[] table, int... tied) {
            this.weights = weights;
            this.table = table;
            this.tied = tied.clone();
        }
    }
}
