package clutchwright.app.season;

/// What can be done with a pair.
public sealed interface Planning {

    /// Both are on record: the pairing can be planned.
    record Open(int season, long dam, long sire) implements Planning {}

    record Planned(int season) implements Planning {}

    /// At least one of them is not on record.
    record NotOwned() implements Planning {}
}
