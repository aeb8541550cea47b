package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A network without what is settled beforehand: variables with one possible state are gone,
/// ties that tie nothing are weights, and variables at the rim, tied by one table only, are
/// summed out.
final class Reduction {

    final FactorNetwork network;
    final Domains domains;
    final Kinds kinds;

    /// The logarithm of the weights of all that is gone.
    final Scaled gone = new Scaled();

    /// How many live ties a variable has.
    final int[] degree;

    /// The weights of each variable with a choice: their kind, and the weights themselves
    /// where they are the variable's own.
    final int[] weightKinds;

    final double[][] ownWeights;

    /// The live ties: variables, from [#start] on, and table.
    int live;

    final int[] start;
    final int[] arity;
    final int[] scopes;
    final Kind[] tables;

    /// Variables summed out at the rim, in this order.
    final List<Rim> rim = new ArrayList<>();

    /// All live ties of a variable, combined by exclusive or: with one left, that one.
    private final int[] mixed;

    private final boolean[] atRim;
    private final int kept;

    /// The live tie that is kept.
    int keptLive = Integer.MAX_VALUE;

    /// A variable summed out of a live tie.
    static final class Rim {

        final int variable;
        final int tie;
        final int place;
        final Kind before;
        final Kind after;
        final int weightKind;
        final double[] weights;

        /// The variables that are left in the tie.
        final int[] rest;

        Rim(Reduction of, int variable, int tie, int place, Kind before, Kind after) {
            this.variable = variable;
            this.tie = tie;
            this.place = place;
            this.before = before;
            this.after = after;
            weightKind = of.weightKinds[variable];
            weights = of.weights(variable);
            rest = new int[after.arity()];
            for (var i = 0; i < rest.length; i++) {
                rest[i] = of.scopes[of.start[tie] + (i < place ? i : i + 1)];
            }
        }
    }

    /// @param kept a tie that stays as it is, with all its variables; the number of ties if
    ///     none
    Reduction(FactorNetwork network, Domains domains, int kept) {
        this.network = network;
        this.domains = domains;
        this.kept = kept;
        kinds = new Kinds(network);
        var variables = network.variables();
        degree = new int[variables];
        mixed = new int[variables];
        atRim = new boolean[variables];
        weightKinds = new int[variables];
        ownWeights = new double[variables][];
        start = new int[network.ties() + 1];
        arity = new int[network.ties()];
        scopes = new int[network.scopeStart(network.ties())];
        tables = new Kind[network.ties()];
        weigh();
        tie();
        absorbRim();
    }

    double[] weights(int variable) {
        return weightKinds[variable] == Kinds.OWN
                ? ownWeights[variable]
                : kinds.weights(weightKinds[variable]);
    }

    boolean hasKept() {
        return keptLive < live;
    }

    /// The chances of the variables that nothing ties; the others' places are empty. To be
    /// asked once: their weights go to those of all that is gone.
    double[][] chancesOfAlone() {
        var chances = new double[degree.length][];
        for (var v = 0; v < chances.length; v++) {
            if (degree[v] == 0 && !atRim[v] && !domains.isSettled(v)) {
                chances[v] = weights(v).clone();
                var sum = Blocks.sum(chances[v]);
                gone.times(sum);
                Blocks.scale(chances[v], 1 / sum);
            }
        }
        return chances;
    }

    private void weigh() {
        for (var v = 0; v < weightKinds.length; v++) {
            if (!domains.isSettled(v)) {
                weightKinds[v] = kinds.even(domains.size(v));
            }
        }
        for (var i = 0; i < network.weighings(); i++) {
            var v = network.weighedVariable(i);
            var number = network.weightNumber(i);
            if (domains.isSettled(v)) {
                gone.times(network.table(number)[domains.settledState(v)]);
            } else {
                weigh(v, number);
            }
        }
    }

    private void weigh(int variable, int table) {
        var states = network.states(variable);
        var mask = domains.masks[variable];
        var kind = weightKinds[variable];
        var both = kind == Kinds.OWN ? kind : kinds.weighing(kind, table, states, mask);
        if (both == Kinds.OWN) {
            var possible = Kind.possible(states, mask);
            var factor = new double[possible.length];
            for (var i = 0; i < factor.length; i++) {
                factor[i] = network.table(table)[possible[i]];
            }
            multiply(variable, factor);
        } else {
            weightKinds[variable] = both;
        }
    }

