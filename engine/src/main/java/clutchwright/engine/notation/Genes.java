package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// What a line says, resolved against the catalogue.
///
/// @param statements in naming order: what shows first, then what is carried; at most one `Shows` a
///     locus, and at a locus that shows, `Carries` only beside a pair that leaves room for it
/// @param animals sex and counts, if the line says them
/// @param remarks words kept as they were: paradox, ringer, F2 ...
public record Genes(List<Statement> statements, Optional<Group> animals, List<String> remarks) {

    public static final Genes NORMAL = new Genes(List.of(), Optional.empty(), List.of());

    public Genes {
        statements = List.copyOf(statements);
        remarks = List.copyOf(remarks);
    }

    /// The sex of the one animal the line speaks of, if it says so.
    public Optional<Sex> sex() {
        return animals.flatMap(Group::sexOfAll);
    }

    public sealed interface Statement {

        LocusId locus();

        /// What is seen at a locus.
        ///
        /// @param name how the form is written, such as `Super Pastel`
        /// @param pairs the pairs of alleles it may be; one where the line settles it
        /// @param chance of being so at all, where the line voices doubt with a number; 1 where it
        ///     voices none
        /// @param doubtful whether the line voices doubt
        /// @param phase for a sex-linked allele of a male (or of the heterogametic sex), where
        ///     it sits
        record Shows(
                LocusId locus,
                String name,
                List<Genotype.Diploid> pairs,
                boolean doubtful,
                Optional<Fraction> chance,
                Optional<Phase> phase)
                implements Statement {

            public Shows {
                pairs = List.copyOf(pairs);
            }
        }

        /// One copy that does not show, or is not known to be there.
        ///
        /// @param chance above zero, 1 where it is certain
        record Carries(Allele allele, Fraction chance) implements Statement {

            @Override
            public LocusId locus() {
                return allele.locus();
            }
        }
    }

    /// Which sex chromosome of the heterogametic sex carries a single copy.
    public enum Phase {
        /// On the chromosome that both sexes have: mostly the other sex inherits it.
        ON_SHARED,
        /// On the chromosome that only this sex has: mostly the same sex inherits it.
        ON_LIMITED
    }

    /// How many animals a line speaks of: `1.0`, `0.1`, `1.2.3`.
    public record Group(int males, int females, int unsexed) {

        public Group {
            if (males < 0 || females < 0 || unsexed < 0 || males + females + unsexed < 1) {
                throw new IllegalArgumentException(
                        "not a group of animals: %d.%d.%d".formatted(males, females, unsexed));
            }
        }

        public Optional<Sex> sexOfAll() {
            if (unsexed > 0 || (males > 0 && females > 0)) {
                return Optional.empty();
            }
            return Optional.of(males > 0 ? Sex.MALE : Sex.FEMALE);
        }
    }
}
