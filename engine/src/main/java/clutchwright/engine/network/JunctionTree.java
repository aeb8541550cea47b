package clutchwright.engine.network;

/// Chances of all variables of a network: exact where the tree is narrow enough.
///
/// What is impossible is struck out, the rim of the network is summed out, and what remains is
/// solved on a tree of cliques: once up, once down. Time and memory grow with the largest
/// clique, not with the number of variables. `docs/mathematics.md`, "Chances on a network".
public final class JunctionTree {

    private JunctionTree() {}

    /// Solves a network exactly, or says why not.
    public static Solution solve(FactorNetwork network, Limits limits) {
        return solve(network, limits, Stop.never());
    }

    /// @param stop asked between cliques
    public static Solution solve(FactorNetwork network, Limits limits, Stop stop) {
        return new ExactWay(limits).solve(network, Way.NONE, stop);
    }
}
