package clutchwright.app.season;

import clutchwright.app.web.Form;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.store.Transaction;

/// The animal that a form or a link names.
sealed interface Named {

    record Nobody() implements Named {}

    record One(Animal animal) implements Named {}

    /// @param sentence why it is not clear which animal is meant
    record Unclear(String sentence) implements Named {}

    /// A form names an animal by its tag or its name in the field `damTag`, a link by its number
    /// in `dam`; what a form says goes first, also where it says nothing.
    ///
    /// @param tagField `damTag`, `sireTag`, `sireTag2` ...
    static Named read(Transaction tx, Form form, String tagField) {
        if (form.values().containsKey(tagField)) {
            var text = form.text(tagField);
            return text.isEmpty() ? new Nobody() : called(tx, text);
        }
        var number = form.text(tagField.replace("Tag", ""));
        return number.isEmpty() ? new Nobody() : numbered(tx, number);
    }

    private static Named numbered(Transaction tx, String number) {
        return number.matches("\\d{1,18}")
                ? new Animals(tx)
                        .find(new AnimalId(Long.parseLong(number)))
                        .<Named>map(One::new)
                        .orElseGet(
                                () ->
                                        new Unclear(
                                                "The animal of this link is not on record any"
                                                        + " more."))
                : new Unclear("The link does not name an animal.");
    }

    private static Named called(Transaction tx, String text) {
        var animals = new Animals(tx);
        var tagged = animals.byTag(text);
        if (tagged.isPresent()) {
            return new One(tagged.get());
        }
        var called =
                animals.find(Query.everything().withText(text)).animals().stream()
                        .filter(animal -> animal.name().equalsIgnoreCase(text))
                        .toList();
        return switch (called.size()) {
            case 0 -> new Unclear("No animal has the tag or the name “%s”.".formatted(text));
            case 1 -> new One(called.getFirst());
            default ->
                    new Unclear(
                            "%d animals are called “%s”: write the tag."
                                    .formatted(called.size(), text));
        };
    }
}
