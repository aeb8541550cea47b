package clutchwright.engine.season;

/// About which day of the season's line a collection lays.
///
/// @param sdDays how uncertain that is, 0 or more
public record CollectionMean(double day, double sdDays, Origin origin) {

    public CollectionMean {
        if (!Double.isFinite(day) || !(sdDays >= 0 && sdDays < 1e6)) {
            throw new IllegalArgumentException("day %s give or take %s".formatted(day, sdDays));
        }
    }

    public static CollectionMean given(double day) {
        return new CollectionMean(day, 0, new Origin.Given());
    }

    /// From where it is known.
    public sealed interface Origin {

        /// Somebody said so.
        record Given() implements Origin {}

        /// Nothing is on record.
        record Assumed() implements Origin {}

        /// @param number of clutches on record, of other females and other seasons
        record Clutches(int number) implements Origin {}
    }
}
