package clutchwright.app.eggs;

import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Development;
import clutchwright.engine.incubation.Development.Reading;
import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.incubators.Stretch;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
    static Optional<FeltSoFar> of(Transaction tx, Clutch clutch, List<Box> boxes, ZoneId zone) {
        var begin = clutch.laid().atStartOfDay(zone).toInstant();
        var theirs =
                clutch.incubating().stream()
                        .flatMap(egg -> egg.box().stream())
                        .collect(Collectors.toSet());
        var incubators =
                boxes.stream()
                        .filter(box -> theirs.contains(box.id()))
                        .flatMap(box -> new Incubators(tx).named(box.incubator()).stream())
                        .map(incubator -> incubator.id())
                        .collect(Collectors.toSet());
        return new Sensors(tx)
                .all().stream()
                        .filter(
                                sensor ->
                                        sensor.box()
                                                .map(theirs::contains)
                                                .orElseGet(
                                                        () ->
                                                                incubators.contains(
                                                                        sensor.incubator())))
                        .sorted(Comparator.comparing(sensor -> sensor.box().isPresent()))
                        .flatMap(sensor -> by(tx, sensor, begin).stream())
                        .findFirst();
    }

    private static Optional<FeltSoFar> by(Transaction tx, Sensor sensor, Instant begin) {
        var course = new Readings(tx).course(sensor.id(), begin, tx.now(), HOUR);
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
