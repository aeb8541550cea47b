package clutchwright.app.projects;

import clutchwright.app.holding.PackageInHand;
import clutchwright.app.steering.HouseStock;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Stock;
import java.util.List;

/// The animals of some files as the stock of a project.
///
/// @param notes what is worth knowing of those that are left out or have to wait
record Collected(PackageInHand read, Stock stock, Kinship kinship, List<String> notes) {

    Collected {
        notes = List.copyOf(notes);
    }

    /// @param species of which the files hold animals
    /// @param firstYear in which the clutches of season 1 hatch
    static Collected of(PackageInHand read, String species, int firstYear, Biology biology) {
        var records = read.species().get(species);
        if (records == null) {
            throw new IllegalArgumentException("no records of " + species);
        }
        var posteriors =
                new Posteriors(PedigreeInference.of(records.records(), Assumptions.STANDARD));
        var house =
                HouseStock.of(
                        read.collection().animals().values(),
                        species,
                        (animal, _) -> posteriors.of(animal.id()).asParent(),
                        firstYear,
                        biology);
        return new Collected(
                read, house.stock(), Kinship.of(records.records().pedigree()), house.notes());
    }

    String tag(AnimalId animal) {
        return read.tag(animal);
    }
}
