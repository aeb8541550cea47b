package clutchwright.app.incubators;

import clutchwright.app.loggers.Watched;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SensorWords;
import clutchwright.engine.incubation.SensorAlarm;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Stretch;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/// One sensor over some days.
///
/// @param last what it said last, in one sentence
/// @param alarms as sentences, the gravest first
/// @param drawing empty where nothing was said in those days
/// @param range in words what it said in those days; blank where it said nothing
public record Trace(
        Watched watched,
        String last,
        List<String> alarms,
        boolean grave,
        Optional<Markup> drawing,
        String range) {

    private static final int PARTS = 240;

    public Trace {
        alarms = List.copyOf(alarms);
    }

    static Trace of(Transaction tx, Watched watched, int days, ZoneId zone, Formats formats) {
        var words = new SensorWords(formats, zone);
        var length = Duration.ofSeconds(Math.max(60, days * 86_400L / PARTS));
        var to = end(tx.now(), watched);
        var from = to.minus(Duration.ofDays(days));
        var course = new Readings(tx).course(watched.sensor().id(), from, to, length);
        var range = course.isEmpty() ? "" : range(course, days, formats);
        return new Trace(
                watched,
                watched.latest()
                        .map(
                                reading ->
                                        "%s at %s"
                                                .formatted(
                                                        formats.warmth(reading.celsius()),
                                                        words.at(reading.at())))
                        .orElse("No reading yet."),
                watched.alarms().stream().map(words::of).toList(),
                watched.alarms().stream()
                        .map(SensorAlarm::kind)
                        .anyMatch(SensorAlarm.Kind::isGrave),
                course.isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                TraceDrawing.draw(
                                        course,
                                        from,
                                        to,
                                        length,
                                        watched.incubator().setPointCelsius(),
                                        watched.sensor().name() + ": " + range,
                                        zone,
                                        formats)),
                range);
    }

    public String link() {
        return "/eggs/sensors/" + watched.sensor().id().value();
    }

    /// Of a sensor that is read by hand, the days before its last reading.
    private static Instant end(Instant now, Watched watched) {
        return watched.latest()
                .map(Reading::at)
                .filter(last -> !watched.sensor().source().isLive() || last.isAfter(now))
                .orElse(now);
    }

    private static String range(List<Stretch> course, int days, Formats formats) {
        return "%s to %s over %s"
                .formatted(
                        formats.warmth(
                                course.stream().mapToDouble(Stretch::low).min().orElseThrow()),
                        formats.warmth(
                                course.stream().mapToDouble(Stretch::high).max().orElseThrow()),
                        formats.count(days, "day", "days"));
    }
}
