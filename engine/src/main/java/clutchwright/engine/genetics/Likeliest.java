package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/// The likeliest groups of a pairing, without building the product of the parts.
///
/// Parts are merged from the last in naming order to the first; only the best few are kept at each
/// step. That loses nothing: of two endings, the one that comes first comes first behind every
/// beginning too, since chances multiply by the same factor and names get the same words in front.
final class Likeliest {

    private Likeliest() {}

    static List<Ranked> of(List<View> views, int limit) {
        var found = new ArrayList<Ranked>();
        for (var view : views) {
            if (!view.parts().stream().anyMatch(part -> part.all().isEmpty())) {
                // One more, since nothing at all sorts before any name, but is written `Normal`.
                found.addAll(ofView(view, limit == Integer.MAX_VALUE ? limit : limit + 1));
            }
        }
        // One merge leaves its names in order, but for the one that is written `Normal`.
        if (views.size() > 1
                || isScattered(views)
                || found.stream().anyMatch(Likeliest::isNormal)) {
            found.sort(Ranked.ORDER);
        }
        return found.subList(0, Math.min(limit, found.size()));
    }

    private static boolean isNormal(Ranked group) {
        return group.shows().isEmpty();
    }

    private static boolean isScattered(List<View> views) {
        return !views.stream()
                .allMatch(view -> view.parts().stream().allMatch(Looks::areNeighbours));
    }

    private static List<Ranked> ofView(View view, int keep) {
        var scattered = view.parts().stream().filter(part -> !part.areNeighbours()).toList();
        if (scattered.isEmpty()) {
            var stages = new ArrayList<Stage>(view.parts().size());
            view.parts().forEach(part -> stages.add(Stage.of(part)));
            return merge(stages, BigInteger.ONE, keep);
        }
        var neighbours = view.parts().stream().filter(Looks::areNeighbours).toList();
        var found = new ArrayList<Ranked>();
        fix(scattered, neighbours, List.of(), BigInteger.ONE, keep, found);
        return found;
    }

    /// A part among whose loci others stand has no place of its own in the naming order: each of
    /// its looks in turn is taken as given, word by word.
    private static void fix(
            List<Looks> scattered,
            List<Looks> neighbours,
            List<Stage> fixed,
            BigInteger weight,
            int keep,
            List<Ranked> found) {
        if (scattered.isEmpty()) {
            var stages = new ArrayList<>(fixed);
            neighbours.forEach(part -> stages.add(Stage.of(part)));
            Collections.sort(stages);
            found.addAll(merge(stages, weight, keep));
            return;
        }
        var part = scattered.getFirst();
        var rest = scattered.subList(1, scattered.size());
        for (var look : part.all()) {
            var more = new ArrayList<>(fixed);
            for (var i = 0; i < part.loci().size(); i++) {
                more.add(Stage.of(part.loci().get(i), look.shown().get(i)));
            }
            fix(rest, neighbours, more, weight.multiply(Stage.weightOf(part, look)), keep, found);
        }
    }

    private static List<Ranked> merge(List<Stage> stages, BigInteger weight, int keep) {
        var most = weight;
        for (var stage : stages) {
            most = most.multiply(stage.sum());
        }
        var words = new Words(stages);
        Ending ending = Ending.nothing(weight, most.bitLength() < Long.SIZE);
        for (var i = stages.size() - 1; i >= 0; i--) {
            ending = ending.behind(stages.get(i), words, keep);
        }
        return ending.all();
    }
}
