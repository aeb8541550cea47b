package clutchwright.app.wording;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/// What is on record of an animal, in a breeder's words.
///
/// @param formats how this keeper reads days and numbers
public record AnimalWords(Formats formats) {

    /// Not sexed yet is a word of its own.
    public static String sex(Animal animal) {
        return animal.sex().map(AnimalWords::sex).orElse("not sexed");
    }

    public static String sex(Sex sex) {
        return switch (sex) {
            case FEMALE -> "female";
            case MALE -> "male";
        };
    }

    /// The sign for a sex, to stand beside the word for readers of text.
    public static String sign(Animal animal) {
        return animal.sex()
                .map(
                        sex ->
                                switch (sex) {
                                    case FEMALE -> "♀";
                                    case MALE -> "♂";
                                })
                .orElse("–");
    }

    public static String status(Status status) {
        return switch (status) {
            case KEPT -> "kept";
            case HOLD_BACK -> "hold back";
            case FOR_SALE -> "for sale";
            case SOLD -> "sold";
            case LOANED -> "loaned";
            case DEAD -> "dead";
            case UNKNOWN -> "unknown";
        };
    }

    public static String origin(Origin.How how) {
        return switch (how) {
            case HATCHED_HERE -> "hatched here";
            case BOUGHT -> "bought in";
            case WILD_CAUGHT -> "wild caught";
            case UNKNOWN -> "not recorded";
        };
    }

    /// A day, a year, or that it is not known.
    public String hatched(Hatched hatched) {
        return switch (hatched) {
            case Hatched.OnDay(var day) -> formats.date(day);
            case Hatched.InYear(var year) -> Integer.toString(year);
            case Hatched.Unknown() -> "not recorded";
        };
    }

    /// How old it is: days, weeks, months, then years; of a year alone, about how many years.
    /// Empty where nothing is known, and for a day still to come.
    public Optional<String> age(Hatched hatched, LocalDate today) {
        return switch (hatched) {
            case Hatched.OnDay(var day) -> age(day, today);
            case Hatched.InYear(var year) ->
                    today.getYear() - year < 1
                            ? Optional.empty()
                            : Optional.of(
                                    "about "
                                            + formats.count(
                                                    today.getYear() - year, "year", "years"));
            case Hatched.Unknown() -> Optional.empty();
        };
    }

    private Optional<String> age(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(day, today);
        if (days < 0) {
            return Optional.empty();
        }
        if (days < 14) {
            return Optional.of(formats.count(days, "day", "days"));
        }
        if (days < 91) {
            return Optional.of(formats.count(days / 7, "week", "weeks"));
        }
        var age = Period.between(day, today);
        return Optional.of(
                age.getYears() < 2
                        ? formats.count(age.toTotalMonths(), "month", "months")
                        : formats.count(age.getYears(), "year", "years"));
    }
}
