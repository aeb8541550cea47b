package clutchwright.engine.network;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/// Which nodes to cut so that the rest is no wider than wanted: those nearest to certain, and
/// no more of them than needed.
final class Cutting {

    private final Core core;
    private final LoopyBeliefs guesses;
    private final int[] byDoubt;

    Cutting(Core core, LoopyBeliefs guesses) {
        this.core = core;
        this.guesses = guesses;
        byDoubt =
                IntStream.range(0, core.sizes.length)
                        .boxed()
                        .sorted(Comparator.comparingDouble(guesses::doubt))
                        .mapToInt(Integer::intValue)
                        .toArray();
    }

    /// How many must be cut.
    ///
    /// @param cells       of all cliques together
    /// @param cliqueCells of one clique
    int enoughFor(double cells, long cliqueCells) {
        var enough = byDoubt.length;
        var tooFew = -1;
        // A few nodes more or less do not matter.
        while (enough - tooFew > 1 + byDoubt.length / 64) {
            var middle = (enough + tooFew) >>> 1;
            if (isNarrow(first(middle), cells, Math.log((double) cliqueCells) / Math.log(2))) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }

    /// The nodes nearest to certain.
    boolean[] first(int count) {
        var isCut = new boolean[byDoubt.length];
        Arrays.stream(byDoubt, 0, Math.min(count, byDoubt.length))
                .forEach(node -> isCut[node] = true);
        return isCut;
    }

    /// The doubt about the most doubtful of the first.
    double largestDoubt(int count) {
        return count == 0 ? 0 : guesses.doubt(byDoubt[count - 1]);
    }

    private boolean isNarrow(boolean[] isCut, double cells, double width) {
        var sum = 0.0;
        for (var component : Component.of(core, isCut)) {
            component.look(cells - sum);
            if (component.width() > width) {
                return false;
            }
            sum += component.cost();
        }
        return sum <= cells;
    }
}
