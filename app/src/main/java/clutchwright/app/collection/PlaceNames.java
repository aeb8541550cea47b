package clutchwright.app.collection;

import clutchwright.app.web.Form;
import clutchwright.records.animals.Particulars;
import clutchwright.records.places.Places;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.function.UnaryOperator;

/// A place by the names of room, rack and tub, as they were typed; all of them or none.
///
/// @param fields the fields of the form, from the room to the tub
record PlaceNames(String room, String rack, String tub, List<String> fields) {

    private static final int LONGEST = 60;

    PlaceNames {
        fields = List.copyOf(fields);
    }

    static PlaceNames read(Form form, String room, String rack, String tub) {
        return new PlaceNames(
                form.text(room), form.text(rack), form.text(tub), List.of(room, rack, tub));
    }

    boolean isBlank() {
        return names().stream().allMatch(String::isEmpty);
    }

    /// The form with what is wrong with the names.
    Form faults(Form form) {
        var faulty = form;
        if (isBlank()) {
            return faulty;
        }
        for (int i = 0; i < 3; i++) {
            var what = List.of("room", "rack", "tub").get(i);
            if (names().get(i).isEmpty()) {
                faulty =
                        faulty.withFault(
                                fields.get(i),
                                "Write the %s as well: a place is a room, a rack and a tub."
                                        .formatted(what));
            }
            if (names().get(i).length() > LONGEST) {
                faulty =
                        faulty.withFault(
                                fields.get(i),
                                "The name of a %s has %d characters at most."
                                        .formatted(what, LONGEST));
            }
        }
        return faulty;
    }

    /// Puts an animal into the tub, made with its rack and room where they are not there yet;
    /// leaves it where it is if the names are blank.
    UnaryOperator<Particulars> placing(Transaction tx) {
        if (isBlank()) {
            return animal -> animal;
        }
        var place = new Places(tx).theTub(room, rack, tub).id();
        return animal -> animal.withPlace(place);
    }

    @Override
    public String toString() {
        return String.join(" / ", names());
    }

    private List<String> names() {
        return List.of(room, rack, tub);
    }
}
