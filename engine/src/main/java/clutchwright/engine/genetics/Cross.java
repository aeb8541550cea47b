package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// The exact outcome of a pairing: dam by sire, grouped by what can be seen.
///
/// The product of the loci is never built: groups come likeliest first.
/// Source of the formulas: `docs/mathematics.md`, section "Cross".
public final class Cross {

    private Cross() {}

    /// @throws IllegalArgumentException if a parent has a locus that the model does not know, or a
    ///     genotype in the shape of the other sex
    public static Cross of(GeneticModel model, ParentGenotype dam, ParentGenotype sire) {
        throw new UnsupportedOperationException("#2");
    }

    /// The likeliest groups, by falling chance, then by name in the order of code points.
    ///
    /// @param limit at least one
    public List<Outcome> likeliest(int limit) {
        return likeliest(limit, Wanted.ANYTHING);
    }

    /// The likeliest of the groups that are wanted; chances stay those among all that live.
    public List<Outcome> likeliest(int limit, Wanted wanted) {
        throw new UnsupportedOperationException("#2");
    }

    /// How many groups can be told apart.
    public BigInteger outcomeCount() {
        throw new UnsupportedOperationException("#2");
    }

    /// The share of embryos that do not live because of their genotype.
    public Fraction dying() {
        throw new UnsupportedOperationException("#2");
    }

    /// The chance that a hatchling is wanted.
    public Fraction chanceOf(Wanted wanted) {
        throw new UnsupportedOperationException("#2");
    }

    /// The chance of at least one hatchling that is wanted among so many that all hatch. The
    /// parents'
    /// unknown genotypes are the same for all eggs of a clutch.
    public Fraction atLeastOne(Wanted wanted, int eggs) {
        throw new UnsupportedOperationException("#2");
    }

    /// The chance of at least one hatchling of that group.
    public Fraction atLeastOne(Outcome group, int eggs) {
        throw new UnsupportedOperationException("#2");
    }

    /// The group that shows exactly these forms, if the pairing can give it.
    public Optional<Outcome> findShowing(Set<Phenotype> shows) {
        throw new UnsupportedOperationException("#2");
    }

    /// The chance that so many hatchlings fall into the groups as found, in any order: the
    /// multinomial
    /// chance, averaged over the parents' unknown genotypes, given that all of them hatch.
    public Fraction clutchChance(List<Found> found) {
        throw new UnsupportedOperationException("#2");
    }

    /// Cautions of the parents and of what the pairing can give, gravest first.
    public List<Caution> cautions() {
        throw new UnsupportedOperationException("#2");
    }

    /// @param shows the visible forms of the group; empty for `Normal`
    public record Found(Set<Phenotype> shows, int hatchlings) {

        public Found {
            shows = Set.copyOf(shows);
        }
    }
}
