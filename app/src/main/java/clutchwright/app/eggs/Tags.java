package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.engine.pedigree.AnimalId;

/// What animals are called by.
final class Tags {

    private Tags() {}

    static String of(Holding holding, AnimalId animal) {
        return holding.knowledge()
                .find(animal)
                .map(found -> found.tag().value())
                .orElse("an animal that is no longer on record");
    }
}
