package clutchwright.engine.inference;

import clutchwright.engine.network.Change;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// What changed between two states of a collection, where that is little: other records of some
/// animals, and animals that are new and have no young among those that were there.
///
/// @param before the records that were
/// @param after the records that are
/// @param old the pedigree that was
/// @param kin the pedigree that is; animals that were there keep their numbers
/// @param reweighed numbers of animals whose own records are others now
record Renewal(
        CollectionRecords before,
        CollectionRecords after,
        Kin old,
        Kin kin,
        List<Integer> reweighed) {

    /// Empty if more changed than can be told so; also where a sire is in doubt, since then
    /// every locus hangs together with every other.
    static Optional<Renewal> between(
            CollectionRecords before, CollectionRecords after, Kin old, Assumptions assumptions) {
        if (!before.model().equals(after.model()) || !old.questions.isEmpty()) {
            return Optional.empty();
        }
        var same = before.pedigree().equals(after.pedigree());
        var kin = same ? old : new Kin(after.pedigree(), after.model().sexes(), assumptions);
        if (!kin.questions.isEmpty() || !(same || begins(kin, old))) {
            return Optional.empty();
        }
        var reweighed = new ArrayList<Integer>();
        for (var animal = 0; animal < old.animals.size(); animal++) {
            var id = old.animals.get(animal);
            if (!before.of(id).equals(after.of(id))) {
                if (assumptions.claimOfHalfKnown()
                        && isHalfKnown(old, animal)
                        && !before.of(id).claims().equals(after.of(id).claims())) {
                    // Its claim stands in its tie to the one parent, which no reweighing changes.
                    return Optional.empty();
                }
                reweighed.add(animal);
            }
        }
        return Optional.of(new Renewal(before, after, old, kin, List.copyOf(reweighed)));
    }

    private static boolean isHalfKnown(Kin kin, int animal) {
        return !kin.founder[animal]
                && !kin.withoutSire[animal]
                && (kin.dam[animal] == Kin.NONE || kin.sire[animal] == Kin.NONE);
    }

    private static boolean begins(Kin kin, Kin old) {
        var size = old.animals.size();
        return kin.animals.size() >= size
                && kin.animals.subList(0, size).equals(old.animals)
                && Arrays.equals(old.builds, 0, size, kin.builds, 0, size)
                && Arrays.equals(old.dam, 0, size, kin.dam, 0, size)
                && Arrays.equals(old.sire, 0, size, kin.sire, 0, size)
                && Arrays.equals(old.founder, 0, size, kin.founder, 0, size)
                && Arrays.equals(old.withoutSire, 0, size, kin.withoutSire, 0, size);
    }

    /// As changes of a locus's network.
    Change[] changes(LocusNetwork network) {
        var changes = new ArrayList<Change>();
        for (var animal : reweighed) {
            var were = network.weightsOf(before, old, animal);
            var are = network.weightsOf(after, kin, animal);
            if (!Arrays.equals(were, are)) {
                changes.add(Change.reweigh(animal, are));
            }
        }
        for (var animal = old.animals.size(); animal < kin.animals.size(); animal++) {
            changes.add(network.newcomer(after, kin, animal));
        }
        return changes.toArray(Change[]::new);
    }
}
