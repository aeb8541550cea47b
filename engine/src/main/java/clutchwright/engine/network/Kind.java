package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/// A table over the possible states of a few variables, the same for all ties alike.
final class Kind {

    final int number;
    final int[] sizes;
    final double[] cells;

    /// Natural logarithm of what the cells were divided by.
    final double logScale;

    Kind(int number, int[] sizes, double[] cells, double logScale) {
        this.number = number;
        this.sizes = sizes;
        this.cells = cells;
        this.logScale = logScale;
    }

    int arity() {
        return sizes.length;
    }

    /// The factor of one variable, if the table is a product of it and a table of the others:
    /// then the tie does not tie it.
    ///
    /// @return the factor, one at the largest cell; empty if the table is no such product
    double[] factorOf(int place) {
        var size = sizes[place];
        var inner = stride(place);
        var rows = cells.length / size;
        var largest = 0;
        for (var i = 1; i < cells.length; i++) {
            largest = cells[i] > cells[largest] ? i : largest;
        }
        var reference = rowStart(largest, place);
        var factor = new double[size];
        for (var state = 0; state < size; state++) {
            factor[state] = cells[reference + state * inner] / cells[largest];
        }
        var lead = largest / inner % size;
        for (var row = 0; row < rows; row++) {
            var start = row / inner * inner * size + row % inner;
            for (var state = 0; state < size; state++) {
                var expected = cells[start + lead * inner] * factor[state];
                // Products of the table's own cells: a few roundings apart at most.
                if (Math.abs(cells[start + state * inner] - expected) > 1e-15 * expected) {
                    return new double[0];
                }
            }
        }
        return factor;
    }

    /// The table at the state where that factor is one.
    Kind without(int place, double[] factor, int newNumber) {
        var lead = 0;
        while (factor[lead] < 1) {
            lead++;
        }
        var weights = new double[sizes[place]];
        weights[lead] = 1;
        return absorbing(place, weights, newNumber);
    }

    /// What is left of the table when one variable is summed out by its weights.
    Kind absorbing(int place, double[] weights, int newNumber) {
        var size = sizes[place];
        var inner = stride(place);
        var sums = new double[cells.length / size];
        var largest = 0.0;
        for (var row = 0; row < sums.length; row++) {
            var start = row / inner * inner * size + row % inner;
            var sum = 0.0;
            for (var state = 0; state < size; state++) {
                sum += cells[start + state * inner] * weights[state];
            }
            sums[row] = sum;
            largest = Math.max(largest, sum);
        }
        var rest = new int[sizes.length - 1];
        for (var i = 0; i < rest.length; i++) {
            rest[i] = sizes[i < place ? i : i + 1];
        }
        if (largest > 0) {
            for (var i = 0; i < sums.length; i++) {
                sums[i] /= largest;
            }
        }
        return new Kind(newNumber, rest, sums, logScale + Math.log(largest));
    }

    /// How many cells a step of the variable at a place goes.
    int stride(int place) {
        var stride = 1;
        for (var i = place + 1; i < sizes.length; i++) {
            stride *= sizes[i];
        }
        return stride;
    }

    private int rowStart(int cell, int place) {
        var inner = stride(place);
        return cell - cell / inner % sizes[place] * inner;
    }

    /// A form's table where only some states are possible, over the variables that have a
    /// choice.
    static Kind of(int number, double[] table, int[] states, long[] masks, int arity) {
        List<int[]> choices = new ArrayList<>();
        for (var i = 0; i < arity; i++) {
            choices.add(possible(states[i], masks[i]));
        }
        var cells = 1;
        for (var choice : choices) {
            cells *= choice.length;
        }
        var kept = new double[cells];
        var at = new int[arity];
        for (var i = 0; i < cells; i++) {
            var from = 0;
            for (var j = 0; j < arity; j++) {
                from = from * states[j] + choices.get(j)[at[j]];
            }
            kept[i] = table[from];
            for (var j = arity - 1; j >= 0 && ++at[j] == choices.get(j).length; j--) {
                at[j] = 0;
            }
        }
        var sizes = choices.stream().mapToInt(choice -> choice.length).filter(n -> n > 1);
        return new Kind(number, sizes.toArray(), kept, 0);
    }

    /// The states that a mask allows.
    static int[] possible(int states, long mask) {
        if (states > Long.SIZE) {
            return IntStream.range(0, states).toArray();
        }
        var possible = new int[Long.bitCount(mask)];
        var rest = mask;
        for (var i = 0; i < possible.length; i++) {
            possible[i] = Long.numberOfTrailingZeros(rest);
            rest &= rest - 1;
        }
        return possible;
    }

    @Override
    public String toString() {
        return number + ": " + Arrays.toString(sizes);
    }
}
