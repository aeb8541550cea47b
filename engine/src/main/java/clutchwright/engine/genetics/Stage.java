package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/// The looks of loci that are neighbours in naming order, as one step of a merge.
///
/// @param place of the first of the loci
/// @param shown the visible forms of each look
/// @param texts what each look adds to the name; may be empty
/// @param weights of each look, as a whole number of parts
/// @param sum of the weights
record Stage(
        int place,
        List<List<Phenotype>> shown,
        List<String> texts,
        List<BigInteger> weights,
        BigInteger sum)
        implements Comparable<Stage> {

    static Stage of(Looks part) {
        var shown = new ArrayList<List<Phenotype>>(part.all().size());
        var texts = new ArrayList<String>(part.all().size());
        var weights = new ArrayList<BigInteger>(part.all().size());
        var sum = BigInteger.ZERO;
        for (var look : part.all()) {
            var weight = weightOf(part, look);
            shown.add(formsOf(part.loci(), look.shown()));
            texts.add(look.text());
            weights.add(weight);
            sum = sum.add(weight);
        }
        return new Stage(part.loci().getFirst().place, shown, texts, weights, sum);
    }

    /// A locus of which it is given what it shows.
    static Stage of(ActiveLocus locus, int shown) {
        var loci = List.of(locus);
        return new Stage(
                locus.place,
                List.of(formsOf(loci, List.of(shown))),
                List.of(Look.textOf(loci, List.of(shown))),
                List.of(BigInteger.ONE),
                BigInteger.ONE);
    }

    private static List<Phenotype> formsOf(List<ActiveLocus> loci, List<Integer> shown) {
        if (loci.size() == 1) {
            return shown.getFirst() == ActiveLocus.NOTHING
                    ? List.of()
                    : List.of(loci.getFirst().forms.get(shown.getFirst()));
        }
        var forms = new ArrayList<Phenotype>();
        for (var i = 0; i < loci.size(); i++) {
            if (shown.get(i) != ActiveLocus.NOTHING) {
                forms.add(loci.get(i).forms.get(shown.get(i)));
            }
        }
        return forms;
    }

    static BigInteger weightOf(Looks part, Look look) {
        return look.chance().partsOf(part.scale());
    }

    int size() {
        return texts.size();
    }

    @Override
    public int compareTo(Stage that) {
        return Integer.compare(place, that.place);
    }
}
