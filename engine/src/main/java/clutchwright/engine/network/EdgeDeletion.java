package clutchwright.engine.network;

/// Chances on a network that is too wide for one tree: exact where cuts do not reach, else
/// near.
///
/// Variables that are nearly certain are cut apart into copies, each of which is told what the
/// others' parts of the network say of it; what is left is solved exactly, and that again
/// until the copies agree. Every figure comes with an estimate of its error.
/// `docs/mathematics.md`, "Chances on a network".
public final class EdgeDeletion {

    private EdgeDeletion() {}

    /// @param limits of the tree that is left; the more they allow, the less is cut
    /// @return with [Quality.Exact] where nothing had to be cut, else with [Quality.Estimated]
    public static Solution solve(FactorNetwork network, Limits limits, Stop stop) {
        return new EstimateWay(limits).solve(network, Way.NONE, stop);
    }
}
