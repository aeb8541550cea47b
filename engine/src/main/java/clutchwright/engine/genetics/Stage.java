package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/// The looks of loci that are neighbours in naming order, as one step of a merge.
///
/// @param place of the first of the loci
/// @param texts what each look adds to the name; may be empty
/// @param weights of each look, as a whole number of parts
/// @param sum of the weights
record Stage(
        int place,
        List<ActiveLocus> loci,
        List<List<Integer>> shown,
        List<String> texts,
        List<BigInteger> weights,
        BigInteger sum)
        implements Comparable<Stage> {

    static Stage of(Looks part) {
        var shown = new ArrayList<List<Integer>>(part.all().size());
        var texts = new ArrayList<String>(part.all().size());
        var weights = new ArrayList<BigInteger>(part.all().size());
        var sum = BigInteger.ZERO;
        for (var look : part.all()) {
            var weight = weightOf(part, look);
            shown.add(look.shown());
            texts.add(look.text());
            weights.add(weight);
            sum = sum.add(weight);
        }
        return new Stage(part.loci().getFirst().place, part.loci(), shown, texts, weights, sum);
    }

    /// A locus of which it is given what it shows.
    static Stage of(ActiveLocus locus, int shown) {
        var loci = List.of(locus);
        return new Stage(
                locus.place,
                loci,
                List.of(List.of(shown)),
                List.of(Look.textOf(loci, List.of(shown))),
                List.of(BigInteger.ONE),
                BigInteger.ONE);
    }

    static BigInteger weightOf(Looks part, Look look) {
        return look.chance().numerator().multiply(part.scale().divide(look.chance().denominator()));
    }

    int size() {
        return texts.size();
    }

    @Override
    public int compareTo(Stage that) {
        return Integer.compare(place, that.place);
    }
}
