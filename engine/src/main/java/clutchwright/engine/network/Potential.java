package clutchwright.engine.network;

import java.util.Arrays;

/// A table over some variables, times the exponential of a scale.
final class Potential {

    final int[] variables;
    final int[] states;
    final double[] cells;
    final double logScale;

    Potential(int[] variables, int[] states, double[] cells, double logScale) {
        this.variables = variables;
        this.states = states;
        this.cells = cells;
        this.logScale = logScale;
    }

    static Potential one() {
        return new Potential(new int[0], new int[0], new double[] {1}, 0);
    }

    boolean has(int variable) {
        return placeOf(variable) >= 0;
    }

    Potential times(Potential that) {
        var extra = Arrays.stream(that.variables).filter(v -> !has(v)).toArray();
        var joint = Arrays.copyOf(variables, variables.length + extra.length);
        System.arraycopy(extra, 0, joint, variables.length, extra.length);
        var sizes = Arrays.copyOf(states, joint.length);
        for (var i = variables.length; i < joint.length; i++) {
            sizes[i] = that.states[that.placeOf(joint[i])];
        }
        var product = new double[Arrays.stream(sizes).reduce(1, Math::multiplyExact)];
        var here = strides(joint);
        var there = that.strides(joint);
        var state = new int[joint.length];
        var a = 0;
        var b = 0;
        for (var cell = 0; cell < product.length; cell++) {
            product[cell] = cells[a] * that.cells[b];
            for (var i = joint.length - 1; i >= 0; i--) {
                a += here[i];
                b += there[i];
                if (++state[i] < sizes[i]) {
                    break;
                }
                a -= here[i] * sizes[i];
                b -= there[i] * sizes[i];
                state[i] = 0;
            }
        }
        return new Potential(joint, sizes, product, logScale + that.logScale);
    }

    /// The sum over all variables but these, in this order, its largest cell brought to one.
    Potential onto(int... kept) {
        var sizes = new int[kept.length];
        var length = 1;
        for (var i = 0; i < kept.length; i++) {
            sizes[i] = states[placeOf(kept[i])];
            length *= sizes[i];
        }
        var sums = new double[length];
        var target = new Potential(kept, sizes, sums, 0).strides(variables);
        var state = new int[variables.length];
        var to = 0;
        for (var cell : cells) {
            sums[to] += cell;
            for (var i = variables.length - 1; i >= 0; i--) {
                to += target[i];
                if (++state[i] < states[i]) {
                    break;
                }
                to -= target[i] * states[i];
                state[i] = 0;
            }
        }
        var largest = Arrays.stream(sums).max().orElseThrow();
        if (largest == 0) {
            return new Potential(kept, sizes, sums, Double.NEGATIVE_INFINITY);
        }
        for (var i = 0; i < length; i++) {
            sums[i] /= largest;
        }
        return new Potential(kept, sizes, sums, logScale + Math.log(largest));
    }

    /// What went into a product, taken out again; nothing divided by nothing is nothing.
    Potential without(Potential that) {
        var inverse = new double[that.cells.length];
        for (var i = 0; i < inverse.length; i++) {
            inverse[i] = that.cells[i] == 0 ? 0 : 1 / that.cells[i];
        }
        return times(new Potential(that.variables, that.states, inverse, -that.logScale));
    }

    private int placeOf(int variable) {
        for (var i = 0; i < variables.length; i++) {
            if (variables[i] == variable) {
                return i;
            }
        }
        return -1;
    }

    /// How far a step of each of these variables goes in this table.
    private int[] strides(int... joint) {
        var strides = new int[joint.length];
        for (var i = 0; i < joint.length; i++) {
            var place = placeOf(joint[i]);
            if (place >= 0) {
                strides[i] = 1;
                for (var j = place + 1; j < states.length; j++) {
                    strides[i] *= states[j];
                }
            }
        }
        return strides;
    }
}
