package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Distribution;
import java.util.List;
import java.util.Set;

/// One thing on record, or taken for granted, that may be wrong.
public sealed interface Testimony {

    /// A keeper saw this; several looks where in doubt.
    record Saw(AnimalId animal, Set<Phenotype> look) implements Testimony {

        public Saw {
            look = Set.copyOf(look);
        }
    }

    /// It is stated to be so.
    record Stated(AnimalId animal, Distribution<Genotype> genotypes) implements Testimony {}

    /// A laboratory found this.
    record Tested(AnimalId animal, AlleleTest test) implements Testimony {}

    /// She laid the eggs that these hatched from.
    record DamOf(List<AnimalId> young, AnimalId dam) implements Testimony {

        public DamOf {
            young = List.copyOf(young);
        }
    }

    /// He, or one of these, fathered them.
    record SireOf(List<AnimalId> young, List<AnimalId> sires) implements Testimony {

        public SireOf {
            young = List.copyOf(young);
            sires = List.copyOf(sires);
        }
    }

    /// Nothing is said of what it carries, nor of its parents, so it is taken to be wild type.
    record TakenForWild(AnimalId animal) implements Testimony {}
}
