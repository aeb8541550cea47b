package clutchwright.engine.inference;

/// How figures were reached.
public sealed interface Method {

    /// The sum over all that is possible, to rounding.
    record Exact() implements Method {}

    /// @param bound no chance is further from the exact one
    record Bounded(double bound) implements Method {}

    /// The exact sum was out of reach.
    ///
    /// @param error of the largest chance, absolute, as estimated
    record Sampled(double error) implements Method {}

    /// The weaker of two.
    default Method and(Method that) {
        return switch (this) {
            case Exact() -> that;
            case Bounded(var bound) ->
                    switch (that) {
                        case Exact() -> this;
                        case Bounded(var other) -> new Bounded(Math.max(bound, other));
                        case Sampled(var error) -> new Sampled(Math.max(bound, error));
                    };
            case Sampled(var error) ->
                    switch (that) {
                        case Exact() -> this;
                        case Bounded(var other) -> new Sampled(Math.max(error, other));
                        case Sampled(var other) -> new Sampled(Math.max(error, other));
                    };
        };
    }
}
