package clutchwright.records.animals;

import java.time.LocalDate;
import java.util.Optional;

/// How an animal came into the collection.
///
/// @param from     of whom or from where; blank where there is nothing to say
/// @param acquired the day it came
public record Origin(How how, String from, Optional<LocalDate> acquired) {

    /// In which way.
    public enum How {
        HATCHED_HERE,
        BOUGHT,
        WILD_CAUGHT,
        UNKNOWN
    }

    public Origin {
        from = from.strip();
    }

    public static Origin unknown() {
        return new Origin(How.UNKNOWN, "", Optional.empty());
    }

    public static Origin hatchedHere() {
        return new Origin(How.HATCHED_HERE, "", Optional.empty());
    }
}
