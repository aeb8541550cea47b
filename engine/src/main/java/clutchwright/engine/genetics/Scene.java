package clutchwright.engine.genetics;

import java.util.ArrayList;
import java.util.List;

/// A case of masking with all that can be seen in it, block by block.
record Scene(MaskingCase masking, List<Looks> looks) {

    /// Those that can happen among the living.
    static List<Scene> allOf(List<Block> blocks, List<MaskingCase> cases) {
        var plain = new ArrayList<Looks>(blocks.size());
        for (var block : blocks) {
            plain.add(Looks.of(block, MaskingCase.NONE));
        }
        var scenes = new ArrayList<Scene>(cases.size());
        for (var masking : cases) {
            var looks = new ArrayList<Looks>(blocks.size());
            for (var b = 0; b < blocks.size(); b++) {
                var block = blocks.get(b);
                // The very same object where masking changes nothing: that is how it is told.
                looks.add(
                        masking.leavesAlone(block.loci) ? plain.get(b) : Looks.of(block, masking));
            }
            if (looks.stream().noneMatch(here -> here.all().isEmpty())) {
                scenes.add(new Scene(masking, looks));
            }
        }
        return List.copyOf(scenes);
    }

    /// Whether some offspring of this case looks like some offspring of that.
    boolean canLookLike(Scene that) {
        for (var b = 0; b < looks.size(); b++) {
            if (!looks.get(b).isVery(that.looks.get(b))
                    && !looks.get(b).shareALookWith(that.looks.get(b))) {
                return false;
            }
        }
        return true;
    }
}
