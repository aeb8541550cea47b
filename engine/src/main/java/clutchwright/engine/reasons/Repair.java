package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Distribution;
import java.util.List;
import java.util.Set;

/// One way in which records that cannot all be true may have come about.
public sealed interface Repair {

    /// That it is this one, given that it is one of those named.
    double chance();

    /// Something else was there than what was seen.
    record Misread(AnimalId animal, Set<Phenotype> recorded, double chance) implements Repair {

        public Misread {
            recorded = Set.copyOf(recorded);
        }
    }

    /// It is not what it is stated to be.
    record WrongClaim(AnimalId animal, Distribution<Genotype> stated, double chance)
            implements Repair {}

    /// Another male is the sire.
    ///
    /// @param recorded several where he is in doubt
    /// @param instead one of the collection
    record OtherSire(List<AnimalId> young, List<AnimalId> recorded, AnimalId instead, double chance)
            implements Repair {

        public OtherSire {
            young = List.copyOf(young);
            recorded = List.copyOf(recorded);
        }
    }

    /// A male that is not on record is the sire.
    record StrangeSire(List<AnimalId> young, List<AnimalId> recorded, double chance)
            implements Repair {

        public StrangeSire {
            young = List.copyOf(young);
            recorded = List.copyOf(recorded);
        }
    }

    /// Another female of the collection is the dam.
    record OtherDam(List<AnimalId> young, AnimalId recorded, AnimalId instead, double chance)
            implements Repair {

        public OtherDam {
            young = List.copyOf(young);
        }
    }

    /// A female that is not on record is the dam.
    record StrangeDam(List<AnimalId> young, AnimalId recorded, double chance) implements Repair {

        public StrangeDam {
            young = List.copyOf(young);
        }
    }

    /// All records are true, and these have an allele of which nobody knew.
    record HiddenCarriers(List<AnimalId> animals, double chance) implements Repair {

        public HiddenCarriers {
            animals = List.copyOf(animals);
        }
    }
}
