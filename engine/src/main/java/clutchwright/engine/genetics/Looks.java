package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;

/// Every look that loci can have together in a case of masking, each once.
///
/// @param loci in naming order
/// @param scale a common denominator of the looks' chances, the same in every case
record Looks(List<ActiveLocus> loci, BigInteger scale, List<Look> all) {

    static Looks of(Block block, MaskingCase masking) {
        var kindsByShown = new LinkedHashMap<List<Integer>, List<Embryo>>();
        for (var kind : block.living) {
            var shown = shownBy(kind, block.loci, masking);
            if (!shown.isEmpty()) {
                kindsByShown.computeIfAbsent(shown, look -> new ArrayList<>()).add(kind);
            }
        }
        var all = new ArrayList<Look>(kindsByShown.size());
        kindsByShown.forEach(
                (shown, kinds) -> {
                    var chance = Fraction.NONE;
                    for (var kind : kinds) {
                        chance = chance.plus(block.chanceOf(kind));
                    }
                    all.add(new Look(shown, Look.textOf(block.loci, shown), chance, kinds));
                });
        return new Looks(block.loci, block.scale, all);
    }

    /// Empty if the embryo is not of this case.
    private static List<Integer> shownBy(Embryo kind, List<ActiveLocus> loci, MaskingCase masking) {
        if (loci.size() == 1) {
            var shown = shownAt(kind, 0, loci.getFirst(), masking);
            return shown == ANOTHER_CASE ? List.of() : List.of(shown);
        }
        var all = new ArrayList<Integer>(loci.size());
        for (var i = 0; i < loci.size(); i++) {
            var shown = shownAt(kind, i, loci.get(i), masking);
            if (shown == ANOTHER_CASE) {
                return List.of();
            }
            all.add(shown);
        }
        return all;
    }

    private static final int ANOTHER_CASE = -2;

    private static int shownAt(Embryo kind, int i, ActiveLocus locus, MaskingCase masking) {
        var form = locus.formOf(kind.fromDam().get(i), kind.fromSire().get(i));
        if (!masking.allows(locus.place, form)) {
            return ANOTHER_CASE;
        }
        return masking.hides(locus.place) ? ActiveLocus.NOTHING : locus.shownOf(form);
    }

    /// Those that are asked for.
    Looks only(Asked asked) {
        return asked.isAnything()
                ? this
                : new Looks(
                        loci,
                        scale,
                        all.stream().filter(look -> asked.admits(loci, look.shown())).toList());
    }

    Fraction chance() {
        var sum = Fraction.NONE;
        for (var look : all) {
            sum = sum.plus(look.chance());
        }
        return sum;
    }

    /// Whether it is this very object: blocks that a case of masking leaves alone share theirs.
    @SuppressWarnings("ReferenceEquality")
    boolean isVery(Looks that) {
        return this == that;
    }

    boolean shareALookWith(Looks that) {
        var here = new HashSet<List<Integer>>();
        all.forEach(look -> here.add(look.shown()));
        return that.all.stream().anyMatch(look -> here.contains(look.shown()));
    }

    /// Whether no other block's loci stand between these in naming order.
    boolean areNeighbours() {
        return loci.getLast().place - loci.getFirst().place == loci.size() - 1;
    }
}
