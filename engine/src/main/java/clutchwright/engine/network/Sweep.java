package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// One walk through all cells of one clique: its product is never held, only blocks of it.
final class Sweep {

    /// Cells of a block: several blocks fit into the nearest cache.
    private static final int BLOCK = 1024;

    private final int[] scope;
    private final int[] dims;
    private final int firstInner;
    private final int block;

    /// The product of all operands without outer variables, a block a state of the own
    /// variable.
    private final double[][] still;

    private final List<Operand> moving = new ArrayList<>();

    /// How many times the still product was divided, as a logarithm.
    private double logStill;

    /// Where the outer variables stand.
    private int[] outer = new int[0];

    /// @param weights of the clique's own variable
    Sweep(int[] scope, int[] dims, double[] weights) {
        this.scope = scope;
        this.dims = dims;
        var inner = dims.length;
        var cells = 1;
        while (inner > 1 && cells * dims[inner - 1] <= BLOCK) {
            inner--;
            cells *= dims[inner];
        }
        firstInner = inner;
        block = cells;
        still = new double[dims[0]][block];
        for (var own = 0; own < still.length; own++) {
            Arrays.fill(still[own], weights[own]);
        }
    }

    /// Multiplies a table in.
    ///
    /// @param variables of the table, all in the clique's scope, in the table's order
    void multiply(double[] cells, int[] variables, int[] sizes) {
        var operand = operand(cells, variables, sizes);
        if (operand.hasOuter) {
            moving.add(operand);
        } else {
            operand.multiplyInto(still);
            keepInRange();
        }
    }

    /// A table to sum the clique's chances into, for [#spread].
    Operand operand(double[] cells, int[] variables, int[] sizes) {
        var strides = new int[dims.length];
        var stride = 1;
        for (var i = variables.length - 1; i >= 0; i--) {
            strides[placeOf(variables[i])] = stride;
            stride *= sizes[i];
        }
        return new Operand(cells, strides, dims, firstInner);
    }

    /// Sums the own variable out.
    ///
    /// @param to zeros, a cell a combination of the others
    /// @return the logarithm of what the sums must be multiplied by
    double sum(double[] to) {
        var cells = new double[block];
        start();
        for (var base = 0; base < to.length; base += block) {
            for (var own = 0; own < still.length; own++) {
                sumBlock(to, base, own, cells);
            }
            step(moving, List.of());
        }
        return logStill;
    }

    /// Sums the clique's chances into other tables.
    ///
    /// @param from what all the rest of the network says, a cell a combination of all but the
    ///                own variable
    /// @param own     gets the own variable's chances, not yet brought to a sum of one
    /// @param targets zeros
    void spread(double[] from, double[] own, List<Operand> targets) {
        var sums = new double[still.length][block];
        var movingTargets = targets.stream().filter(target -> target.hasOuter).toList();
        var cells = new double[block];
        start();
        for (var base = 0; base < from.length; base += block) {
            for (var state = 0; state < still.length; state++) {
                Blocks.product(cells, still[state], from, base);
                multiplyMoving(cells, state, moving.size());
                Blocks.add(sums[state], 0, cells);
                for (var target : movingTargets) {
                    sumInto(target, state, cells);
                }
            }
            step(moving, movingTargets);
        }
        for (var state = 0; state < own.length; state++) {
            own[state] = Blocks.sum(sums[state]);
        }
        for (var target : targets) {
            if (target.hasOuter) {
                target.bringIn();
            } else {
                target.sumFrom(sums);
            }
        }
    }

    private static void sumInto(Operand target, int state, double[] cells) {
        if (target.isContiguous) {
            Blocks.add(target.cells, target.offset + state * target.strides[0], cells);
        } else if (target.hasInner) {
            Blocks.add(target.gathering(state), 0, cells);
        } else {
            target.cells[target.offset + state * target.strides[0]] += Blocks.sum(cells);
        }
    }

    private void sumBlock(double[] to, int base, int state, double[] cells) {
        var count = moving.size();
        if (count == 0) {
            Blocks.add(to, base, still[state]);
            return;
        }
        var last = moving.get(count - 1);
        if (count > 1 || !last.hasInner) {
            System.arraycopy(still[state], 0, cells, 0, block);
            multiplyMoving(cells, state, count - 1);
        }
        var product = count > 1 || !last.hasInner ? cells : still[state];
        if (last.isContiguous) {
            Blocks.addProduct(to, base, product, last.cells, last.offset + state * last.strides[0]);
        } else if (last.hasInner) {
            Blocks.addProduct(to, base, product, last.spread(state), 0);
        } else {
            Blocks.scale(cells, last.cells[last.offset + state * last.strides[0]]);
            Blocks.add(to, base, cells);
        }
    }

    private void multiplyMoving(double[] cells, int state, int count) {
        for (var i = 0; i < count; i++) {
            var operand = moving.get(i);
            if (operand.isContiguous) {
                Blocks.multiply(cells, operand.cells, operand.offset + state * operand.strides[0]);
            } else if (operand.hasInner) {
                Blocks.multiply(cells, operand.spread(state), 0);
            } else {
                Blocks.scale(cells, operand.cells[operand.offset + state * operand.strides[0]]);
            }
        }
    }

    private void start() {
        outer = new int[firstInner];
        moving.forEach(operand -> operand.offset = 0);
    }

    /// Moves the outer variables on by one, the last of them fastest.
    private void step(List<Operand> operands, List<Operand> targets) {
        for (var j = firstInner - 1; j > 0; j--) {
            outer[j]++;
            var back = outer[j] == dims[j] ? dims[j] : 0;
            for (var i = 0; i < operands.size(); i++) {
                var operand = operands.get(i);
                operand.offset += operand.strides[j] * (1 - back);
            }
            for (var i = 0; i < targets.size(); i++) {
                var target = targets.get(i);
                target.offset += target.strides[j] * (1 - back);
            }
            if (back == 0) {
                return;
            }
            outer[j] = 0;
        }
    }

    private int placeOf(int variable) {
        var place = 0;
        while (scope[place] != variable) {
            place++;
        }
        return place;
    }

    private void keepInRange() {
        var largest = 0.0;
        for (var cells : still) {
            largest = Math.max(largest, Blocks.largest(cells));
        }
        if (largest > 0 && (largest < 0x1p-100 || largest > 0x1p100)) {
            for (var cells : still) {
                Blocks.scale(cells, 1 / largest);
            }
            logStill += Math.log(largest);
        }
    }
}
