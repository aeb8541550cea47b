package clutchwright.engine.reasons;

import clutchwright.engine.probability.BayesFactor;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/// What some records say of whether an animal carries an allele.
///
/// @param factor by which the odds of carrying change through these records: the odds with them
///     over the odds without them, all else staying
/// @param chanceWithout that it carries the allele, if they are withdrawn; empty where the other
///     records could not be true without them
/// @param settles whether they alone leave no doubt; then the factor may say nothing, because
///     others leave none either
/// @param parts what a side of the family consists of, strongest first; these hang together, so
///     their factors do not multiply to that of the whole
public record Reason(
        Source source,
        BayesFactor factor,
        OptionalDouble chanceWithout,
        boolean settles,
        List<Reason> parts) {

    /// What leaves no doubt first, then by weight.
    static final Comparator<Reason> STRONGEST_FIRST =
            Comparator.comparing(Reason::settles)
                    .thenComparingDouble(reason -> reason.factor().weight())
                    .reversed();

    public Reason {
        parts = List.copyOf(parts);
    }
}
