package clutchwright.engine.planning;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Pairing.Target;
import clutchwright.engine.planning.PairingOdds.Sought;
import java.util.List;

/// A way to come by animals of a kind.
sealed interface Acquisition {

    int number();

    Kind kind();

    /// How many clutches a season they can be parents of at most, if they are females.
    int count();

    /// By season, from 0: the chance that one can be a parent of a clutch that hatches in it.
    Chances ready();

    /// The matings that must come about for it, itself with them; none for own animals.
    List<Raised> closure();

    /// Expected clutches of all matings that must come about for it.
    double clutches();

    /// Animals of the stock of which the same is held.
    record Owned(int number, Kind kind, List<AnimalId> animals, List<Integer> first, Chances ready)
            implements Acquisition {

        public Owned {
            animals = List.copyOf(animals);
            first = List.copyOf(first);
        }

        static Owned of(
                int number, Kind kind, List<AnimalId> animals, List<Integer> first, int seasons) {
            var earliest = first.stream().mapToInt(Integer::intValue).min().orElse(seasons + 1);
            return new Owned(number, kind, animals, first, Chances.certainFrom(earliest, seasons));
        }

        @Override
        public int count() {
            return animals.size();
        }

        @Override
        public List<Raised> closure() {
            return List.of();
        }

        @Override
        public double clutches() {
            return 0;
        }
    }

    /// Hatchlings of a mating that are kept.
    ///
    /// @param count to be kept
    /// @param closure by number
    record Raised(
            int number,
            Kind kind,
            int count,
            Mating mating,
            Target target,
            Chances ready,
            List<Raised> closure,
            double clutches)
            implements Acquisition {

        Sought sought() {
            return new Sought(target, count);
        }

        /// A raised animal stands in its own closure, which is therefore not looked into.
        @Override
        public boolean equals(Object other) {
            return other instanceof Raised that && number == that.number;
        }

        @Override
        public int hashCode() {
            return number;
        }

        @Override
        public String toString() {
            return "raised " + number;
        }
    }
}
