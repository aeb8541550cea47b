package clutchwright.app.collection;

import clutchwright.app.collection.AnimalFormView.AnimalClash;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.places.Places;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The form of an animal, filled with what is on record.
final class AnimalFilling {

    /// Every field with what it is called where two versions stand side by side.
    private static final Map<String, String> LABELS = labels();

    private AnimalFilling() {}

    /// The form of an animal that is still to be added.
    static Form ofNew(Holding holding) {
        return Form.of(
                Map.of(
                        "sex", "",
                        "species", holding.mainSpecies(),
                        "origin", Origin.How.UNKNOWN.name(),
                        "status", Status.KEPT.name()));
    }

    static Form of(Transaction tx, Animal animal) {
        var animals = new Animals(tx);
        var texts = new LinkedHashMap<String, String>();
        texts.put("version", Long.toString(animal.version()));
        texts.put("tag", animal.tag().value());
        texts.put("name", animal.name());
        texts.put("sex", animal.sex().map(Enum::name).orElse(""));
        texts.put("hatched", animal.hatched().iso());
        texts.put("species", animal.species());
        ParentNames.fill(texts, animal.parentage(), id -> animals.theAnimal(id).tag().value());
        texts.put("origin", animal.origin().how().name());
        texts.put("from", animal.origin().from());
        texts.put("acquired", animal.origin().acquired().map(Object::toString).orElse(""));
        texts.put("lineName", animal.line().name());
        texts.put("credit", animal.line().credit());
        texts.put("status", animal.status().name());
        animal.place()
                .flatMap(tub -> new Places(tx).address(tub))
                .ifPresent(
                        address -> {
                            texts.put("room", address.room());
                            texts.put("rack", address.rack());
                            texts.put("tub", address.name());
                        });
        var latest = new Statements(tx).latest(animal.id());
        latest.claim().ifPresent(claim -> texts.put("stated", claim.genes().written()));
        latest.sighting().ifPresent(seen -> texts.put("shows", seen.genes().written()));
        texts.put("notes", animal.notes());
        return Form.of(texts);
    }

    /// Where two versions of a form differ, field by field.
    static List<AnimalClash> clashes(Form theirs, Form yours) {
        var clashes = new ArrayList<AnimalClash>();
        LABELS.forEach(
                (field, label) -> {
                    if (!theirs.text(field).equals(yours.text(field))) {
                        clashes.add(new AnimalClash(label, theirs.text(field), yours.text(field)));
                    }
                });
        return clashes;
    }

    private static Map<String, String> labels() {
        var labels = new LinkedHashMap<String, String>();
        labels.put("tag", "Tag");
        labels.put("name", "Name");
        labels.put("sex", "Sex");
        labels.put("hatched", "Hatched");
        labels.put("species", "Species");
        labels.put("dam", "Dam");
        labels.put("sire", "Sire");
        labels.put("sire2", "or");
        labels.put("sire3", "or");
        labels.put("sire4", "or");
        labels.put("origin", "Origin");
        labels.put("from", "From");
        labels.put("acquired", "Came on");
        labels.put("lineName", "Line");
        labels.put("credit", "Credit");
        labels.put("status", "Status");
        labels.put("room", "Room");
        labels.put("rack", "Rack");
        labels.put("tub", "Tub");
        labels.put("stated", "Stated");
        labels.put("shows", "Shows");
        labels.put("notes", "Notes");
        return labels;
    }
}
