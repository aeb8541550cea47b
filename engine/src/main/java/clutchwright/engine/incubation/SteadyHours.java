package clutchwright.engine.incubation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/// A trace by its hours, each the mean of its readings: a thermostat's swing goes out in it.
///
/// @param hours of the longest stretch without a gap in which nothing was opened, moved or heating
///     up
/// @param withoutReading hours of the trace that nothing was read in
/// @param unsteady hours in which it was not steady
record SteadyHours(List<Hour> hours, int withoutReading, int unsteady) {

    /// What is steady: an hour from the next, and an hour's drift over four.
    private static final double LARGEST_STEP_KELVIN = 0.3;

    private static final double FASTEST_KELVIN_PER_HOUR = 0.1;
    private static final int REACH = 2;

    /// @param at the mean time of its readings, in hours since the first of all
    /// @param driftPerHour of what was read, in K
    record Hour(double at, double incubator, double read, double driftPerHour) {

        double riseKelvin() {
            return read - incubator;
        }
    }

    private record Mean(int hour, double at, double incubator, double read) {}

    static SteadyHours of(BoxTrace trace) {
        var means = means(trace);
        var best = List.<Hour>of();
        var run = new ArrayList<Hour>();
        var unsteady = 0;
        for (var i = 0; i < means.size(); i++) {
            if (i > 0 && means.get(i).hour() != means.get(i - 1).hour() + 1) {
                run.clear();
            }
            if (isSteady(means, i)) {
                run.add(hour(means, i));
            } else {
                run.clear();
                unsteady++;
            }
            if (run.size() > best.size()) {
                best = List.copyOf(run);
            }
        }
        var span = means.isEmpty() ? 0 : means.getLast().hour() - means.getFirst().hour() + 1;
        return new SteadyHours(best, span - means.size(), unsteady);
    }

    private static List<Mean> means(BoxTrace trace) {
        var means = new ArrayList<Mean>();
        var samples = trace.samples();
        var from = 0;
        while (from < samples.size()) {
            var hour = hourOf(trace, from);
            var to = from;
            var at = 0.0;
            var incubator = 0.0;
            var read = 0.0;
            while (to < samples.size() && hourOf(trace, to) == hour) {
                at += samples.get(to).hours() - samples.getFirst().hours();
                incubator += samples.get(to).incubator().degrees();
                read += samples.get(to).read().degrees();
                to++;
            }
            means.add(
                    new Mean(hour, at / (to - from), incubator / (to - from), read / (to - from)));
            from = to;
        }
        return means;
    }

    private static int hourOf(BoxTrace trace, int sample) {
        var since = trace.samples().get(sample).hours() - trace.samples().getFirst().hours();
        // A logger that reads every hour is late by a second now and then.
        return (int) Math.floor(since + 0.01);
    }

    private static boolean isSteady(List<Mean> means, int i) {
        return isSteady(means, i, Mean::incubator) && isSteady(means, i, Mean::read);
    }

    private static boolean isSteady(List<Mean> means, int i, ToDoubleFunction<Mean> value) {
        for (var other : new int[] {i - 1, i + 1}) {
            if (isNear(means, i, other, 1)
                    && Math.abs(
                                    value.applyAsDouble(means.get(other))
                                            - value.applyAsDouble(means.get(i)))
                            > LARGEST_STEP_KELVIN) {
                return false;
            }
        }
        return Math.abs(drift(means, i, REACH, value)) < FASTEST_KELVIN_PER_HOUR;
    }

    /// From so many hours before to so many after, as far as there are readings.
    private static double drift(List<Mean> means, int i, int reach, ToDoubleFunction<Mean> value) {
        var before = i;
        var after = i;
        for (var step = 1; step <= reach; step++) {
            before = isNear(means, i, i - step, step) ? i - step : before;
            after = isNear(means, i, i + step, step) ? i + step : after;
        }
        return before == after
                ? 0
                : (value.applyAsDouble(means.get(after)) - value.applyAsDouble(means.get(before)))
                        / (means.get(after).at() - means.get(before).at());
    }

    private static boolean isNear(List<Mean> means, int i, int other, int hours) {
        return other >= 0
                && other < means.size()
                && Math.abs(means.get(other).hour() - means.get(i).hour()) == hours;
    }

    private static Hour hour(List<Mean> means, int i) {
        var mean = means.get(i);
        return new Hour(mean.at(), mean.incubator(), mean.read(), drift(means, i, 1, Mean::read));
    }
}
