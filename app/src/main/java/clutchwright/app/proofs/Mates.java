package clutchwright.app.proofs;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;

/// Which animals a test mating may be thought of with.
final class Mates {

    /// In the house, and meant to stay.
    static final Set<Status> AT_HAND = EnumSet.of(Status.KEPT, Status.HOLD_BACK);

    /// Common practice, no source: males are tried from one year on, females from two. What a
    /// female weighs counts more than her age.
    static final int YEARS_OF_A_MALE = 1;

    static final int YEARS_OF_A_FEMALE = 2;

    private Mates() {}

    /// Whether the animal is in the house, sexed and not known to be too young.
    static boolean isReady(Animal animal, LocalDate today) {
        return AT_HAND.contains(animal.status())
                && animal.sex().isPresent()
                && !isTooYoung(animal, today);
    }

    /// An animal of which no day or year is on record counts as grown.
    static boolean isTooYoung(Animal animal, LocalDate today) {
        var years =
                animal.sex().filter(Sex.FEMALE::equals).isPresent()
                        ? YEARS_OF_A_FEMALE
                        : YEARS_OF_A_MALE;
        return animal.hatched()
                .span()
                .filter(span -> span.earliest().plusYears(years).isAfter(today))
                .isPresent();
    }
}
