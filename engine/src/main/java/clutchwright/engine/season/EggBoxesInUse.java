package clutchwright.engine.season;

import clutchwright.engine.probability.Forecast;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/// How many clutches are in the incubator on a day: each with a chance of its own, independent of
/// the others.
///
/// @param chances of 0, 1, 2 ... clutches; they sum to 1
public record EggBoxesInUse(List<Double> chances) {

    public EggBoxesInUse {
        chances = List.copyOf(chances);
    }

    /// A clutch that is expected.
    ///
    /// @param laid when
    /// @param incubationDays from laying to hatching
    /// @param incubationSdDays above zero
    public record Expected(Forecast laid, double incubationDays, double incubationSdDays) {

        /// When it hatches: means add up, and variances.
        public Forecast hatched() {
            return Forecast.of(
                    laid.mean() + incubationDays, Math.hypot(laid.sdDays(), incubationSdDays));
        }

        /// The chance that it is laid and not hatched on that day.
        public double inIncubator(double day) {
            return Math.max(0, laid.by(day) - hatched().by(day));
        }
    }

    public static EggBoxesInUse on(double day, Collection<Expected> clutches) {
        return of(clutches.stream().map(clutch -> clutch.inIncubator(day)).toList());
    }

    /// @param each the chance of each clutch that it is in the incubator, 0 to 1
    public static EggBoxesInUse of(List<Double> each) {
        var chances = new double[each.size() + 1];
        chances[0] = 1;
        for (var one : each) {
            if (!(one >= 0 && one <= 1)) {
                throw new IllegalArgumentException("a chance of " + one);
            }
            for (var n = chances.length - 1; n > 0; n--) {
                chances[n] = chances[n] * (1 - one) + chances[n - 1] * one;
            }
            chances[0] *= 1 - one;
        }
        return new EggBoxesInUse(
                IntStream.range(0, chances.length).mapToObj(n -> chances[n]).toList());
    }

    /// The fewest clutches that are not passed with that chance.
    ///
    /// @param level 0 to 1
    public int quantile(double level) {
        var sum = 0.0;
        for (var n = 0; n < chances.size(); n++) {
            sum += chances.get(n);
            if (sum >= level) {
                return n;
            }
        }
        return chances.size() - 1;
    }

    public double mean() {
        return moment(0, 1);
    }

    public double variance() {
        return moment(mean(), 2);
    }

    private double moment(double about, int power) {
        return IntStream.range(0, chances.size())
                .mapToDouble(n -> Math.pow(n - about, power) * chances.get(n))
                .sum();
    }
}
