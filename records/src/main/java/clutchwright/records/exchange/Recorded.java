package clutchwright.records.exchange;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Tag;
import clutchwright.records.exchange.AnimalEntry.SireEntry;
import clutchwright.records.exchange.AnimalEntry.WeightEntry;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// The animals on record as a file would state them.
final class Recorded {

    private final SequencedMap<String, AnimalEntry> entries = new LinkedHashMap<>();
    private final Map<String, Animal> animals = new HashMap<>();
    private final Map<AnimalId, Tag> tags = new HashMap<>();

    private Recorded() {}

    /// There are no records.
    static Recorded nothing() {
        return new Recorded();
    }

    static Recorded of(Transaction tx) {
        var recorded = new Recorded();
        var all = new Animals(tx).all();
        var addresses = new Places(tx).addresses();
        var weights = new Husbandry(tx).lastWeights();
        var said = new Statements(tx).latest(all.stream().map(Animal::id).toList());
        all.forEach(animal -> recorded.tags.put(animal.id(), animal.tag()));
        for (var animal : all) {
            var key = Keys.of(animal.tag());
            recorded.animals.put(key, animal);
            recorded.entries.put(
                    key,
                    recorded.entry(
                            animal,
                            addresses,
                            said.getOrDefault(animal.id(), Latest.nothing()),
                            Optional.ofNullable(weights.get(animal.id()))));
        }
        return recorded;
    }

    Collection<AnimalEntry> all() {
        return entries.values();
    }

    Optional<AnimalEntry> find(Tag tag) {
        return Optional.ofNullable(entries.get(Keys.of(tag)));
    }

    Optional<Animal> animal(Tag tag) {
        return Optional.ofNullable(animals.get(Keys.of(tag)));
    }

    private AnimalEntry entry(
            Animal animal,
            Map<TubId, Address> addresses,
            Latest said,
            Optional<Happening.Weighing> weight) {
        return new AnimalEntry(
                animal.tag(),
                animal.name(),
                animal.sex(),
                animal.hatched(),
                animal.parentage().dams().stream().findFirst().map(this::theTag),
                sire(animal.parentage()),
                animal.parentage() instanceof Parentage.Parthenogenetic,
                said.claim().map(claim -> claim.genes().written()).orElse(""),
                said.sighting().map(sighting -> sighting.genes().written()).orElse(""),
                animal.status(),
                animal.origin(),
                animal.line(),
                animal.place().map(addresses::get).map(Recorded::place),
                animal.species(),
                animal.notes(),
                weight.map(last -> new WeightEntry(last.grams(), last.on())));
    }

    private SireEntry sire(Parentage parentage) {
        return switch (parentage) {
            case Parentage.Founder _, Parentage.Parthenogenetic _ -> new SireEntry.Unknown();
            case Parentage.Biparental(_, Sire.Unknown()) -> new SireEntry.Unknown();
            case Parentage.Biparental(_, Sire.Known(var id)) -> new SireEntry.Known(theTag(id));
            case Parentage.Biparental(_, Sire.InDoubt(var question)) ->
                    new SireEntry.OneOf(question.key(), question.candidates().map(this::theTag));
        };
    }

    private Tag theTag(AnimalId id) {
        return Optional.ofNullable(tags.get(id)).orElseThrow();
    }

    private static PlaceName place(Address address) {
        return new PlaceName(address.room(), address.rack(), address.name());
    }
}
