package clutchwright.app.today;

import clutchwright.app.loggers.Watched;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SensorWords;
import clutchwright.engine.incubation.SensorAlarm;
import clutchwright.records.clutches.Box;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/// What incubators and boxes ask for: too warm, too cold, changing too fast, or a silent sensor.
record DueWarmth(Found found, Formats formats, ZoneId zone) {

    List<Due> all() {
        return found.sensors().stream()
                .flatMap(
                        watched ->
                                watched.alarms().stream()
                                        .filter(alarm -> !isOutOfSeason(alarm))
                                        .map(alarm -> due(watched, alarm)))
                .toList();
    }

    /// Between the seasons loggers are put away, and nobody need be told so every day.
    private boolean isOutOfSeason(SensorAlarm alarm) {
        var on = LocalDate.ofInstant(alarm.since(), zone);
        return alarm.kind() == SensorAlarm.Kind.SILENT
                && found.pippings().isEmpty()
                && on.isBefore(found.today().minusDays(RulesOfThumb.WEEK));
    }

    private Due due(Watched watched, SensorAlarm alarm) {
        var words = new SensorWords(formats, zone);
        return Due.of(
                        Due.Kind.WARMTH,
                        LocalDate.ofInstant(alarm.since(), zone),
                        found.today(),
                        "/eggs/sensors/" + watched.sensor().id().value(),
                        watched.where(),
                        words.of(alarm),
                        "sensor %s; %s".formatted(watched.sensor().name(), words.basis(alarm)),
                        alarm.kind().isGrave())
                .at(
                        new Spot.InIncubator(
                                watched.incubator().name(),
                                watched.box().map(Box::label).orElse("")));
    }
}
