package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// One page of the list, as it was found.
///
/// @param total of how many this is a page
/// @param held how many are on record in all
/// @param fault what is wrong with the genes asked for; empty where nothing is
record Found(List<Animal> animals, Map<TubId, Address> places, int total, int held, String fault) {

    Found {
        animals = List.copyOf(animals);
        places = Map.copyOf(places);
    }

    static Found by(Holding holding, Asked asked) {
        if (asked.gene().isEmpty()) {
            return plainly(holding, asked, "");
        }
        return switch (GenesSought.read(holding, asked.gene(), asked.how())) {
            case GenesSought.Result.Understood(var sought) -> meeting(holding, asked, sought);
            case GenesSought.Result.Unclear(var why) -> plainly(holding, asked, why);
        };
    }

    /// All of the pages; genes that cannot be read let everybody through, as in the list.
    static List<AnimalId> all(Holding holding, Asked asked) {
        if (!asked.gene().isEmpty()
                && GenesSought.read(holding, asked.gene(), asked.how())
                        instanceof GenesSought.Result.Understood(var sought)) {
            var knowledge = holding.knowledge();
            return holding.database().read(tx -> new Animals(tx).ids(asked.query())).stream()
                    .filter(id -> sought.areMetBy(knowledge, id))
                    .toList();
        }
        return holding.database().read(tx -> new Animals(tx).ids(asked.query()));
    }

    Optional<Address> place(Animal animal) {
        return animal.place().flatMap(tub -> Optional.ofNullable(places.get(tub)));
    }

    private static Found plainly(Holding holding, Asked asked, String fault) {
        return holding.database().read(tx -> of(tx, new Animals(tx).find(asked.query()), fault));
    }

    private static Found meeting(Holding holding, Asked asked, GenesSought sought) {
        var knowledge = holding.knowledge();
        return holding.database()
                .read(
                        tx -> {
                            var animals = new Animals(tx);
                            var meeting =
                                    animals.ids(asked.query()).stream()
                                            .filter(id -> sought.areMetBy(knowledge, id))
                                            .toList();
                            var page =
                                    meeting.stream()
                                            .skip(asked.query().first())
                                            .limit(Asked.PAGE)
                                            .toList();
                            return of(
                                    tx, new Query.Page(inOrder(animals, page), meeting.size()), "");
                        });
    }

    private static List<Animal> inOrder(Animals animals, List<AnimalId> ids) {
        return animals.find(ids).stream()
                .sorted(Comparator.comparingInt(animal -> ids.indexOf(animal.id())))
                .toList();
    }

    private static Found of(Transaction tx, Query.Page page, String fault) {
        var tubs = page.animals().stream().flatMap(animal -> animal.place().stream()).toList();
        return new Found(
                page.animals(),
                new Places(tx).addresses(tubs),
                page.total(),
                new Animals(tx).count(),
                fault);
    }
}
