package clutchwright.app.wording;

import clutchwright.engine.season.CollectionMean;
import clutchwright.engine.season.LayForecast;
import clutchwright.engine.season.LayForecast.Basis;
import clutchwright.engine.season.SeasonYear;
import clutchwright.records.LayOutlook;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Function;

/// What a lay forecast rests on, in words.
public final class LayWords {

    public static final String CAUTION =
            "Intervals between the signs are common practice. A female that strains, or is long"
                    + " overdue, is a veterinarian's.";

    /// So long after the last likely day, before she was late, a female is a veterinarian's: common
    /// practice, no source.
    private static final int OVERDUE_DAYS = 10;

    /// From this chance on it is said that she may not lay at all.
    private static final double SKIPS_FROM = 0.5;

    private LayWords() {}

    /// When she is expected to lay, in one sentence.
    public static String expected(LayOutlook.Expected expected, Formats formats) {
        return "Expected to lay about %s; 9 in 10 between %s and %s."
                .formatted(
                        formats.dayOfYear(expected.about()),
                        formats.dayOfYear(expected.by(0.05)),
                        formats.dayOfYear(expected.by(0.95)));
    }

    /// That she may not lay this season; blank where that is not likely.
    public static String skips(LayForecast forecast, Formats formats) {
        return forecast.skips() < SKIPS_FROM
                ? ""
                : "Or not at all this season: %s %%, since her days have gone by without a sign."
                        .formatted(formats.decimals(100 * forecast.skips(), 0));
    }

    /// That she is long overdue after a sign; blank where she is not.
    public static String late(LayOutlook.Expected expected, LocalDate today, Formats formats) {
        var last = expected.lastBefore();
        return expected.forecast().skips() > 0 || !today.isAfter(last.plusDays(OVERDUE_DAYS))
                ? ""
                : "She was to lay by %s. A reptile veterinarian should see her now, at once if she strains or is swollen."
                        .formatted(formats.dayOfYear(last));
    }

    /// @param format how days are written
    public static String sentence(
            Basis basis, SeasonYear year, Function<LocalDate, String> format) {
        return switch (basis) {
            case Basis.Collection(var day, var origin) -> collection(origin, number(day));
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
                            .formatted(
                                    format.apply(year.date(day)), format.apply(year.date(laying)));
            case Basis.Shed(var day, var laying) ->
                    "She shed before laying on %s, which makes it %s."
                            .formatted(
                                    format.apply(year.date(day)), format.apply(year.date(laying)));
            case Basis.Together(var day, var soonest) ->
                    "She is with a male since %s and nothing was seen yet, so hardly before %s."
                            .formatted(
                                    format.apply(year.date(day)), format.apply(year.date(soonest)));
            case Basis.NotYet(var day) ->
                    "She had not laid by %s.".formatted(format.apply(year.date(day)));
        };
    }

    private static String collection(CollectionMean.Origin origin, String day) {
        return switch (origin) {
            case CollectionMean.Origin.Given _ ->
                    "The collection lays about day %s of the year.".formatted(day);
            case CollectionMean.Origin.Assumed _ ->
                    "Nothing is known of when the collection lays: day %s of the year is taken."
                            .formatted(day);
            case CollectionMean.Origin.Clutches(var number) ->
                    "Your other females lay about day %s of the year (%d %s on record)."
                            .formatted(day, number, number == 1 ? "clutch" : "clutches");
        };
    }

    private static String number(double value) {
        return String.format(Locale.ENGLISH, "%.1f", value).replaceAll("[.]0$", "");
    }
}