    private void tie() {
        var masks = new long[domains.mostTied()];
        for (var tie = 0; tie < network.ties(); tie++) {
            var from = network.scopeStart(tie);
            var to = network.scopeStart(tie + 1);
            var form = network.formNumber(tie);
            var states = network.form(form).states;
            var key = 0L;
            var bits = 0;
            var cell = 0;
            var free = 0;
            for (var i = from; i < to; i++) {
                var v = network.tied(i);
                var mask = domains.masks[v];
                masks[i - from] = mask;
                if (bits < Long.SIZE) {
                    key |= mask << bits;
                }
                bits += states[i - from];
                if (domains.isSettled(v)) {
                    cell = cell * states[i - from] + domains.settledState(v);
                } else {
                    scopes[start[live] + free++] = v;
                }
            }
            if (free == 0) {
                gone.times(network.table(network.form(form).table)[cell]);
            } else {
                arity[live] = free;
                tables[live] = kinds.of(form, key, bits <= Long.SIZE, masks);
                if (tie != kept) {
                    split(live);
                }
                enter(tie);
            }
        }
    }

    private void enter(int tie) {
        if (tie == kept) {
            keptLive = live;
        }
        if (arity[live] == 1 && tie != kept) {
            multiply(scopes[start[live]], tables[live].cells);
            gone.timesExponential(tables[live].logScale);
        } else if (arity[live] > 0) {
            for (var i = 0; i < arity[live]; i++) {
                var v = scopes[start[live] + i];
                degree[v]++;
                mixed[v] ^= live;
            }
            start[live + 1] = start[live] + arity[live];
            live++;
        }
    }

    /// Takes out of a tie the variables that it does not tie, before it is entered.
    private void split(int tie) {
        var split = kinds.split(tables[tie]);
        if (split.rest == tables[tie]) {
            return;
        }
        var left = 0;
        for (var i = 0; i < arity[tie]; i++) {
            var v = scopes[start[tie] + i];
            if (split.factors.get(i).length > 0) {
                multiply(v, split.factors.get(i));
            } else {
                scopes[start[tie] + left++] = v;
            }
        }
        arity[tie] = left;
        tables[tie] = split.rest;
    }

    private void multiply(int variable, double[] factor) {
        var product = weights(variable);
        if (weightKinds[variable] != Kinds.OWN) {
            product = product.clone();
            ownWeights[variable] = product;
            weightKinds[variable] = Kinds.OWN;
        }
        var largest = 0.0;
        for (var i = 0; i < product.length; i++) {
            product[i] *= factor[i];
            largest = Math.max(largest, product[i]);
        }
        if (largest < 0x1p-100 || largest > 0x1p100) {
            gone.times(largest);
            for (var i = 0; i < product.length; i++) {
                product[i] = largest > 0 ? product[i] / largest : 0;
            }
        }
    }

    private void absorbRim() {
        var waiting = new int[degree.length + 1];
        var count = 0;
        for (var v = 0; v < degree.length; v++) {
            if (degree[v] == 1) {
                waiting[count++] = v;
            }
        }
        while (count > 0) {
            var v = waiting[--count];
            if (degree[v] == 1 && mixed[v] != keptLive) {
                var freed = absorb(v, mixed[v]);
                if (freed >= 0) {
                    waiting[count++] = freed;
                }
            }
        }
    }

    /// Sums a variable out of its only tie.
    ///
    /// @return a variable that has one tie left by that, or a negative number
    private int absorb(int variable, int tie) {
        var from = start[tie];
        var place = 0;
        while (scopes[from + place] != variable) {
            place++;
        }
        var after = kinds.absorbing(tables[tie], place, weightKinds[variable], weights(variable));
        rim.add(new Rim(this, variable, tie, place, tables[tie], after));
        degree[variable] = 0;
        atRim[variable] = true;
        System.arraycopy(scopes, from + place + 1, scopes, from + place, arity[tie] - place - 1);
        arity[tie]--;
        tables[tie] = after;
        if (arity[tie] > 1) {
            return -1;
        }
        var last = scopes[from];
        multiply(last, after.cells);
        gone.timesExponential(after.logScale);
        arity[tie] = 0;
        mixed[last] ^= tie;
        return --degree[last] == 1 ? last : -1;
    }

    @Override
    public String toString() {
        return live + " live ties, " + rim.size() + " at the rim, " + Arrays.toString(degree);
    }
}
