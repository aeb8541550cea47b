package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;

/// How a locus travels from parent to offspring.
public sealed interface Inheritance {

    /// On a chromosome that both sexes have twice.
    record Autosomal() implements Inheritance {}

    /// On the sex chromosomes, present on both.
    ///
    /// @param recombination chance, zero to one half, that in a gamete of the heterogametic sex the
    ///     allele has changed to the other sex chromosome
    record SexLinked(Fraction recombination) implements Inheritance {

        public SexLinked {
            if (recombination.compareTo(Fraction.NONE) < 0
                    || recombination.compareTo(Fraction.HALF) > 0) {
                throw new IllegalArgumentException(
                        "recombination is " + recombination + ", not between 0 and 1/2");
            }
        }
    }
}
