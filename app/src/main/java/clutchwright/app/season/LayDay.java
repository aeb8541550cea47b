package clutchwright.app.season;

import clutchwright.app.wording.LayWords;
import clutchwright.engine.probability.Forecast;
import clutchwright.engine.season.LayForecast;
import clutchwright.engine.season.SeasonYear;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/// A lay forecast as it is printed. Day 1 is the first of January of the season's year.
///
/// @param mean the day nearest to the mean
/// @param skipChance the chance that she does not lay this season
/// @param basis what it rests on, as sentences
record LayDay(
        double meanDay,
        double sdDays,
        LocalDate mean,
        List<Range> ranges,
        double skipChance,
        List<String> basis) {

    LayDay {
        ranges = List.copyOf(ranges);
        basis = List.copyOf(basis);
    }

    /// @param level the chance that she lays from the one day to the other
    record Range(double level, LocalDate from, LocalDate to) {}

    static LayDay of(SeasonYear year, LayForecast found) {
        var laid = found.laid();
        return new LayDay(
                laid.mean(),
                laid.sdDays(),
                year.date(laid.mean()),
                DoubleStream.of(0.5, 0.9).mapToObj(level -> range(year, laid, level)).toList(),
                found.skips(),
                found.basis().stream()
                        .map(one -> LayWords.sentence(one, year, LocalDate::toString))
                        .toList());
    }

    private static Range range(SeasonYear year, Forecast laid, double level) {
        return new Range(
                level,
                year.date(laid.quantile((1 - level) / 2)),
                year.date(laid.quantile((1 + level) / 2)));
    }

    List<String> lines() {
        var lines = new ArrayList<String>();
        lines.add(
                "She is expected to lay about %s (give or take %.0f days)."
                        .formatted(mean, sdDays));
        for (var range : ranges) {
            lines.add("%.0f %%: %s to %s".formatted(100 * range.level(), range.from(), range.to()));
        }
        lines.add("");
        lines.addAll(basis);
        lines.add("");
        lines.add(LayWords.CAUTION);
        return lines;
    }
}
