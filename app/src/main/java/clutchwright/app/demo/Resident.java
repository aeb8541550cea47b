package clutchwright.app.demo;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.List;

/// An animal of the invented house, with the truth about it.
///
/// @param parents none for those it began with
record Resident(AnimalId id, String tag, Truth truth, LocalDate hatched, List<AnimalId> parents) {

    Resident {
        parents = List.copyOf(parents);
    }

    boolean isRelatedTo(Resident other) {
        return parents.contains(other.id())
                || other.parents().contains(id)
                || parents.stream().anyMatch(other.parents()::contains);
    }

    boolean isAdultOn(LocalDate day) {
        var years = truth.sex() == Sex.FEMALE ? 3 : 2;
        return hatched.plusYears(years).minusMonths(2).isBefore(day);
    }
}
