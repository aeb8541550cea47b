package clutchwright.engine.season;

import clutchwright.engine.probability.Forecast;
import java.util.List;

/// When a female will lay, and on what that rests.
///
/// @param laid given that she lays this season
/// @param skips the chance that she does not
/// @param basis in the order in which it was taken into account; what the latest sign makes idle
///     is left out
public record LayForecast(Forecast laid, double skips, List<Basis> basis) {

    public LayForecast {
        basis = List.copyOf(basis);
    }

    /// One thing that a forecast rests on.
    public sealed interface Basis {

        /// The collection's lay days.
        record Collection(double meanDay, CollectionMean.Origin origin) implements Basis {}

        /// Her own clutches in other seasons.
        record OwnClutches(int clutches, double meanDay) implements Basis {}

        /// Her first clutch, which is later as a rule.
        record FirstTime(double laterDays) implements Basis {}

        /// Others that have laid this season.
        record SeasonShift(int others, double laterDays) implements Basis {}

        record Ovulated(double day, double layDay) implements Basis {}

        record Shed(double day, double layDay) implements Basis {}

        /// With a male from that day on, and nothing seen yet.
        record Together(double day, double soonest) implements Basis {}

        /// She has not laid by that day.
        record NotYet(double day) implements Basis {}
    }
}
