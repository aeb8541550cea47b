package clutchwright.app.demo;

import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/// The incubator of the invented house: all boxes stand in it, and a logger hangs in its air.
final class WarmCabinet {

    private static final String NAME = "Millrace cabinet";
    private static final double SET_CELSIUS = 31.7;
    private static final Duration EVERY = Duration.ofMinutes(20);
    private static final int DAYS = 75;
    private static final Duration DAY = Duration.ofDays(1);

    /// It is read by hand, about once a week.
    private static final Duration SILENT_AFTER = Duration.ofDays(7);

    /// How much it follows the room by day and night, and how much the door lets out.
    private static final double ROOM_KELVIN = 0.18;

    private static final double DOOR_KELVIN = 0.5;

    private final Transaction tx;

    WarmCabinet(Transaction tx) {
        this.tx = tx;
    }

    Sensor fill() {
        var cabinet = new Incubators(tx).add(NAME, SET_CELSIUS, "On the north wall.").theSaved();
        for (var box : new Boxes(tx).all()) {
            new Boxes(tx)
                    .update(new Box(box.id(), box.version(), box.label(), NAME, box.notes()))
                    .theSaved();
        }
        var sensor =
                new Sensors(tx)
                        .add(
                                new Sensor(
                                        new SensorId(0),
                                        1,
                                        "Middle shelf",
                                        cabinet.id(),
                                        Optional.empty(),
                                        Sensor.Source.NONE,
                                        Sensor.Scale.CELSIUS,
                                        0,
                                        SILENT_AFTER))
                        .theSaved();
        new Readings(tx).bring(sensor.id(), "middle-shelf.csv", readings(tx.now()));
        return sensor;
    }

    private static List<Reading> readings(Instant now) {
        var first = now.minus(Duration.ofDays(DAYS));
        long steps = Duration.ofDays(DAYS).dividedBy(EVERY);
        return IntStream.range(0, Math.toIntExact(steps))
                .mapToObj(step -> first.plus(EVERY.multipliedBy(step)))
                .map(at -> new Reading(at, celsius(at)))
                .toList();
    }

    private static double celsius(Instant at) {
        var seconds = at.getEpochSecond();
        var day = Math.sin(2 * Math.PI * seconds / DAY.toSeconds());
        var days = Math.sin(seconds / (5.3 * DAY.toSeconds()));
        // The door stands open for a moment every other day.
        var opened = seconds / EVERY.toSeconds() % 144 == 40 ? DOOR_KELVIN : 0;
        return SET_CELSIUS + ROOM_KELVIN * day + ROOM_KELVIN * days - opened;
    }
}
