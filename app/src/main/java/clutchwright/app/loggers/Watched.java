package clutchwright.app.loggers;

import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.SensorAlarm;
import clutchwright.engine.incubation.SensorWatch;
import clutchwright.engine.incubation.SensorWatch.Said;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.store.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// A sensor, what it said last, and what that calls for.
///
/// @param box among whose eggs it is
/// @param latest empty where it never said anything
/// @param alarms the gravest first
public record Watched(
        Sensor sensor,
        Incubator incubator,
        Optional<Box> box,
        Optional<Reading> latest,
        List<SensorAlarm> alarms) {

    public Watched {
        alarms = List.copyOf(alarms);
    }

    public static List<Watched> all(Transaction tx) {
        return new Sensors(tx).all().stream().map(sensor -> of(tx, sensor)).toList();
    }

    public static Watched of(Transaction tx, Sensor sensor) {
        var readings = new Readings(tx);
        var now = tx.now();
        return new Watched(
                sensor,
                new Incubators(tx).theIncubator(sensor.incubator()),
                sensor.box().flatMap(new Boxes(tx)::find),
                readings.latest(sensor.id()),
                SensorWatch.of(said(readings, sensor, now), now, sensor.silentAfter()));
    }

    /// `Box B4`, or `Air of Cabinet`.
    public String where() {
        return box.map(found -> "Box %s in %s".formatted(found.label(), incubator.name()))
                .orElseGet(() -> "The air of " + incubator.name());
    }

    private static List<Said> said(Readings readings, Sensor sensor, Instant now) {
        var recent = readings.between(sensor.id(), now.minus(SensorWatch.LOOKS_BACK), now);
        // One that has been silent for days is silent all the same.
        return (recent.isEmpty() ? readings.latest(sensor.id()).stream().toList() : recent)
                .stream().map(each -> new Said(each.at(), new Celsius(each.celsius()))).toList();
    }
}
