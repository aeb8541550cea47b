package clutchwright.engine.incubation;

import java.util.ArrayList;
import java.util.List;

/// How far eggs have come along a course of temperatures.
///
/// @param points days from laying and development there, both rising, the first at day 0
/// @param gaps stretches without a reading for longer than is trusted
/// @param shareOutside of the development, at temperatures at which the rate is not known
/// @param uncertainty of log development, that gaps and strange temperatures add
public record Development(
        List<Point> points, List<Gap> gaps, double shareOutside, double uncertainty) {

    /// So long without a reading is a gap.
    public static final double GAP_DAYS = 0.25;

    /// How wrong a temperature that was not read may be: common practice, no source.
    private static final double UNREAD_KELVIN = 1;

    /// How wrong the rate may be where it is not known, as a share.
    public static final double OUTSIDE_SHARE = 0.2;

    public Development {
        points = List.copyOf(points);
        gaps = List.copyOf(gaps);
    }

    public record Point(double day, double development) {}

    public record Gap(double fromDay, double toDay) {}

    /// One reading, or the air that was felt from then on.
    ///
    /// @param day from laying, 0 or more
    public record Reading(double day, Celsius celsius) {}

    static Development none() {
        return new Development(List.of(new Point(0, 0)), List.of(), 0, 0);
    }

    /// Sums up, the rate between two readings being the mean of theirs.
    ///
    /// @param readings in the order of their days, none twice; at least one. What was before the
    ///     first is taken to have been as warm as it.
    public static Development of(List<Reading> readings, DevelopmentRate rate) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no reading");
        }
        var points = new ArrayList<Point>();
        var gaps = new ArrayList<Gap>();
        points.add(new Point(0, 0));
        var sum = 0.0;
        var outside = 0.0;
        var before = new Reading(0, readings.getFirst().celsius());
        for (var reading : readings) {
            var days = reading.day() - before.day();
            if (days < 0) {
                throw new IllegalArgumentException(
                        "day %s after day %s".formatted(reading.day(), before.day()));
            }
            var grown = days * (rate.perDay(before.celsius()) + rate.perDay(reading.celsius())) / 2;
            if (days > GAP_DAYS) {
                gaps.add(new Gap(before.day(), reading.day()));
            }
            if (!DevelopmentRate.isKnownAt(before.celsius())
                    || !DevelopmentRate.isKnownAt(reading.celsius())) {
                outside += grown;
            }
            sum += grown;
            if (days > 0) {
                points.add(new Point(reading.day(), sum));
            }
            before = reading;
        }
        var share = sum > 0 ? outside / sum : 0;
        var unread = gaps.stream().mapToDouble(gap -> gap.toDay() - gap.fromDay()).sum();
        var ofGaps =
                unread
                        / DevelopmentRate.REFERENCE_DAYS
                        * UNREAD_KELVIN
                        * Math.log(DevelopmentRate.Q10)
                        / 10;
        return new Development(points, gaps, share, Math.hypot(ofGaps, OUTSIDE_SHARE * outside));
    }

    public double reached() {
        return points.getLast().development();
    }

    public double lastDay() {
        return points.getLast().day();
    }

    /// The day on which so much was reached, if it goes on at a rate after the last reading.
    double dayOf(double development, double perDayAhead) {
        if (development > reached()) {
            return lastDay() + (development - reached()) / perDayAhead;
        }
        // Between the two points about it.
        for (var i = 1; i < points.size(); i++) {
            var to = points.get(i);
            if (to.development() >= development) {
                var from = points.get(i - 1);
                return from.day()
                        + (to.day() - from.day())
                                * (development - from.development())
                                / (to.development() - from.development());
            }
        }
        return 0;
    }

    /// Development on a day, if it goes on at a rate after the last reading.
    double on(double day, double perDayAhead) {
        if (day >= lastDay()) {
            return reached() + (day - lastDay()) * perDayAhead;
        }
        for (var i = 1; i < points.size(); i++) {
            var to = points.get(i);
            if (to.day() >= day) {
                var from = points.get(i - 1);
                return from.development()
                        + (to.development() - from.development())
                                * (day - from.day())
                                / (to.day() - from.day());
            }
        }
        return 0;
    }
}
