package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.Sex;
import java.util.List;

/// Why records of descent cannot be true.
public sealed interface PedigreeFault {

    /// The animal at which to look first.
    AnimalId animal();

    /// The same animal stands there twice.
    record ListedTwice(AnimalId animal) implements PedigreeFault {}

    record UnknownParent(AnimalId animal, AnimalId parent) implements PedigreeFault {}

    /// @param circle from the animal through its ancestors back to itself, each once
    record OwnAncestor(AnimalId animal, List<AnimalId> circle) implements PedigreeFault {

        public OwnAncestor {
            circle = List.copyOf(circle);
        }
    }

    /// A dam that is male, or a sire that is female.
    record WrongSex(AnimalId animal, AnimalId parent, Sex recorded) implements PedigreeFault {}

    record DamIsSire(AnimalId animal, AnimalId parent) implements PedigreeFault {}

    /// The parent cannot have hatched before its offspring.
    record HatchedBeforeParent(AnimalId animal, AnimalId parent) implements PedigreeFault {}
}
