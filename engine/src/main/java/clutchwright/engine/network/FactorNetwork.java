package clutchwright.engine.network;

import java.util.Arrays;
import java.util.HashSet;

/// Variables with few states, and tables of weights that tie them together.
///
/// Tables are kept as they were handed in and are never copied: many ties may share one array, and
/// nobody may change it afterwards. Solving is fastest where equal tables are one array.
public final class FactorNetwork {

    private final int[] states;
    private final double[][] weights;
    private final int[] weighed;
    private final double[][] tables;
    private final int[] scopeStarts;
    private final int[] scopes;

    private FactorNetwork(Builder builder) {
        states = Arrays.copyOf(builder.states, builder.variables);
        weights = Arrays.copyOf(builder.weights, builder.weighings);
        weighed = Arrays.copyOf(builder.weighed, builder.weighings);
        tables = Arrays.copyOf(builder.tables, builder.ties);
        scopeStarts = Arrays.copyOf(builder.scopeStarts, builder.ties + 1);
        scopes = Arrays.copyOf(builder.scopes, scopeStarts[builder.ties]);
    }

    public int variables() {
        return states.length;
    }

    public int states(int variable) {
        return states[variable];
    }

    int weighings() {
        return weights.length;
    }

    int weighedVariable(int weighing) {
        return weighed[weighing];
    }

    double[] weights(int weighing) {
        return weights[weighing];
    }

    int ties() {
        return tables.length;
    }

    double[] table(int tie) {
        return tables[tie];
    }

    /// How many variables a tie has.
    int arity(int tie) {
        return scopeStarts[tie + 1] - scopeStarts[tie];
    }

    /// The variable at a place of a tie, in the order of its table: the last varies fastest.
    int tied(int tie, int place) {
        return scopes[scopeStarts[tie] + place];
    }

    int[] scope(int tie) {
        return Arrays.copyOfRange(scopes, scopeStarts[tie], scopeStarts[tie + 1]);
    }

    /// This network after some changes.
    FactorNetwork with(Change... changes) {
        var reweighed = new HashSet<Integer>();
        for (var change : changes) {
            if (change instanceof Change.Reweigh again) {
                reweighed.add(again.variable);
            }
        }
        var builder = new Builder();
        for (var count : states) {
            builder.variable(count);
        }
        for (var i = 0; i < weights.length; i++) {
            if (!reweighed.contains(weighed[i])) {
                builder.weigh(weighed[i], weights[i]);
            }
        }
        for (var tie = 0; tie < tables.length; tie++) {
            builder.tie(tables[tie], scope(tie));
        }
        for (var change : changes) {
            switch (change) {
                case Change.Weigh more -> builder.weigh(more.variable, more.weights);
                case Change.Reweigh other -> builder.weigh(other.variable, other.weights);
                case Change.Leaf leaf -> {
                    var scope = Arrays.copyOf(leaf.tied, leaf.tied.length + 1);
                    scope[leaf.tied.length] = builder.variable(leaf.weights.length);
                    builder.weigh(scope[leaf.tied.length], leaf.weights).tie(leaf.table, scope);
                }
            }
        }
        return builder.build();
    }

    /// Gathers a network; variables are numbered from 0 in the order they are added.
    public static final class Builder {

        private int variables;
        private int[] states = new int[16];
        private int weighings;
        private double[][] weights = new double[16][];
        private int[] weighed = new int[16];
        private int ties;
        private double[][] tables = new double[16][];
        private int[] scopeStarts = new int[17];
        private int[] scopes = new int[48];

        public Builder() {}

        /// Adds a variable.
        ///
        /// @return its number
        /// @throws IllegalArgumentException if it has no state
        public int variable(int states) {
            if (states < 1) {
                throw new IllegalArgumentException("a variable has " + states + " states");
            }
            if (variables == this.states.length) {
                this.states = Arrays.copyOf(this.states, 2 * variables);
            }
            this.states[variables] = states;
            return variables++;
        }

        /// Multiplies the weight of each state of a variable.
        ///
        /// @param weights one a state, none below zero
        /// @throws IllegalArgumentException if they are not as many as the states, or not so
        public Builder weigh(int variable, double[] weights) {
            requireVariable(variable);
            if (weights.length != states[variable]) {
                throw new IllegalArgumentException(
                        weights.length + " weights for " + states[variable] + " states");
            }
            requireWeights(weights);
            if (weighings == weighed.length) {
                this.weights = Arrays.copyOf(this.weights, 2 * weighings);
                weighed = Arrays.copyOf(weighed, 2 * weighings);
            }
            this.weights[weighings] = weights;
            weighed[weighings++] = variable;
            return this;
        }

        /// Ties variables together: each combination of their states gets a weight.
        ///
        /// @param table     row by row, the last variable's state varies fastest
        /// @param variables each once, at least one
        /// @throws IllegalArgumentException if the table is not of their size, or a weight is below
        ///                                  zero or not finite
        public Builder tie(double[] table, int... variables) {
            requireSize(table, variables);
            requireWeights(table);
            if (ties == tables.length) {
                tables = Arrays.copyOf(tables, 2 * ties);
                scopeStarts = Arrays.copyOf(scopeStarts, 2 * ties + 1);
            }
            var start = scopeStarts[ties];
            if (start + variables.length > scopes.length) {
                scopes = Arrays.copyOf(scopes, 2 * (start + variables.length));
            }
            System.arraycopy(variables, 0, scopes, start, variables.length);
            tables[ties++] = table;
            scopeStarts[ties] = start + variables.length;
            return this;
        }

        public FactorNetwork build() {
            return new FactorNetwork(this);
        }

        private void requireVariable(int variable) {
            if (variable < 0 || variable >= variables) {
                throw new IllegalArgumentException(
                        "variable " + variable + " of " + variables + " variables");
            }
        }

        private void requireSize(double[] table, int... variables) {
            if (variables.length == 0) {
                throw new IllegalArgumentException("a tie without variables");
            }
            var cells = 1L;
            for (var i = 0; i < variables.length; i++) {
                requireVariable(variables[i]);
                for (var j = 0; j < i; j++) {
                    if (variables[j] == variables[i]) {
                        throw new IllegalArgumentException(
                                "variable " + variables[i] + " twice in one tie");
                    }
                }
                cells = Math.min(cells * states[variables[i]], Integer.MAX_VALUE);
            }
            if (table.length != cells) {
                throw new IllegalArgumentException(
                        table.length + " weights for " + cells + " combinations");
            }
        }

        private static void requireWeights(double[] weights) {
            for (var weight : weights) {
                // Written so that NaN fails.
                if (!(weight >= 0 && weight < Double.POSITIVE_INFINITY)) {
                    throw new IllegalArgumentException("weight " + weight);
                }
            }
        }
    }
}
