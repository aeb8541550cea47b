package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Variables with few states, and tables of weights that tie them together.
///
/// Tables are kept as they were handed in and are never copied: many ties may share one array,
/// and nobody may change it afterwards. Solving is fastest where equal tables are one array.
public final class FactorNetwork {

    private final int[] states;
    private final double[][] tables;
    private final int[] weighed;
    private final int[] weightNumbers;
    private final Form[] forms;
    private final int[] tieForms;
    private final int[] scopeStarts;
    private final int[] scopes;

    private FactorNetwork(Builder builder) {
        states = Arrays.copyOf(builder.states, builder.variables);
        tables = builder.tables.all();
        weighed = Arrays.copyOf(builder.weighed, builder.weighings);
        weightNumbers = Arrays.copyOf(builder.weightNumbers, builder.weighings);
        forms = builder.forms.toArray(Form[]::new);
        tieForms = Arrays.copyOf(builder.tieForms, builder.ties);
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
        return weighed.length;
    }

    int weighedVariable(int weighing) {
        return weighed[weighing];
    }

    /// The number of the table of a weighing, below [#tables].
    int weightNumber(int weighing) {
        return weightNumbers[weighing];
    }

    int ties() {
        return tieForms.length;
    }

    /// The number of a tie's form, below [#forms].
    int formNumber(int tie) {
        return tieForms[tie];
    }

    int forms() {
        return forms.length;
    }

    Form form(int number) {
        return forms[number];
    }

    /// How many different tables there are.
    int tables() {
        return tables.length;
    }

    double[] table(int number) {
        return tables[number];
    }

    /// Where a tie's variables begin among all ties' variables; the next tie's follow.
    int scopeStart(int tie) {
        return scopeStarts[tie];
    }

    /// One of all ties' variables, one after another in the order of their tables.
    int tied(int place) {
        return scopes[place];
    }

    int[] scope(int tie) {
        return Arrays.copyOfRange(scopes, scopeStarts[tie], scopeStarts[tie + 1]);
    }

    /// A table with the numbers of states of the variables it ties; many ties have one form.
    static final class Form {

        final int table;
        final int[] states;

        private Form(int table, int... states) {
            this.table = table;
            this.states = states;
        }
    }

    /// Gathers a network; variables are numbered from 0 in the order they are added.
    public static final class Builder {

        private final DistinctTables tables = new DistinctTables();
        private int variables;
        private int[] states = new int[16];
        private int weighings;
        private int[] weighed = new int[16];
        private int[] weightNumbers = new int[16];
        private int ties;
        private int[] tieForms = new int[16];
        private final List<Form> forms = new ArrayList<>();
        private final Map<List<Integer>, Integer> formNumbers = new HashMap<>();
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
        /// @param weights one a state, none below zero; kept, not copied
        /// @throws IllegalArgumentException if they are not as many as the states, or not so
        public Builder weigh(int variable, double[] weights) {
            requireVariable(variable);
            if (weights.length != states[variable]) {
                throw new IllegalArgumentException(
                        weights.length + " weights for " + states[variable] + " states");
            }
            if (weighings == weighed.length) {
                weightNumbers = Arrays.copyOf(weightNumbers, 2 * weighings);
                weighed = Arrays.copyOf(weighed, 2 * weighings);
            }
            weightNumbers[weighings] = tables.numberOf(weights);
            weighed[weighings++] = variable;
            return this;
        }

        /// Ties variables together: each combination of their states gets a weight.
        ///
        /// @param table     row by row, the last variable's state varies fastest; kept, not
        ///     copied
        /// @param variables each once, at least one
        /// @throws IllegalArgumentException if the table is not of their size, or a weight is
        ///     below zero or not finite
        public Builder tie(double[] table, int... variables) {
            requireDistinct(variables);
            if (ties == tieForms.length) {
                tieForms = Arrays.copyOf(tieForms, 2 * ties);
                scopeStarts = Arrays.copyOf(scopeStarts, 2 * ties + 1);
            }
            var start = scopeStarts[ties];
            if (start + variables.length > scopes.length) {
                scopes = Arrays.copyOf(scopes, 2 * (start + variables.length));
            }
            System.arraycopy(variables, 0, scopes, start, variables.length);
            var form = formOf(table, variables);
            tieForms[ties++] = form;
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

        private void requireDistinct(int... variables) {
            if (variables.length == 0) {
                throw new IllegalArgumentException("a tie without variables");
            }
            for (var i = 0; i < variables.length; i++) {
                requireVariable(variables[i]);
                for (var j = 0; j < i; j++) {
                    if (variables[j] == variables[i]) {
                        throw new IllegalArgumentException(
                                "variable " + variables[i] + " twice in one tie");
                    }
                }
            }
        }

        private int formOf(double[] table, int... variables) {
            var number = tables.numberOf(table);
            // Nearly always the form of the tie before.
            if (ties > 0 && isOf(forms.get(tieForms[ties - 1]), number, variables)) {
                return tieForms[ties - 1];
            }
            List<Integer> key = new ArrayList<>();
            key.add(number);
            for (var v : variables) {
                key.add(states[v]);
            }
            return formNumbers.computeIfAbsent(key, _ -> newForm(number, table, variables));
        }

        private boolean isOf(Form form, int number, int... variables) {
            if (form.table != number || form.states.length != variables.length) {
                return false;
            }
            for (var i = 0; i < variables.length; i++) {
                if (form.states[i] != states[variables[i]]) {
                    return false;
                }
            }
            return true;
        }

        private int newForm(int number, double[] table, int... variables) {
            var sizes = new int[variables.length];
            var cells = 1L;
            for (var i = 0; i < variables.length; i++) {
                sizes[i] = states[variables[i]];
                cells = Math.min(cells * sizes[i], Integer.MAX_VALUE);
            }
            if (table.length != cells) {
                throw new IllegalArgumentException(
                        table.length + " weights for " + cells + " combinations");
            }
            forms.add(new Form(number, sizes));
            return forms.size() - 1;
        }
    }
}
