package clutchwright.engine.incubation;

import clutchwright.engine.incubation.SensorAlarm.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/// Looks whether a sensor's last readings call for attention.
public final class SensorWatch {

    /// How far back readings are needed: the longest that any kind has to last, and a gap.
    public static final Duration LOOKS_BACK = Duration.ofHours(31);

    /// So much within an hour is too fast.
    static final double FAST_KELVIN = 2;

    private static final Duration FAST_WITHIN = Duration.ofHours(1);

    /// Over a longer silence nobody knows whether it lasted.
    private static final Duration BRIDGED = Duration.ofHours(6);

    private final List<Said> said;
    private final Instant now;
    private final Duration silentAfter;

    private SensorWatch(List<Said> said, Instant now, Duration silentAfter) {
        this.said = said;
        this.now = now;
        this.silentAfter = silentAfter;
    }

    /// One reading.
    public record Said(Instant at, Celsius celsius) {}

    /// @param said in the order of their times; those after now do not count
    /// @param silentAfter above zero
    /// @return the gravest first; of too warm and too cold only the gravest each
    public static List<SensorAlarm> of(List<Said> said, Instant now, Duration silentAfter) {
        var until = said.stream().filter(each -> !each.at().isAfter(now)).toList();
        return until.isEmpty() ? List.of() : new SensorWatch(until, now, silentAfter).alarms();
    }

    private List<SensorAlarm> alarms() {
        var found = new ArrayList<SensorAlarm>();
        var last = said.getLast();
        var silent = Duration.between(last.at(), now).compareTo(silentAfter) > 0;
        lasting(Kind.CRITICAL, atLeast(EggLimits.CRITICAL_AT))
                .or(() -> lasting(Kind.TOO_WARM, atLeast(EggLimits.TOO_WARM_AT)))
                .or(() -> lasting(Kind.WARM, atLeast(EggLimits.WARM_AT)))
                .ifPresent(found::add);
        lasting(Kind.TOO_COLD, atMost(EggLimits.TOO_COLD_AT))
                .or(() -> lasting(Kind.COOL, atMost(EggLimits.COOL_AT)))
                .ifPresent(found::add);
        if (silent) {
            found.add(new SensorAlarm(Kind.SILENT, last.at(), last.celsius()));
        } else {
            fast().ifPresent(found::add);
        }
        found.sort(Comparator.comparing(SensorAlarm::kind));
        return found;
    }

    /// The last readings without one that is not so, if they span long enough.
    private Optional<SensorAlarm> lasting(Kind kind, Predicate<Celsius> so) {
        var from = said.size();
        while (from > 0 && so.test(said.get(from - 1).celsius()) && !isGapBefore(from)) {
            from--;
        }
        var run = said.subList(from, said.size());
        if (run.isEmpty()
                || Duration.between(run.getFirst().at(), said.getLast().at())
                                .compareTo(kind.lasting())
                        < 0) {
            return Optional.empty();
        }
        var warm = kind != Kind.TOO_COLD && kind != Kind.COOL;
        var order = Comparator.<Celsius>naturalOrder();
        return Optional.of(
                new SensorAlarm(
                        kind,
                        run.getFirst().at(),
                        run.stream()
                                .map(Said::celsius)
                                .max(warm ? order : order.reversed())
                                .orElseThrow()));
    }

    /// @param next the reading after the one that is looked at; none at the end
    private boolean isGapBefore(int next) {
        return next < said.size()
                && Duration.between(said.get(next - 1).at(), said.get(next).at()).compareTo(BRIDGED)
                        > 0;
    }

    private Optional<SensorAlarm> fast() {
        var last = said.getLast();
        return said.reversed().stream()
                .takeWhile(
                        each -> Duration.between(each.at(), last.at()).compareTo(FAST_WITHIN) <= 0)
                .max(Comparator.comparingDouble(each -> apart(each, last)))
                .filter(each -> apart(each, last) >= FAST_KELVIN)
                .map(each -> new SensorAlarm(Kind.TOO_FAST, each.at(), last.celsius()));
    }

    private static double apart(Said one, Said other) {
        return Math.abs(one.celsius().degrees() - other.celsius().degrees());
    }

    private static Predicate<Celsius> atLeast(Celsius limit) {
        return celsius -> celsius.compareTo(limit) >= 0;
    }

    private static Predicate<Celsius> atMost(Celsius limit) {
        return celsius -> celsius.compareTo(limit) <= 0;
    }
}
