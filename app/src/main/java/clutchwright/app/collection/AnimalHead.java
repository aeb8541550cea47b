package clutchwright.app.collection;

import clutchwright.app.wording.AnimalWords;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import java.util.List;
import java.util.Optional;

/// Who the page is about.
///
/// @param place room, rack and tub; empty where it lives in none
/// @param pairing where to see what it gives as a parent; empty where its sex is not known
public record AnimalHead(
        String path,
        String tag,
        String name,
        String sex,
        String sign,
        String status,
        String place,
        List<Fact> facts,
        Optional<Link> pairing,
        String notes,
        long version) {

    public AnimalHead {
        facts = List.copyOf(facts);
    }

    /// One thing on record.
    ///
    /// @param links what the words lead to; where there are some they stand for the words
    public record Fact(String label, String words, List<Link> links) {

        public Fact {
            links = List.copyOf(links);
        }

        static Fact of(String label, String words) {
            return new Fact(label, words, List.of());
        }
    }

    static AnimalHead of(Animal animal, String place, List<Fact> facts) {
        return new AnimalHead(
                path(animal),
                animal.tag().value(),
                animal.name(),
                AnimalWords.sex(animal),
                AnimalWords.sign(animal),
                AnimalWords.status(animal.status()),
                place,
                facts,
                animal.sex()
                        .map(
                                sex ->
                                        new Link(
                                                "Pair…",
                                                "/season/predict?"
                                                        + (sex == Sex.FEMALE ? "dam=" : "sire=")
                                                        + animal.id())),
                animal.notes(),
                animal.version());
    }

    static String path(Animal animal) {
        return "/collection/" + animal.id();
    }
}
