package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;

/// What can be seen, as independent parts: the groups are the ways to take one look of each part.
///
/// No group is in two views of a pairing.
record View(List<Looks> parts) {

    /// Scenes that cannot look alike are views of their own. Those that can, because a locus that
    /// masked is itself hidden by a later one, are merged, and with them the blocks in which they
    /// differ.
    static List<View> allOf(List<Scene> scenes) {
        var views = new ArrayList<View>();
        var left = new ArrayList<>(scenes);
        while (!left.isEmpty()) {
            var alike = new ArrayList<Scene>();
            alike.add(left.removeFirst());
            for (var i = 0; i < alike.size(); i++) {
                var scene = alike.get(i);
                for (var other : List.copyOf(left)) {
                    if (scene.canLookLike(other)) {
                        alike.add(other);
                        left.remove(other);
                    }
                }
            }
            views.add(merged(alike));
        }
        return List.copyOf(views);
    }

    private static View merged(List<Scene> scenes) {
        var first = scenes.getFirst();
        if (scenes.size() == 1) {
            return new View(first.looks());
        }
        var parts = new ArrayList<Looks>();
        var differing = new ArrayList<Integer>();
        for (var b = 0; b < first.looks().size(); b++) {
            var block = b;
            var looks = first.looks().get(b);
            if (scenes.stream().allMatch(scene -> scene.looks().get(block).isVery(looks))) {
                parts.add(looks);
            } else {
                differing.add(b);
            }
        }
        parts.add(joint(scenes, differing));
        parts.sort(Comparator.comparingInt(part -> part.loci().getFirst().place));
        return new View(parts);
    }

    private static Looks joint(List<Scene> scenes, List<Integer> blocks) {
        var loci = new ArrayList<ActiveLocus>();
        var scale = BigInteger.ONE;
        for (var b : blocks) {
            loci.addAll(scenes.getFirst().looks().get(b).loci());
            scale = scale.multiply(scenes.getFirst().looks().get(b).scale());
        }
        var order = new ArrayList<>(loci);
        order.sort(Comparator.comparingInt(locus -> locus.place));
        var chances = new LinkedHashMap<List<Integer>, Fraction>();
        for (var scene : scenes) {
            var products = new LinkedHashMap<List<Integer>, Fraction>();
            products.put(List.of(), Fraction.WHOLE);
            for (var b : blocks) {
                var longer = new LinkedHashMap<List<Integer>, Fraction>();
                products.forEach(
                        (soFar, chance) -> {
                            for (var look : scene.looks().get(b).all()) {
                                var more = new ArrayList<>(soFar);
                                more.addAll(look.shown());
                                longer.put(more, chance.times(look.chance()));
                            }
                        });
                products = longer;
            }
            products.forEach(
                    (shown, chance) ->
                            chances.merge(inOrder(shown, loci, order), chance, Fraction::plus));
        }
        var all = new ArrayList<Look>();
        chances.forEach(
                (shown, chance) ->
                        all.add(new Look(shown, Look.textOf(order, shown), chance, List.of())));
        return new Looks(order, scale, all);
    }

    private static List<Integer> inOrder(
            List<Integer> shown, List<ActiveLocus> loci, List<ActiveLocus> order) {
        return order.stream().map(locus -> shown.get(loci.indexOf(locus))).toList();
    }

    View only(Asked asked) {
        return asked.isAnything()
                ? this
                : new View(parts.stream().map(part -> part.only(asked)).toList());
    }

    BigInteger count() {
        var count = BigInteger.ONE;
        for (var part : parts) {
            count = count.multiply(BigInteger.valueOf(part.all().size()));
        }
        return count;
    }

    /// Among all embryos.
    Fraction chance() {
        var chance = Fraction.WHOLE;
        for (var part : parts) {
            chance = chance.times(part.chance());
        }
        return chance;
    }
}
