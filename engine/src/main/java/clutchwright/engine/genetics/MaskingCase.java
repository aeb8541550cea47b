package clutchwright.engine.genetics;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One way in which masking can fall out: what the masking loci show, and what is hidden by it.
///
/// The cases of a pairing exclude each other, and one of them holds for every offspring.
///
/// @param hidden places of the loci that cannot be read
/// @param allowed by place, the forms that a masking locus has in this case; others are free
record MaskingCase(BitSet hidden, Map<Integer, BitSet> allowed) {

    /// Nothing masks anything.
    static final MaskingCase NONE = new MaskingCase(new BitSet(), Map.of());

    /// Loci are read in naming order: one that is hidden already hides nothing.
    static List<MaskingCase> allOf(List<ActiveLocus> loci) {
        var cases = new ArrayList<MaskingCase>();
        branch(loci, 0, NONE, cases);
        return List.copyOf(cases);
    }

    private static void branch(
            List<ActiveLocus> loci, int place, MaskingCase soFar, List<MaskingCase> cases) {
        var next = place;
        while (next < loci.size() && (soFar.hidden.get(next) || !masks(loci.get(next), loci))) {
            next++;
        }
        if (next == loci.size()) {
            cases.add(soFar);
            return;
        }
        var locus = loci.get(next);
        var formsByEffect = new LinkedHashMap<BitSet, BitSet>();
        for (var form = 0; form < locus.forms.size(); form++) {
            formsByEffect
                    .computeIfAbsent(locus.hiddenBy(form, loci), effect -> new BitSet())
                    .set(form);
        }
        for (var entry : formsByEffect.entrySet()) {
            branch(loci, next + 1, soFar.with(next, entry.getKey(), entry.getValue()), cases);
        }
    }

    private static boolean masks(ActiveLocus locus, List<ActiveLocus> loci) {
        if (locus.map.maskings().isEmpty()) {
            return false;
        }
        for (var form = 0; form < locus.forms.size(); form++) {
            if (!locus.hiddenBy(form, loci).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private MaskingCase with(int place, BitSet effect, BitSet forms) {
        var more = (BitSet) hidden.clone();
        more.or(effect);
        var narrower = new HashMap<>(allowed);
        narrower.put(place, forms);
        return new MaskingCase(more, narrower);
    }

    boolean allows(int place, int form) {
        var forms = allowed.get(place);
        return forms == null || forms.get(form);
    }

    boolean hides(int place) {
        return hidden.get(place);
    }

    /// Whether the loci are all free to be read and to have any form.
    boolean leavesAlone(List<ActiveLocus> loci) {
        for (var locus : loci) {
            if (hidden.get(locus.place) || allowed.containsKey(locus.place)) {
                return false;
            }
        }
        return true;
    }
}
