package clutchwright.records.checks;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// Why something cannot be written down as given, or what must be asked first.
public sealed interface Problem {

    /// Whether the keeper may say "all the same"; else it is a fault.
    default boolean isQuestion() {
        return this instanceof UnsexedParent;
    }

    /// Something that has to be filled in is blank.
    record Blank(Field field) implements Problem {}

    /// Longer than the field takes.
    record TooLong(Field field, int length, int most) implements Problem {}

    record NotPositive(Field field, double found) implements Problem {}

    /// Outside what can be.
    record OutOfRange(Field field, long found, long least, long most) implements Problem {}

    /// Tags are the same whatever the case of their letters.
    record TagTaken(String tag, AnimalId by) implements Problem {}

    /// Another of the same kind has that name or number.
    record NameTaken(Field field, String name) implements Problem {}

    /// More than a day ahead of today; a day is left for clocks and time zones.
    record InTheFuture(Field field, LocalDate found, LocalDate today) implements Problem {}

    /// Two days in the wrong order.
    record WrongOrder(Field first, LocalDate firstDay, Field second, LocalDate secondDay)
            implements Problem {}

    /// A male as dam or a female as sire.
    record WrongSex(AnimalId parent, Parent as, Sex recorded) implements Problem {}

    /// The sex of a parent is not on record: a question, since it must be so.
    record UnsexedParent(AnimalId parent, Parent as) implements Problem {}

    /// An animal of one sex has young, a clutch or a pairing that only the other sex can have.
    record UsedAs(AnimalId animal, Parent as) implements Problem {}

    record LaidByMale(AnimalId animal) implements Problem {}

    /// @param young  when the young hatched, ISO date or year
    /// @param parent when the parent hatched, ISO date or year
    record HatchedBeforeParent(AnimalId parentAnimal, Parent as, String young, String parent)
            implements Problem {}

    /// The day lies before the animal hatched.
    record BeforeHatching(Field field, LocalDate found, AnimalId animal, String hatched)
            implements Problem {}

    /// @param path from the animal through its parents back to itself
    record OwnAncestor(List<AnimalId> path) implements Problem {

        public OwnAncestor {
            path = List.copyOf(path);
        }
    }

    /// The same animal as dam and sire.
    record DamIsSire(AnimalId animal) implements Problem {}

    /// Something named is not on record (any more).
    record Missing(Field field, long id) implements Problem {}

    /// @param uses how often, by the kind of thing that uses it: `offspring`, `pairing`,
    ///     `clutch`, `hatchling`, `animal`, `rack`, `tub`, `egg`
    record StillUsed(SequencedMap<String, Integer> uses) implements Problem {

        public StillUsed {
            uses = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(uses));
        }
    }

    /// A locus of the keeper's own that animals' gene lines mention.
    record LocusInUse(String species, String locus, List<AnimalId> animals) implements Problem {

        public LocusInUse {
            animals = List.copyOf(animals);
        }
    }

    record NoEggs() implements Problem {}

    record MoreHatchlingsThanEggs(String clutch, int eggs, int hatchlings) implements Problem {}

    /// @param fate what the egg has come to: `SLUG`, `LOST`, `HATCHED`
    record EggNotIncubating(String clutch, int egg, String fate) implements Problem {}

    /// A twin can only come out of an egg that has hatched.
    record EggNotHatched(String clutch, int egg, String fate) implements Problem {}

    /// A hatchling came out of this egg; only undoing the hatching takes that back.
    record EggHatched(String clutch, int egg) implements Problem {}

    record NotAnImage(String found) implements Problem {}

    /// @param most bytes
    record ImageTooLarge(long bytes, long most) implements Problem {}

    /// @param most pixels in all
    record TooManyPixels(int width, int height, long most) implements Problem {}

    /// A chance or pattern that could not be read.
    record Unreadable(Field field, String found, String expected) implements Problem {}
}
