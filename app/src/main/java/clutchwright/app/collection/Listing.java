package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import java.util.ArrayList;
import java.util.List;

/// Puts a page of the list together.
record Listing(Holding holding, Preferring preferring) {

    /// @param form the filters as they were sent
    /// @param changes the form by which several are changed at once
    CollectionView view(Form form, Form changes) {
        var asked = new Asked(form);
        var found = Found.by(holding, asked);
        var shown = found.fault().isEmpty() ? form : form.withFault("gene", found.fault());
        var rows = rows(found);
        return holding.database()
                .read(
                        tx ->
                                new CollectionView(
                                        shown,
                                        rows,
                                        found.held(),
                                        found.total(),
                                        asked.query().first() + 1,
                                        rooms(new Places(tx)),
                                        SavedFilter.all(tx),
                                        changes));
    }

    private static List<Choice> rooms(Places places) {
        var rooms = new ArrayList<Choice>();
        rooms.add(new Choice("", "Any room"));
        for (var room : places.rooms()) {
            rooms.add(new Choice(Long.toString(room.id().value()), room.name()));
        }
        return rooms;
    }

    private List<CollectionRow> rows(Found found) {
        var words = new AnimalWords(new Formats(preferring.preferences()));
        return found.animals().stream().map(animal -> row(found, animal, words)).toList();
    }

    private CollectionRow row(Found found, Animal animal, AnimalWords words) {
        return new CollectionRow(
                "/collection/" + animal.id(),
                animal.id().toString(),
                animal.tag().value(),
                animal.name(),
                holding.line(animal.id()).line(),
                AnimalWords.sign(animal),
                AnimalWords.sex(animal),
                animal.hatched().span().isEmpty() ? "" : words.hatched(animal.hatched()),
                isGone(animal) ? "" : words.age(animal.hatched(), holding.today()).orElse(""),
                found.place(animal).map(Address::toString).orElse(""),
                AnimalWords.status(animal.status()),
                isGone(animal));
    }

    private static boolean isGone(Animal animal) {
        return animal.status() == Status.SOLD || animal.status() == Status.DEAD;
    }
}
