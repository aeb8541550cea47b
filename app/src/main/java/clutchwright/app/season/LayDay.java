package clutchwright.app.season;

import clutchwright.app.wording.LayWords;
import clutchwright.engine.probability.Forecast;
import clutchwright.engine.season.LayForecast;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/// A lay forecast as it is printed. Day 1 is the first of January of the season's year.
///
/// @param mean the day nearest to the mean
/// @param basis what it rests on, as sentences
record LayDay(
        double meanDay, double sdDays, LocalDate mean, List<Range> ranges, List<String> basis) {

    LayDay {
        ranges = List.copyOf(ranges);
        basis = List.copyOf(basis);
    }

    /// @param level the chance that she lays from the one day to the other
    record Range(double level, LocalDate from, LocalDate to) {}

    /// @param year whose first of January is day 1
    static LayDay of(int year, LayForecast found) {
        var laid = found.laid();
        return new LayDay(
                laid.mean(),
                laid.sdDays(),
                date(year, laid.mean()),
                DoubleStream.of(0.5, 0.9).mapToObj(level -> range(year, laid, level)).toList(),
                found.basis().stream().map(one -> LayWords.sentence(one, year)).toList());
    }

    private static Range range(int year, Forecast laid, double level) {
        return new Range(
                level,
                date(year, laid.quantile((1 - level) / 2)),
                date(year, laid.quantile((1 + level) / 2)));
    }

    static LocalDate date(int year, double day) {
        return LocalDate.of(year, 1, 1).plusDays(Math.round(day) - 1);
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
