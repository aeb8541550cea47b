package clutchwright.engine.planning;

import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// The animals that a project may breed from.
///
/// @param animals in the order in which to prefer them, each once
public record Stock(List<Own> animals) {

    public Stock {
        animals = List.copyOf(animals);
        if (animals.stream().map(Own::id).distinct().count() != animals.size()) {
            throw new IllegalArgumentException("an animal stands in the stock twice: " + animals);
        }
    }

    /// An animal of the stock.
    ///
    /// @param genotype what is held of it, in the shape of its sex
    /// @param firstSeason the first season whose clutches may be its own, 1 or more
    public record Own(AnimalId id, Sex sex, ParentGenotype genotype, int firstSeason) {

        public Own {
            if (firstSeason < 1) {
                throw new IllegalArgumentException("first season is " + firstSeason + ", below 1");
            }
        }
    }
}
