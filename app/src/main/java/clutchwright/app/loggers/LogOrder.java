package clutchwright.app.loggers;

import clutchwright.app.loggers.TemperatureLog.Line;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// A logger's lines in the order of their times, each time once.
sealed interface LogOrder {

    /// When clocks go back an hour is read twice; more than that is no change of the clocks.
    Duration MOST_BACK = Duration.ofHours(3);

    record InOrder(List<Line> lines) implements LogOrder {

        public InOrder {
            lines = List.copyOf(lines);
        }
    }

    /// @param fault as a sentence
    record Backwards(String fault) implements LogOrder {}

    /// @param notes to which is added what was put right
    static LogOrder of(List<Line> written, List<String> notes) {
        if (written.isEmpty()) {
            return new Backwards("no line has a temperature that a room can have.");
        }
        var lines = isNewestFirst(written) ? written.reversed() : written;
        for (var i = 1; i < lines.size(); i++) {
            var back = Duration.between(lines.get(i).clock(), lines.get(i - 1).clock());
            if (back.compareTo(MOST_BACK) > 0) {
                return new Backwards(
                        "line %d: the clock goes back from %s to %s; expected lines in the order of their times. Cut the file there, or put its times right."
                                .formatted(
                                        lines.get(i).row(),
                                        lines.get(i - 1).clock(),
                                        lines.get(i).clock()));
            }
            if (!back.isNegative() && !back.isZero()) {
                notes.add(
                        "line %d: the clock goes back by %d minutes, as when clocks change."
                                .formatted(lines.get(i).row(), back.toMinutes()));
            }
        }
        var sorted = new ArrayList<>(lines);
        sorted.sort(Comparator.comparing(Line::clock));
        return new InOrder(once(sorted, notes));
    }

    /// Newest on top from first to last, as some loggers write.
    private static boolean isNewestFirst(List<Line> lines) {
        for (var i = 1; i < lines.size(); i++) {
            if (lines.get(i).clock().isAfter(lines.get(i - 1).clock())) {
                return false;
            }
        }
        return lines.size() > 1 && lines.getLast().clock().isBefore(lines.getFirst().clock());
    }

    /// Of two readings at one time the mean counts.
    private static List<Line> once(List<Line> sorted, List<String> notes) {
        var once = new ArrayList<Line>();
        var twice = 0;
        var at = 0;
        while (at < sorted.size()) {
            var first = sorted.get(at);
            var sum = 0.0;
            var count = 0;
            while (at < sorted.size() && sorted.get(at).clock().equals(first.clock())) {
                sum += sorted.get(at).value();
                count++;
                at++;
            }
            twice += count - 1;
            once.add(new Line(first.row(), first.clock(), first.local(), sum / count));
        }
        if (twice > 0) {
            notes.add("%d readings have the time of another; their mean counts.".formatted(twice));
        }
        return once;
    }
}
