package clutchwright.engine.network;

/// How chances were reached, and so how far they can be trusted.
public sealed interface Quality {

    /// Exact but for rounding.
    record Exact() implements Quality {}

    /// Some ties were cut and made up for; an estimate of the error goes with it.
    ///
    /// @param largestError estimated, absolute, of any chance
    record Estimated(double largestError) implements Quality {}

    /// Drawn at random.
    ///
    /// @param largestStandardError absolute, of any chance
    record Sampled(double largestStandardError) implements Quality {}
}
