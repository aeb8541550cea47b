package clutchwright.app.season;

import java.time.LocalDate;
import java.time.Month;

/// How seasons are named: by the year in which their clutches hatch.
public final class Seasons {

    private Seasons() {}

    /// Pairings are made from autumn to spring, so from September on a day belongs to the season of
    /// the next year: common practice, no source.
    public static int of(LocalDate day) {
        return day.getMonth().compareTo(Month.SEPTEMBER) >= 0 ? day.getYear() + 1 : day.getYear();
    }
}
