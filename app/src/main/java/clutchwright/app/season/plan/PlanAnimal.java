package clutchwright.app.season.plan;

import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.season.Readiness.Finding;
import clutchwright.records.LayOutlook;
import clutchwright.records.animals.Animal;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.TreeMap;

/// An animal that may be paired this season.
///
/// @param genotype as a parent of its sex
/// @param against what speaks against pairing it now, by what is common practice
/// @param notes what is to be looked at, and does not speak against it
/// @param laying of a female, what her next clutch is expected to be
record PlanAnimal(
        Animal animal,
        ParentGenotype genotype,
        List<Finding> against,
        List<Finding> notes,
        Optional<Laying> laying) {

    PlanAnimal {
        against = List.copyOf(against);
        notes = List.copyOf(notes);
    }

    AnimalId id() {
        return animal.id();
    }

    String tag() {
        return animal.tag().value();
    }

    /// @param expected when she lays, if she is paired
    /// @param eggs chance of each number of good eggs
    /// @param clutches of hers that their mean rests on; none for the usual number
    record Laying(LayOutlook.Expected expected, SequencedMap<Integer, Double> eggs, int clutches) {

        Laying {
            eggs = java.util.Collections.unmodifiableSequencedMap(new TreeMap<>(eggs));
        }

        double lays() {
            return 1 - expected.forecast().skips();
        }

        double meanEggs() {
            return eggs.entrySet().stream()
                    .mapToDouble(each -> each.getKey() * each.getValue())
                    .sum();
        }
    }
}
