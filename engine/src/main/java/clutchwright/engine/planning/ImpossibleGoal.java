package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// Why no route leads to a goal, or none is needed.
public sealed interface ImpossibleGoal {

    /// An animal has two alleles of a locus, and the goal asks for more.
    record ThreeAlleles(LocusId locus) implements ImpossibleGoal {}

    /// Nobody in the stock can carry this.
    record NobodyCarries(Allele allele) implements ImpossibleGoal {}

    /// Some are carried, but no pair of alleles that would do can be put together.
    record NobodyCarriesAny(LocusId locus) implements ImpossibleGoal {}

    record NoFemale() implements ImpossibleGoal {}

    record NoMale() implements ImpossibleGoal {}

    /// @param firstSeason in which a pair could be bred, past the last that is looked at
    record AllTooYoung(int firstSeason) implements ImpossibleGoal {}

    record NoClutches() implements ImpossibleGoal {}

    /// @param animals that are what is wanted already
    record AlreadyOwned(List<AnimalId> animals) implements ImpossibleGoal {

        public AlreadyOwned {
            animals = List.copyOf(animals);
        }
    }

    /// Animals with the genotype do not hatch.
    record DoesNotLive() implements ImpossibleGoal {}

    /// No route was found that has a chance within the seasons looked at.
    record OutOfReach(int seasons) implements ImpossibleGoal {}
}
