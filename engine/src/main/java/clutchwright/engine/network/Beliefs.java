package clutchwright.engine.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/// Loopy belief propagation on a core: messages between factors and nodes until they settle.
///
/// Exact where the core has no loops. On loops it is an approximation without a guarantee; it
/// is used to find where a core can be cut at little cost, and to make up for the cuts. J.
/// Pearl, Probabilistic Reasoning in Intelligent Systems, 1988; F. Kschischang, B. Frey and H.
/// Loeliger, "Factor graphs and the sum-product algorithm", IEEE Trans. Inf. Theory 47, 2001.
final class Beliefs {

    private static final int MOST_SWEEPS = 60;
    private static final int UNDAMPED_SWEEPS = 20;
    private static final double SETTLED = 1e-5;

    /// Messages are kept above this: a belief must survive division by any of them.
    private static final double LEAST = 1e-40;

    private static final double LEAST_BELIEF = 1e-200;

    private final Core core;

    /// For each factor and place the message to the node there, largest entry one.
    final double[][][] messages;

    /// For each node its weights times all its messages, largest entry one.
    final double[][] beliefs;

    private final double[] @Nullable [] cavities = new double[64][];
    private double[] outgoing = new double[0];
    private double moved;

    /// @param weights of each node's states
    Beliefs(Core core, double[][] weights) {
        this.core = core;
        beliefs = new double[weights.length][];
        for (var node = 0; node < beliefs.length; node++) {
            beliefs[node] = weights[node].clone();
            clamp(beliefs[node], beliefs[node].length, LEAST_BELIEF);
        }
        messages = new double[core.factors.size()][][];
        for (var f = 0; f < messages.length; f++) {
            var sizes = core.factors.get(f).sizes;
            messages[f] = new double[sizes.length][];
            for (var place = 0; place < sizes.length; place++) {
                messages[f][place] = new double[sizes[place]];
                Arrays.fill(messages[f][place], 1);
            }
        }
        settle();
    }

    /// How far a node is from being certain: one less its likeliest state's chance.
    double doubt(int node) {
        var largest = 0.0;
        var sum = 0.0;
        for (var belief : beliefs[node]) {
            largest = Math.max(largest, belief);
            sum += belief;
        }
        return 1 - largest / sum;
    }

    /// The largest difference from other chances of a node's states.
    double distance(int node, double... chances) {
        var sum = Blocks.sum(beliefs[node]);
        var most = 0.0;
        for (var s = 0; s < chances.length; s++) {
            most = Math.max(most, Math.abs(beliefs[node][s] / sum - chances[s]));
        }
        return most;
    }

    private void settle() {
        for (var sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            moved = 0;
            var kept = sweep < UNDAMPED_SWEEPS ? 0 : 0.5;
            for (var f = 0; f < messages.length; f++) {
                send(f, kept);
            }
            for (var f = messages.length - 1; f >= 0; f--) {
                send(f, kept);
            }
            if (moved < SETTLED) {
                return;
            }
        }
    }

    private void send(int f, double kept) {
        var factor = core.factors.get(f);
        var nodes = factor.nodes;
        var sent = messages[f];
        for (var place = 0; place < nodes.length; place++) {
            var belief = beliefs[nodes[place]];
            var message = sent[place];
            var cavity = cavity(place, belief.length);
            for (var s = 0; s < belief.length; s++) {
                cavity[s] = belief[s] / message[s];
            }
        }
        for (var place = 0; place < nodes.length; place++) {
            var message = outgoing(factor, place);
            clamp(message, factor.sizes[place], LEAST);
            var before = sent[place];
            var belief = beliefs[nodes[place]];
            for (var s = 0; s < belief.length; s++) {
                moved = Math.max(moved, Math.abs(message[s] - before[s]));
                before[s] = kept * before[s] + (1 - kept) * message[s];
                belief[s] = cavities[place][s] * before[s];
            }
            clamp(belief, belief.length, LEAST_BELIEF);
        }
    }

    /// Room that is used again and again: messages are sent by the million.
    private double[] cavity(int place, int size) {
        if (cavities[place] == null || cavities[place].length < size) {
            cavities[place] = new double[size];
        }
        return cavities[place];
    }

    private double[] outgoing(Core.Factor factor, int place) {
        var sizes = factor.sizes;
        if (outgoing.length < sizes[place]) {
            outgoing = new double[sizes[place]];
        }
        var message = outgoing;
        Arrays.fill(message, 0, sizes[place], 0);
        switch (sizes.length) {
            case 1 -> System.arraycopy(factor.cells, 0, message, 0, sizes[0]);
            case 2 -> ofPair(factor, place, message);
            case 3 -> ofThree(factor, place, message);
            default -> ofMany(factor, place, message);
        }
        return message;
    }

    private void ofPair(Core.Factor factor, int place, double[] message) {
        var first = factor.sizes[0];
        var second = factor.sizes[1];
        var cells = factor.cells;
        if (place == 0) {
            for (var a = 0; a < first; a++) {
                var sum = 0.0;
                for (var b = 0; b < second; b++) {
                    sum += cells[a * second + b] * cavities[1][b];
                }
                message[a] = sum;
            }
        } else {
            for (var a = 0; a < first; a++) {
                for (var b = 0; b < second; b++) {
                    message[b] += cells[a * second + b] * cavities[0][a];
                }
            }
        }
    }

    private void ofThree(Core.Factor factor, int place, double[] message) {
        var sizes = factor.sizes;
        var cells = factor.cells;
        var cell = 0;
        for (var a = 0; a < sizes[0]; a++) {
            for (var b = 0; b < sizes[1]; b++) {
                for (var c = 0; c < sizes[2]; c++) {
                    var weight = cells[cell++];
                    switch (place) {
                        case 0 -> message[a] += weight * cavities[1][b] * cavities[2][c];
                        case 1 -> message[b] += weight * cavities[0][a] * cavities[2][c];
                        default -> message[c] += weight * cavities[0][a] * cavities[1][b];
                    }
                }
            }
        }
    }

    private void ofMany(Core.Factor factor, int place, double[] message) {
        var sizes = factor.sizes;
        var state = new int[sizes.length];
        for (var weight : factor.cells) {
            var product = weight;
            for (var i = 0; i < sizes.length; i++) {
                if (i != place) {
                    product *= cavities[i][state[i]];
                }
            }
            message[state[place]] += product;
            for (var i = sizes.length - 1; i >= 0 && ++state[i] == sizes[i]; i--) {
                state[i] = 0;
            }
        }
    }

    /// Brings the largest entry to one, and none below the least.
    private static void clamp(double[] entries, int size, double least) {
        var largest = 0.0;
        for (var i = 0; i < size; i++) {
            largest = Math.max(largest, entries[i]);
        }
        var scale = 1 / largest;
        for (var i = 0; i < size; i++) {
            entries[i] = largest > 0 ? Math.max(entries[i] * scale, least) : 1;
        }
    }
}
