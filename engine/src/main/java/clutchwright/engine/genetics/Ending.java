package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/// The best ends of names so far, in order: falling weight, then name.
final class Ending {

    private final int size;

    /// Weights are here if they all fit, else in `big`.
    private final long[] weights;

    private final BigInteger[] big;

    /// Rank of the first word of each.
    private final int[] words;

    /// What the stage in front shows in each, and which ending stands behind it.
    private final int[] looks;

    private final int[] behind;
    private final @Nullable Stage stage;
    private final @Nullable Ending tail;

    private Ending(int size, boolean fits, @Nullable Stage stage, @Nullable Ending tail) {
        this.size = size;
        this.stage = stage;
        this.tail = tail;
        weights = new long[fits ? size : 0];
        big = new BigInteger[fits ? 0 : size];
        words = new int[size];
        looks = new int[size];
        behind = new int[size];
    }

    static Ending nothing(BigInteger weight, boolean fits) {
        var nothing = new Ending(1, fits, null, null);
        nothing.words[0] = Words.NO_WORD;
        if (fits) {
            nothing.weights[0] = weight.longValueExact();
        } else {
            nothing.big[0] = weight;
        }
        return nothing;
    }

    /// The best of this stage's looks with these endings behind them.
    Ending behind(Stage stage, Words ranks, int keep) {
        var merge = new Merge(stage, this, ranks);
        var most = (int) Math.min(keep, (long) stage.size() * size);
        var longer = new Ending(most, big.length == 0, stage, this);
        for (var i = 0; i < most; i++) {
            merge.takeBestInto(longer, i);
        }
        return longer;
    }

    /// One sorted queue a look, each over the same endings.
    private static final class Merge {

        private final Stage stage;
        private final Ending tail;
        private final Words ranks;
        private final boolean fits;
        private final long[] factors;
        private final int[] own;
        private final int[] heads;
        private final long[] headWeights;
        private final BigInteger[] headBig;
        private final int[] headWords;

        Merge(Stage stage, Ending tail, Words ranks) {
            this.stage = stage;
            this.tail = tail;
            this.ranks = ranks;
            fits = tail.big.length == 0;
            var count = stage.size();
            factors = new long[fits ? count : 0];
            own = new int[count];
            heads = new int[count];
            headWeights = new long[fits ? count : 0];
            headBig = new BigInteger[fits ? 0 : count];
            headWords = new int[count];
            for (var look = 0; look < count; look++) {
                own[look] = ranks.rankOf(stage.texts().get(look));
                if (fits) {
                    factors[look] = stage.weights().get(look).longValueExact();
                }
                weigh(look);
            }
        }

        private void weigh(int look) {
            var head = heads[look];
            if (head == tail.size) {
                return;
            }
            headWords[look] = own[look] == Words.NO_WORD ? tail.words[head] : own[look];
            if (fits) {
                headWeights[look] = factors[look] * tail.weights[heads[look]];
            } else {
                headBig[look] = stage.weights().get(look).multiply(tail.big[heads[look]]);
            }
        }

        void takeBestInto(Ending longer, int i) {
            var best = -1;
            for (var look = 0; look < heads.length; look++) {
                if (heads[look] < tail.size && (best < 0 || isBefore(look, best))) {
                    best = look;
                }
            }
            longer.looks[i] = best;
            longer.behind[i] = heads[best];
            longer.words[i] = headWords[best];
            if (fits) {
                longer.weights[i] = headWeights[best];
            } else {
                longer.big[i] = headBig[best];
            }
            heads[best]++;
            weigh(best);
        }

        private boolean isBefore(int look, int that) {
            var order =
                    fits
                            ? Long.compare(headWeights[that], headWeights[look])
                            : headBig[that].compareTo(headBig[look]);
            if (order != 0) {
                return order < 0;
            }
            var first = headWords[look];
            var second = headWords[that];
            if (ranks.decide(first, second)) {
                return first < second;
            }
            return Ranked.ORDER.compare(whole(look), whole(that)) < 0;
        }

        /// The name so far, in full.
        private Ranked whole(int look) {
            var name = new NameBuilder();
            name.add(stage, look);
            tail.addTo(name, heads[look]);
            return name.build(BigInteger.ONE, "");
        }
    }

    private void addTo(NameBuilder name, int i) {
        var at = i;
        for (var here = this; here != null && here.stage != null; here = here.tail) {
            name.add(here.stage, here.looks[at]);
            at = here.behind[at];
        }
    }

    List<Ranked> all() {
        var all = new ArrayList<Ranked>(size);
        var name = new NameBuilder();
        for (var i = 0; i < size; i++) {
            addTo(name, i);
            all.add(
                    name.build(
                            big.length == 0 ? BigInteger.valueOf(weights[i]) : big[i],
                            Phenotype.NORMAL));
        }
        return all;
    }
}
