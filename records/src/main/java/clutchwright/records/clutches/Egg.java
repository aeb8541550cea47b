package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import java.util.List;
import java.util.Optional;

/// One egg of a clutch.
///
/// @param number    its place in the count, from one
/// @param box       where it is, or was last
/// @param lies      which way up, and whether that is marked, in the keeper's words; may be blank
/// @param candlings in the order in which they were done
/// @param weights   in the order in which they were taken
public record Egg(
        EggId id,
        long version,
        ClutchId clutch,
        int number,
        Optional<BoxId> box,
        Fate fate,
        String lies,
        List<Candling> candlings,
        List<EggWeighing> weights) {

    public Egg {
        candlings = List.copyOf(candlings);
        weights = List.copyOf(weights);
    }

    /// None, one, or twins.
    public List<AnimalId> hatchlings() {
        return fate instanceof Fate.Hatched(_, var hatchlings) ? hatchlings : List.of();
    }
}
