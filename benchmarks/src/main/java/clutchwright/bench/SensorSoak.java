package clutchwright.bench;

import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import clutchwright.records.store.Transaction;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.IntStream;

/// A million readings for a house that has an incubator: eight sensors, one reading a minute, until
/// now.
final class SensorSoak {

    private static final int SENSORS = 8;
    private static final int READINGS_EACH = 125_000;
    private static final double CELSIUS = 31.7;
    private static final double SWING_KELVIN = 0.3;
    private static final double MINUTES_A_SWING = 229;

    private SensorSoak() {}

    static void fill(Path folder) {
        try (var database = Database.open(folder, Clock.system(ZoneId.systemDefault()))) {
            for (int number = 1; number <= SENSORS; number++) {
                var name = "Soak " + number;
                var sensor = database.write(new Author("bench"), name, tx -> add(tx, name));
                database.write(
                        new Author("bench"),
                        name,
                        tx -> {
                            var now = tx.now();
                            new Readings(tx)
                                    .took(
                                            sensor,
                                            IntStream.range(0, READINGS_EACH)
                                                    .mapToObj(
                                                            minutes ->
                                                                    new Reading(
                                                                            now.minus(
                                                                                    Duration
                                                                                            .ofMinutes(
                                                                                                    minutes)),
                                                                            celsius(minutes)))
                                                    .toList());
                            return sensor;
                        });
            }
        }
    }

    private static double celsius(int minutes) {
        return CELSIUS + SWING_KELVIN * Math.sin(minutes / MINUTES_A_SWING);
    }

    private static SensorId add(Transaction tx, String name) {
        var cabinet = new Incubators(tx).all().getFirst();
        return new Sensors(tx)
                .add(
                        new Sensor(
                                new SensorId(0),
                                1,
                                name,
                                cabinet.id(),
                                Optional.empty(),
                                Sensor.Source.NONE,
                                Sensor.Scale.CELSIUS,
                                0,
                                Duration.ofDays(7)))
                .theSaved()
                .id();
    }
}
