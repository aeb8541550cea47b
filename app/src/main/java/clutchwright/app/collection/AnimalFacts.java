package clutchwright.app.collection;

import clutchwright.app.collection.AnimalHead.Fact;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Origin;
import clutchwright.records.husbandry.Happening;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What stands under an animal's name in few words each.
record AnimalFacts(Knowledge knowledge, Animal animal, Formats formats, LocalDate today) {

    /// @param happenings newest first
    List<Fact> all(List<Happening> happenings, int clutches, String species) {
        var words = new AnimalWords(formats);
        var facts = new ArrayList<Fact>();
        facts.add(
                Fact.of(
                        "Hatched",
                        words.hatched(animal.hatched())
                                + words.age(animal.hatched(), today)
                                        .map(age -> ", " + age + " ago")
                                        .orElse("")));
        parents(facts);
        first(happenings, Happening.Weighing.class)
                .ifPresent(
                        weighing ->
                                facts.add(
                                        Fact.of(
                                                "Weight",
                                                formats.weight(weighing.grams())
                                                        + ", "
                                                        + formats.away(weighing.on(), today))));
        first(happenings, Happening.Meal.class)
                .ifPresent(
                        meal ->
                                facts.add(
                                        Fact.of(
                                                "Last meal",
                                                KeepingPart.meal(meal, formats)
                                                        + ", "
                                                        + formats.away(meal.on(), today))));
        if (clutches > 0) {
            facts.add(Fact.of("Clutches", formats.whole(clutches)));
        }
        if (animal.origin().how() != Origin.How.UNKNOWN || !animal.origin().from().isEmpty()) {
            facts.add(Fact.of("Origin", origin(animal.origin())));
        }
        if (!animal.line().name().isEmpty() || !animal.line().credit().isEmpty()) {
            facts.add(Fact.of("Line", line()));
        }
        facts.add(Fact.of("Species", species));
        return facts;
    }

    private void parents(List<Fact> facts) {
        var dams = links(animal.parentage().dams());
        var sires = links(animal.parentage().sires());
        if (!dams.isEmpty()) {
            facts.add(new Fact("Dam", "", dams));
        }
        if (!sires.isEmpty()) {
            facts.add(new Fact(sires.size() > 1 ? "Sire, one of" : "Sire", "", sires));
        }
    }

    private List<Link> links(List<AnimalId> ids) {
        return ids.stream().flatMap(id -> YoungPart.link(knowledge, id).stream()).toList();
    }

    private static <T extends Happening> Optional<T> first(List<Happening> all, Class<T> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private String origin(Origin origin) {
        return AnimalWords.origin(origin.how())
                + (origin.from().isEmpty() ? "" : " from " + origin.from())
                + origin.acquired().map(day -> ", " + formats.date(day)).orElse("");
    }

    private String line() {
        return animal.line().credit().isEmpty()
                ? animal.line().name()
                : (animal.line().name() + " by " + animal.line().credit()).strip();
    }
}
