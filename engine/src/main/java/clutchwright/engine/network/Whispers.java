package clutchwright.engine.network;

import java.util.Arrays;

/// First guesses of the chances of a network's variables as it is, before anything is reduced:
/// messages sent around its loops, tables walked only where they are not zero.
///
/// They say which states are next to impossible; nothing else rests on them.
final class Whispers {

    private static final int ROUNDS = 16;

    /// A tie speaks again where what it hears has moved by more than this share of the whole.
    private static final double STILL = 1e-4;

    private final FactorNetwork network;
    private final Sparse[] forms;
    private final double[][] beliefs;

    /// What each tie said last to each of its variables, all ties' variables one after another.
    private final double[][] said;

    /// The belief that each tie heard last, in the same places.
    private final double[][] heard;

    /// The largest chance that each state had in the last two rounds.
    private final double[][] largest;

    /// The cells of a table that are not zero, with the state of each variable in each cell.
    private static final class Sparse {

        private final double[] cells;
        private final int[][] states;

        private Sparse(double[] cells, int[]... states) {
            this.cells = cells;
            this.states = states;
        }

        static Sparse of(double[] table, int... sizes) {
            var count = (int) Arrays.stream(table).filter(cell -> cell > 0).count();
            var cells = new double[count];
            var states = new int[sizes.length][count];
            var at = 0;
            for (var cell = 0; cell < table.length; cell++) {
                if (table[cell] > 0) {
                    cells[at] = table[cell];
                    var rest = cell;
                    for (var i = sizes.length - 1; i >= 0; i--) {
                        states[i][at] = rest % sizes[i];
                        rest /= sizes[i];
                    }
                    at++;
                }
            }
            return new Sparse(cells, states);
        }
    }

    Whispers(FactorNetwork network) {
        this.network = network;
        forms = new Sparse[network.forms()];
        for (var f = 0; f < forms.length; f++) {
            forms[f] = Sparse.of(network.table(network.form(f).table), network.form(f).states);
        }
        beliefs = new double[network.variables()][];
        largest = new double[beliefs.length][];
        for (var v = 0; v < beliefs.length; v++) {
            beliefs[v] = new double[network.states(v)];
            Arrays.fill(beliefs[v], 1);
        }
        for (var i = 0; i < network.weighings(); i++) {
            Blocks.multiply(
                    beliefs[network.weighedVariable(i)], network.table(network.weightNumber(i)), 0);
        }
        for (var v = 0; v < beliefs.length; v++) {
            Passing.toSumOne(beliefs[v]);
            largest[v] = new double[beliefs[v].length];
        }
        said = new double[network.scopeStart(network.ties())][];
        heard = new double[said.length][];
        for (var i = 0; i < said.length; i++) {
            said[i] = new double[network.states(network.tied(i))];
            Arrays.fill(said[i], 1);
            heard[i] = new double[0];
        }
        send();
    }

    /// The largest chance of a state that was heard of lately.
    double of(int variable, int state) {
        return Math.max(largest[variable][state], beliefs[variable][state]);
    }

    private void send() {
        var spoke = true;
        for (var round = 0; round < ROUNDS && spoke; round++) {
            for (var v = 0; v < beliefs.length; v++) {
                System.arraycopy(beliefs[v], 0, largest[v], 0, beliefs[v].length);
            }
            spoke = false;
            for (var i = 0; i < network.ties(); i++) {
                // To and fro, since a round carries news only one way.
                spoke |= send(round % 2 == 0 ? i : network.ties() - 1 - i);
            }
        }
    }

    private boolean send(int tie) {
        var from = network.scopeStart(tie);
        var arity = network.scopeStart(tie + 1) - from;
        var moved = false;
        for (var j = 0; j < arity && !moved; j++) {
            moved = distance(heard[from + j], beliefs[network.tied(from + j)]) > STILL;
        }
        if (!moved) {
            return false;
        }
        var incoming = new double[arity][];
        for (var j = 0; j < arity; j++) {
            incoming[j] = beliefs[network.tied(from + j)].clone();
            Blocks.divide(incoming[j], said[from + j]);
        }
        var outgoing = sums(forms[network.formNumber(tie)], incoming);
        for (var j = 0; j < arity; j++) {
            receive(network.tied(from + j), from + j, incoming[j], outgoing[j]);
        }
        return true;
    }

    private static double distance(double[] one, double[] other) {
        if (one.length != other.length) {
            return 1;
        }
        var most = 0.0;
        for (var s = 0; s < one.length; s++) {
            most = Math.max(most, Math.abs(one[s] - other[s]));
        }
        return most;
    }

    private static double[][] sums(Sparse form, double[][] incoming) {
        var arity = incoming.length;
        var sums = new double[arity][];
        for (var j = 0; j < arity; j++) {
            sums[j] = new double[incoming[j].length];
        }
        for (var cell = 0; cell < form.cells.length; cell++) {
            for (var j = 0; j < arity; j++) {
                var product = form.cells[cell];
                for (var k = 0; k < arity; k++) {
                    product *= k == j ? 1 : incoming[k][form.states[k][cell]];
                }
                sums[j][form.states[j][cell]] += product;
            }
        }
        return sums;
    }

    private void receive(int variable, int place, double[] incoming, double[] message) {
        var most = Blocks.largest(message);
        if (most == 0) {
            return;
        }
        Blocks.scale(message, 1 / most);
        Blocks.multiply(incoming, message, 0);
        if (Blocks.largest(incoming) == 0) {
            return;
        }
        Passing.toSumOne(incoming);
        beliefs[variable] = incoming;
        said[place] = message;
        heard[place] = incoming;
    }
}
