package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// First guesses of the chances of a core's nodes, by messages sent around its loops (loopy
/// belief propagation). They say which nodes are nearly certain; nothing else rests on them.
final class LoopyBeliefs {

    private static final int ROUNDS = 200;
    private static final double STILL = 1e-5;

    private final Core core;
    private final double[][] beliefs;

    /// The last message of each factor to each of its nodes.
    private final List<double[][]> messages = new ArrayList<>();

    private double change;
    private double damping;

    /// @param weights of each node's states
    LoopyBeliefs(Core core, double[][] weights) {
        this.core = core;
        beliefs = new double[weights.length][];
        for (var i = 0; i < weights.length; i++) {
            beliefs[i] = weights[i].clone();
            Passing.toSumOne(beliefs[i]);
        }
        for (var factor : core.factors) {
            var toNodes = new double[factor.nodes.length][];
            for (var j = 0; j < toNodes.length; j++) {
                toNodes[j] = new double[factor.sizes[j]];
                Arrays.fill(toNodes[j], 1);
            }
            messages.add(toNodes);
        }
        change = 1;
        for (var round = 0; round < ROUNDS && change > STILL; round++) {
            change = 0;
            // Messages that swing to and fro come to rest when they move by half only.
            damping = round < 20 ? 0 : 0.5;
            for (var i = 0; i < messages.size(); i++) {
                send(round % 2 == 0 ? i : messages.size() - 1 - i);
            }
        }
    }

    /// How far from certain a node seems: one less the chance of its likeliest state.
    double doubt(int node) {
        return 1 - Blocks.largest(beliefs[node]);
    }

    /// What a factor says to the node at a place of it.
    double[] message(int factor, int place) {
        return messages.get(factor)[place];
    }

    private void send(int number) {
        var factor = core.factors.get(number);
        var old = messages.get(number);
        var arity = factor.nodes.length;
        var incoming = new double[arity][];
        for (var j = 0; j < arity; j++) {
            incoming[j] = beliefs[factor.nodes[j]].clone();
            Blocks.divide(incoming[j], old[j]);
        }
        var outgoing = sums(factor, incoming);
        for (var j = 0; j < arity; j++) {
            receive(factor.nodes[j], incoming[j], outgoing[j], old[j]);
        }
    }

    private static double[][] sums(Core.Factor factor, double[][] incoming) {
        var arity = incoming.length;
        var sums = new double[arity][];
        for (var j = 0; j < arity; j++) {
            sums[j] = new double[factor.sizes[j]];
        }
        var state = new int[arity];
        for (var cell : factor.cells) {
            for (var j = 0; j < arity; j++) {
                var product = cell;
                for (var k = 0; k < arity; k++) {
                    product *= k == j ? 1 : incoming[k][state[k]];
                }
                sums[j][state[j]] += product;
            }
            for (var j = arity - 1; j >= 0 && ++state[j] == factor.sizes[j]; j--) {
                state[j] = 0;
            }
        }
        return sums;
    }

    private void receive(int node, double[] incoming, double[] message, double[] old) {
        var largest = Blocks.largest(message);
        if (largest == 0) {
            return;
        }
        for (var s = 0; s < message.length; s++) {
            message[s] = (1 - damping) * message[s] / largest + damping * old[s];
        }
        var belief = new double[message.length];
        for (var s = 0; s < belief.length; s++) {
            belief[s] = incoming[s] * message[s];
        }
        if (Blocks.largest(belief) == 0) {
            return;
        }
        Passing.toSumOne(belief);
        for (var s = 0; s < belief.length; s++) {
            change = Math.max(change, Math.abs(belief[s] - beliefs[node][s]));
        }
        beliefs[node] = belief;
        System.arraycopy(message, 0, old, 0, message.length);
    }
}
