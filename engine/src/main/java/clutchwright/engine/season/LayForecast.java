package clutchwright.engine.season;

import clutchwright.engine.probability.Forecast;
import java.util.List;

/// When a female will lay, and on what that rests.
///
/// @param basis in the order in which it was taken into account; what the latest sign makes idle
///     is left out
public record LayForecast(Forecast laid, List<Basis> basis) {

    public LayForecast {
        basis = List.copyOf(basis);
    }

    /// One thing that a forecast rests on.
    public sealed interface Basis {

        /// The collection's lay days.
        ///
        /// @param known whether they were given; else the priors'
        record Collection(double meanDay, boolean known) implements Basis {}

        /// Her own clutches in other seasons.
        record OwnClutches(int clutches, double meanDay) implements Basis {}

        /// Her first clutch, which is later as a rule.
        record FirstTime(double laterDays) implements Basis {}

        /// Others that have laid this season.
        record SeasonShift(int others, double laterDays) implements Basis {}

        record Ovulated(double day, double layDay) implements Basis {}

        record Shed(double day, double layDay) implements Basis {}

        /// She has not laid by that day.
        record NotYet(double day) implements Basis {}
    }
}
