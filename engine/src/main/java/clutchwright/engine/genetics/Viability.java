package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;

/// The chance that an embryo of a genotype class lives to hatch, other causes of loss left aside.
///
/// @param chance zero to one
public record Viability(Fraction chance, Standing standing) {

    public static final Viability FULL = new Viability(Fraction.WHOLE, Standing.SETTLED);

    public Viability {
        if (chance.compareTo(Fraction.NONE) < 0 || chance.compareTo(Fraction.WHOLE) > 0) {
            throw new IllegalArgumentException("viability is " + chance + ", not between 0 and 1");
        }
    }

    /// What figures are computed with: a viability that is disputed or unproven counts as one.
    public Fraction counted() {
        return standing.counts() ? chance : Fraction.WHOLE;
    }
}
