package clutchwright.engine.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A network after some changes, built anew.
final class Changed {

    private Changed() {}

    static FactorNetwork of(FactorNetwork network, Change... changes) {
        return builder(network, changes).build();
    }

    static FactorNetwork.Builder builder(FactorNetwork network, Change... changes) {
        var builder = new FactorNetwork.Builder();
        for (var v = 0; v < network.variables(); v++) {
            builder.variable(network.states(v));
        }
        for (var tie = 0; tie < network.ties(); tie++) {
            builder.tie(
                    network.table(network.form(network.formNumber(tie)).table), network.scope(tie));
        }
        List<List<double[]>> weights = new ArrayList<>();
        for (var v = 0; v < network.variables(); v++) {
            weights.add(new ArrayList<>());
        }
        for (var i = 0; i < network.weighings(); i++) {
            weights.get(network.weighedVariable(i)).add(network.table(network.weightNumber(i)));
        }
        for (var change : changes) {
            switch (change) {
                case Change.Weigh more -> weights.get(more.variable).add(more.weights);
                case Change.Reweigh other -> {
                    weights.get(other.variable).clear();
                    weights.get(other.variable).add(other.weights);
                }
                case Change.Leaf leaf -> {
                    var scope = Arrays.copyOf(leaf.tied, leaf.tied.length + 1);
                    scope[leaf.tied.length] = builder.variable(leaf.weights.length);
                    builder.tie(leaf.table, scope);
                    weights.add(new ArrayList<>(List.of(leaf.weights)));
                }
            }
        }
        for (var v = 0; v < weights.size(); v++) {
            for (var table : weights.get(v)) {
                builder.weigh(v, table);
            }
        }
        return builder;
    }
}
