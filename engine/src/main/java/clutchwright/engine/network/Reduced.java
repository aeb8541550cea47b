package clutchwright.engine.network;

/// A network's reduction, its core, and the answers that need no core.
final class Reduced {

    final Reduction reduction;
    final Core core;

    /// The weights of each node's states.
    final double[][] weights;

    private final double[][] alone;

    Reduced(FactorNetwork network, Domains domains, int kept) {
        reduction = new Reduction(network, domains, kept);
        core = new Core(reduction);
        weights = new double[core.variables.length][];
        for (var i = 0; i < weights.length; i++) {
            weights[i] = reduction.weights(core.variables[i]);
        }
        alone = reduction.chancesOfAlone();
    }

    /// The logarithm of the weights of all that is not in the core.
    double logOfGone() {
        return reduction.gone.log();
    }

    /// All variables' chances.
    ///
    /// @param nodes each node's
    /// @param asked those of the factors that are asked for
    RimChances answer(double[][] nodes, double[][] asked) {
        var chances = alone.clone();
        for (var i = 0; i < nodes.length; i++) {
            chances[core.variables[i]] = nodes[i];
        }
        return new RimChances(reduction, core, asked, chances);
    }
}
