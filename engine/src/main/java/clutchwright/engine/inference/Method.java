package clutchwright.engine.inference;

/// How figures were reached.
public sealed interface Method {

    /// The sum over all that is possible, to rounding.
    record Exact() implements Method {}

    /// @param bound no chance is further from the exact one
    record Bounded(double bound) implements Method {}

    /// The exact sum was out of reach: some of what ties the animals together was cut, and made
    /// up for.
    ///
    /// @param error of the chance that is furthest off, absolute, as estimated
    record Estimated(double error) implements Method {}

    /// The exact sum was out of reach: drawn at random.
    ///
    /// @param error standard error of the chance that is furthest off, absolute
    record Sampled(double error) implements Method {}

    /// How far a chance may be off, absolute; 0 where it is exact.
    default double allowance() {
        return switch (this) {
            case Exact() -> 0;
            case Bounded(var bound) -> bound;
            case Estimated(var error) -> error;
            case Sampled(var error) -> error;
        };
    }
}
