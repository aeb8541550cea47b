package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// All kinds of tables and of weights that a network is made of once the impossible is struck
/// out.
final class Kinds {

    /// Weights that only one variable has; nothing about them is remembered.
    static final int OWN = -1;

    private static final Split NOT_YET =
            new Split(List.of(), new Kind(-1, new int[0], new double[0], 0));

    private final FactorNetwork network;
    private final List<Kind> kinds = new ArrayList<>();
    private final List<double[]> weights = new ArrayList<>();
    private final Memo byForm = new Memo();
    private final Memo byAbsorption = new Memo();
    private final Memo byWeights = new Memo();
    private final List<Split> splits = new ArrayList<>();

    Kinds(FactorNetwork network) {
        this.network = network;
    }

    /// A table as a product of factors of some of its variables and of a table of the others.
    static final class Split {

        /// A factor a place, empty where the variable stays tied.
        final List<double[]> factors;

        final Kind rest;

        Split(List<double[]> factors, Kind rest) {
            this.factors = factors;
            this.rest = rest;
        }
    }

    /// @param key the masks side by side, if they fit, else unused
    Kind of(int form, long key, boolean fits, long[] masks) {
        var place = fits ? byForm.get(key, form) : Memo.ABSENT;
        if (place != Memo.ABSENT) {
            return kinds.get(place);
        }
        var f = network.form(form);
        var kind = Kind.of(kinds.size(), network.table(f.table), f.states, masks, f.states.length);
        add(kind);
        if (fits) {
            byForm.put(key, form, kind.number);
        }
        return kind;
    }

    Kind absorbing(Kind kind, int place, int weightKind, double[] weights) {
        if (weightKind == OWN) {
            return add(kind.absorbing(place, weights, kinds.size()));
        }
        var key = (long) kind.number << 8 | place;
        var known = byAbsorption.get(key, weightKind);
        if (known != Memo.ABSENT) {
            return kinds.get(known);
        }
        var absorbed = add(kind.absorbing(place, weights, kinds.size()));
        byAbsorption.put(key, weightKind, absorbed.number);
        return absorbed;
    }

    Split split(Kind kind) {
        var known = splits.get(kind.number);
        if (known == NOT_YET) {
            known = splitAnew(kind);
            splits.set(kind.number, known);
        }
        return known;
    }

    /// The kind of weights that is one for each state.
    int even(int states) {
        var known = byWeights.get(-1, states);
        if (known == Memo.ABSENT) {
            var ones = new double[states];
            Arrays.fill(ones, 1);
            known = weights.size();
            weights.add(ones);
            byWeights.put(-1, states, known);
        }
        return known;
    }

    /// These weights and, multiplied, those of one table where its states are possible.
    ///
    /// @return [#OWN] if the product would leave the range of numbers
    int weighing(int weightKind, int table, int states, long mask) {
        var key = (long) weightKind << 32 | table;
        var known = byWeights.get(key, mask);
        if (known == Memo.ABSENT) {
            var product = weights.get(weightKind).clone();
            var possible = Kind.possible(states, mask);
            for (var i = 0; i < product.length; i++) {
                product[i] *= network.table(table)[possible[i]];
            }
            var largest = Arrays.stream(product).max().orElse(0);
            known = OWN;
            if (largest > 0x1p-100 && largest < 0x1p100) {
                known = weights.size();
                weights.add(product);
            }
            byWeights.put(key, mask, known);
        }
        return known;
    }

    double[] weights(int weightKind) {
        return weights.get(weightKind);
    }

    private Kind add(Kind kind) {
        kinds.add(kind);
        splits.add(NOT_YET);
        return kind;
    }

    private Split splitAnew(Kind kind) {
        List<double[]> factors = new ArrayList<>();
        var rest = kind;
        var removed = 0;
        for (var place = 0; place < kind.arity(); place++) {
            var factor = rest.arity() > 1 ? rest.factorOf(place - removed) : new double[0];
            factors.add(factor);
            if (factor.length > 0) {
                rest = add(rest.without(place - removed, factor, kinds.size()));
                removed++;
            }
        }
        return new Split(factors, rest);
    }
}
