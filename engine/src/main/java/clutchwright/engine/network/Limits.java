package clutchwright.engine.network;

/// How much work and memory one network may take.
///
/// @param cells      in the largest table of one clique; a message between two cliques, which
///                   is smaller, is what is held in memory, eight bytes a cell
/// @param operations cells visited in all cliques together, once up and once down the tree
public record Limits(long cells, long operations) {

    public Limits {
        if (cells < 1 || operations < 1) {
            throw new IllegalArgumentException(cells + " cells, " + operations + " operations");
        }
    }

    /// 2^26 cells, half a gigabyte, and 2^30 operations, some ten seconds.
    public static Limits standard() {
        return new Limits(1L << 26, 1L << 30);
    }

    /// 2^22 cells and 2^24 operations, some hundredths of a second: for whoever waits for
    /// sixty networks.
    public static Limits brisk() {
        return new Limits(1L << 22, 1L << 24);
    }
}
