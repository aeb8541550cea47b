package clutchwright.app.wording;

import clutchwright.engine.season.LayForecast.Basis;
import java.time.LocalDate;
import java.util.Locale;

/// What a lay forecast rests on, in words.
public final class LayWords {

    public static final String CAUTION =
            "Intervals between the signs are common practice. A female that strains, or is long"
                    + " overdue, is a veterinarian's.";

    private LayWords() {}

    /// @param year whose first of January is day 1
    public static String sentence(Basis basis, int year) {
        return switch (basis) {
            case Basis.Collection(var day, var known) ->
                    known
                            ? "The collection lays about day %s of the year.".formatted(number(day))
                            : "Nothing is known of when the collection lays: day %s of the year is taken."
                                    .formatted(number(day));
            case Basis.OwnClutches(var clutches, var day) ->
                    clutches == 1
                            ? "Her one clutch on record was laid about day %s."
                                    .formatted(number(day))
                            : "Her %d clutches on record were laid about day %s."
                                    .formatted(clutches, number(day));
            case Basis.FirstTime(var later) ->
                    "A first clutch is some %s days later.".formatted(number(later));
            case Basis.SeasonShift(var others, var later) ->
                    "%s this season: the season is taken to be %s days %s."
                            .formatted(
                                    others == 1
                                            ? "One other has laid"
                                            : others + " others have laid",
                                    number(Math.abs(later)),
                                    later < 0 ? "early" : "late");
            case Basis.Ovulated(var day, var laying) ->
                    "She ovulated about %s, which makes it %s."
                            .formatted(date(year, day), date(year, laying));
            case Basis.Shed(var day, var laying) ->
                    "She shed before laying on %s, which makes it %s."
                            .formatted(date(year, day), date(year, laying));
            case Basis.NotYet(var day) -> "She had not laid by %s.".formatted(date(year, day));
        };
    }

    private static String number(double value) {
        return String.format(Locale.ENGLISH, "%.1f", value).replaceAll("[.]0$", "");
    }

    private static LocalDate date(int year, double day) {
        return LocalDate.of(year, 1, 1).plusDays(Math.round(day) - 1);
    }
}
