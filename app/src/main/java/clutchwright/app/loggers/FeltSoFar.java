package clutchwright.app.loggers;

import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Development;
import clutchwright.engine.incubation.Development.Reading;
import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.incubators.IncubatorId;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.incubators.Stretch;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// What a clutch's eggs have felt since they were laid, by a sensor of theirs.
///
/// @param sensor its name
/// @param amongEggs whether it is among the eggs; else it hangs in their incubator's air
public record FeltSoFar(String sensor, boolean amongEggs, Development development) {

    /// The rate follows temperature smoothly: an hour's mean stands for the hour.
    private static final Duration HOUR = Duration.ofHours(1);

    private static final double SECONDS_OF_DAY = 86_400;

    /// By the sensor of the incubator's air if there is one, since days to hatching are known by
    /// what incubators are set to; else by one among the eggs.
    public static Optional<FeltSoFar> of(
            Transaction tx, Clutch clutch, List<Box> boxes, ZoneId zone) {
        return Optional.ofNullable(of(tx, List.of(clutch), boxes, zone).get(clutch.id()));
    }

    /// Of those clutches of which a sensor says it. A sensor of several clutches is read once.
    public static Map<ClutchId, FeltSoFar> of(
            Transaction tx, List<Clutch> clutches, List<Box> boxes, ZoneId zone) {
        var first = clutches.stream().map(Clutch::laid).min(Comparator.naturalOrder());
        if (first.isEmpty()) {
            return Map.of();
        }
        var begin = first.get().atStartOfDay(zone).toInstant();
        var incubators = new HashMap<String, IncubatorId>();
        for (var box : boxes) {
            new Incubators(tx)
                    .named(box.incubator())
                    .ifPresent(found -> incubators.put(box.incubator(), found.id()));
        }
        var sensors = new Sensors(tx).all();
        var courses = new HashMap<SensorId, List<Stretch>>();
        var felt = new LinkedHashMap<ClutchId, FeltSoFar>();
        for (var clutch : clutches) {
            theirs(clutch, boxes, sensors, incubators)
                    .flatMap(
                            sensor ->
                                    by(
                                            sensor,
                                            courses.computeIfAbsent(
                                                    sensor.id(),
                                                    id ->
                                                            new Readings(tx)
                                                                    .course(
                                                                            id, begin, tx.now(),
                                                                            HOUR)),
                                            clutch.laid().atStartOfDay(zone).toInstant())
                                            .stream())
                    .findFirst()
                    .ifPresent(found -> felt.put(clutch.id(), found));
        }
        return felt;
    }

    /// The sensors that speak for a clutch, the best first.
    private static Stream<Sensor> theirs(
            Clutch clutch,
            List<Box> boxes,
            List<Sensor> sensors,
            Map<String, IncubatorId> incubators) {
        var stand =
                clutch.incubating().stream()
                        .flatMap(egg -> egg.box().stream())
                        .collect(Collectors.toSet());
        var around =
                boxes.stream()
                        .filter(box -> stand.contains(box.id()))
                        .map(box -> Optional.ofNullable(incubators.get(box.incubator())))
                        .flatMap(Optional::stream)
                        .collect(Collectors.toSet());
        return sensors.stream()
                .filter(
                        sensor ->
                                sensor.box()
                                        .map(stand::contains)
                                        .orElseGet(() -> around.contains(sensor.incubator())))
                .sorted(Comparator.comparing(sensor -> sensor.box().isPresent()));
    }

    private static Optional<FeltSoFar> by(Sensor sensor, List<Stretch> read, Instant begin) {
        var course =
                read.stream().filter(stretch -> stretch.from().plus(HOUR).isAfter(begin)).toList();
        return course.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new FeltSoFar(
                                sensor.name(),
                                sensor.box().isPresent(),
                                Development.of(
                                        course.stream()
                                                .map(stretch -> reading(stretch, begin))
                                                .toList(),
                                        DevelopmentRate.standard())));
    }

    /// At the middle of the hour; the first may begin before the day does.
    private static Reading reading(Stretch stretch, Instant begin) {
        var middle = stretch.from().plus(HOUR.dividedBy(2));
        return new Reading(
                Math.max(0, Duration.between(begin, middle).toSeconds() / SECONDS_OF_DAY),
                new Celsius(stretch.mean()));
    }
}
