package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Distribution;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/// Records that can be withdrawn together, as seen from the animal in question.
public sealed interface Source {

    /// What was stated of the animal itself.
    record OwnClaim(Distribution<Genotype> genotypes) implements Source {}

    /// What was seen of the animal itself; several looks where that is in doubt.
    record OwnSighting(Set<Phenotype> look) implements Source {

        public OwnSighting {
            look = Set.copyOf(look);
        }
    }

    /// What a laboratory found in the animal itself.
    record OwnTests(List<AlleleTest> tests) implements Source {

        public OwnTests {
            tests = List.copyOf(tests);
        }
    }

    /// The young with one mate, and what descends only through them.
    ///
    /// @param mates the other parent; several where the sire is in doubt, none where nobody
    ///     knows
    /// @param chanceIf how likely these looks were if the animal carries the allele, the rest
    ///     of the records being as they are
    /// @param chanceIfNot how likely they were if it does not
    record Young(
            List<AnimalId> mates, Tally tally, OptionalDouble chanceIf, OptionalDouble chanceIfNot)
            implements Source {

        public Young {
            mates = List.copyOf(mates);
        }
    }

    /// What is recorded of a mate and of those who are kin by it. It says nothing by itself,
    /// only through the young of the two.
    ///
    /// @param animals how many of whom something is recorded
    record MatesSide(List<AnimalId> mates, int animals) implements Source {

        public MatesSide {
            mates = List.copyOf(mates);
        }
    }

    /// All that is recorded of those who are kin by the animal's parents.
    ///
    /// @param animals how many of whom something is recorded
    record ParentsSide(int animals) implements Source {}

    /// What is recorded of a parent, or of an ancestor further back.
    ///
    /// @param generations one for a parent
    record Ancestor(AnimalId animal, int generations) implements Source {}

    /// Young of one or both parents, and what descends from them.
    ///
    /// @param shared those parents of theirs that are the animal's too
    record Siblings(List<AnimalId> dams, List<AnimalId> sires, List<AnimalId> shared, Tally tally)
            implements Source {

        public Siblings {
            dams = List.copyOf(dams);
            sires = List.copyOf(sires);
            shared = List.copyOf(shared);
        }

        public boolean full() {
            return shared.size() > 1;
        }
    }

    /// Everything further off that is not named for itself.
    ///
    /// @param animals how many of whom something is recorded
    record Relatives(int animals) implements Source {}
}
