package clutchwright.engine.probability;

/// How much likelier some evidence is under one hypothesis than under its opposite; the factor
/// by which it changes the odds.
///
/// @param value zero to infinity: zero excludes the hypothesis, infinity proves it, one says
///     nothing
public record BayesFactor(double value) implements Comparable<BayesFactor> {

    /// Evidence that says nothing.
    public static final BayesFactor NONE = new BayesFactor(1);

    public BayesFactor {
        // Written so that NaN fails.
        if (!(value >= 0)) {
            throw new IllegalArgumentException("Bayes factor " + value + " is not at least 0");
        }
    }

    /// The words of a published scale. R.E. Kass and A.E. Raftery (1995), Bayes factors, Journal
    /// of the American Statistical Association 90:773-795.
    public enum Strength {
        /// Below 3.
        BARE_MENTION,
        /// 3 to below 20.
        POSITIVE,
        /// 20 to below 150.
        STRONG,
        /// 150 and more.
        VERY_STRONG
    }

    /// Whether it speaks for the hypothesis, or against it.
    public boolean favours() {
        return value > 1;
    }

    /// How strongly it speaks for or against the hypothesis.
    public Strength strength() {
        var either = weight();
        if (either < 3) {
            return Strength.BARE_MENTION;
        }
        if (either < 20) {
            return Strength.POSITIVE;
        }
        return either < 150 ? Strength.STRONG : Strength.VERY_STRONG;
    }

    /// The factor in favour of whichever of the two hypotheses it favours; at least one.
    public double weight() {
        return value < 1 ? 1 / value : value;
    }

    public BayesFactor inverse() {
        return new BayesFactor(1 / value);
    }

    @Override
    public int compareTo(BayesFactor that) {
        return Double.compare(value, that.value);
    }
}
