package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A factor some of whose nodes are cut: it has copies of these for itself.
final class CutFactor {

    final int number;
    final List<Copy> copies = new ArrayList<>();

    /// The chances of all its nodes' states together, as it saw them last.
    final double[] together;

    private final Core.Factor factor;
    private final CutCore cut;

    /// For each cell, the cell of what is left of the factor.
    private final int[] leftCells;

    /// For each copy and cell, the copy's state.
    private final int[][] copyStates;

    /// A cut node at a place of a factor.
    static final class Copy {

        final int node;

        /// What the factor says of the node, and what all the rest says; the largest is one.
        double[] said;

        double[] heard = new double[0];

        /// The copy's chances.
        double[] seen = new double[0];

        private Copy(int node, double[] said) {
            this.node = node;
            this.said = said;
        }

        double distance(double[] chances) {
            var most = 0.0;
            for (var s = 0; s < chances.length; s++) {
                most = Math.max(most, Math.abs(chances[s] - seen[s]));
            }
            return most;
        }
    }

    CutFactor(Core.Factor factor, CutCore cut, int number, LoopyBeliefs guesses) {
        this.factor = factor;
        this.cut = cut;
        this.number = number;
        var arity = factor.nodes.length;
        for (var place = 0; place < arity; place++) {
            if (cut.isCut[factor.nodes[place]]) {
                copies.add(new Copy(factor.nodes[place], guesses.message(number, place).clone()));
            }
        }
        var cells = copies.isEmpty() ? 0 : factor.cells.length;
        together = new double[cells];
        leftCells = new int[cells];
        copyStates = new int[copies.size()][cells];
        var state = new int[arity];
        for (var cell = 0; cell < cells; cell++) {
            var copy = 0;
            for (var place = 0; place < arity; place++) {
                if (cut.isCut[factor.nodes[place]]) {
                    copyStates[copy++][cell] = state[place];
                } else {
                    leftCells[cell] = leftCells[cell] * factor.sizes[place] + state[place];
                }
            }
            for (var i = arity - 1; i >= 0 && ++state[i] == factor.sizes[i]; i--) {
                state[i] = 0;
            }
        }
    }

    private boolean hasRest() {
        return cut.factorNumbers[number] >= 0;
    }

    private double[] rest() {
        return cut.rest.factors.get(cut.factorNumbers[number]).cells;
    }

    /// Sums the copies out by what they heard.
    void fillIn() {
        if (hasRest()) {
            var rest = rest();
            Arrays.fill(rest, 0);
            for (var cell = 0; cell < factor.cells.length; cell++) {
                rest[leftCells[cell]] += weight(cell, copies.size());
            }
        }
    }

    /// Takes in what the tree says of the nodes that are left.
    ///
    /// @param asked   the chances of the factors of what is left
    /// @param damping how much of what it said before it goes on saying
    /// @return what it adds to the logarithm of the weight of everything
    double listen(double[][] asked, double damping) {
        var around = new double[hasRest() ? asked[cut.factorNumbers[number]].length : 1];
        around[0] = 1;
        if (hasRest()) {
            System.arraycopy(asked[cut.factorNumbers[number]], 0, around, 0, around.length);
            Blocks.divide(around, rest());
        }
        var sum = 0.0;
        for (var cell = 0; cell < together.length; cell++) {
            together[cell] = weight(cell, copies.size()) * around[leftCells[cell]];
            sum += together[cell];
        }
        // A factor without a rest is no part of the tree, so its own weight is added here.
        var log = hasRest() ? 0 : Math.log(sum);
        Blocks.scale(together, 1 / sum);
        for (var i = 0; i < copies.size(); i++) {
            var copy = copies.get(i);
            log -= Math.log(agreement(copy));
            hear(i, copy, around, damping);
        }
        return log;
    }

    private static double agreement(Copy copy) {
        var sum = 0.0;
        for (var s = 0; s < copy.said.length; s++) {
            sum += copy.said[s] * copy.heard[s];
        }
        return sum;
    }

    private void hear(int number, Copy copy, double[] around, double damping) {
        var states = copyStates[number];
        var said = new double[copy.said.length];
        copy.seen = new double[said.length];
        for (var cell = 0; cell < together.length; cell++) {
            said[states[cell]] += weight(cell, number) * around[leftCells[cell]];
            copy.seen[states[cell]] += together[cell];
        }
        Blocks.scale(said, 1 / Blocks.largest(said));
        for (var s = 0; s < said.length; s++) {
            said[s] = (1 - damping) * said[s] + damping * copy.said[s];
        }
        copy.said = said;
    }

    /// A cell's weight times what all copies but one heard.
    private double weight(int cell, int without) {
        var weight = factor.cells[cell];
        for (var i = 0; i < copyStates.length; i++) {
            if (i != without) {
                weight *= copies.get(i).heard[copyStates[i][cell]];
            }
        }
        return weight;
    }
}
