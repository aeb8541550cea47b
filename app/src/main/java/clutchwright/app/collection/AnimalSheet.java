package clutchwright.app.collection;

import clutchwright.app.collection.AnimalHead.Fact;
import clutchwright.app.holding.ChangeLine;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HistoryWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Origin;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.journal.Journal;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// Puts the page of one animal together.
record AnimalSheet(Holding holding, Preferring preferring) {

    /// @param typed what a short form held when it was refused; [Form#EMPTY] for a fresh page
    /// @param ink the gene to ink the pedigree by; blank for none
    Optional<AnimalView> view(AnimalId id, Form typed, String ink) {
        var knowledge = holding.knowledge();
        return holding.database()
                .read(
                        tx ->
                                new Animals(tx)
                                        .find(id)
                                        .map(animal -> view(tx, knowledge, animal, typed, ink)));
    }

    private AnimalView view(
            Transaction tx, Knowledge knowledge, Animal animal, Form typed, String ink) {
        var formats = new Formats(preferring.preferences());
        var model = holding.catalogue(animal.species()).model();
        var happenings = new Husbandry(tx).of(animal.id());
        var keeping = KeepingPart.of(happenings, formats);
        var young = YoungPart.of(tx, holding, knowledge, animal, formats);
        var place = place(tx, animal);
        var said = statements(tx, knowledge, animal, true, formats);
        var seen = statements(tx, knowledge, animal, false, formats);
        return new AnimalView(
                AnimalHead.of(animal, place, facts(knowledge, animal, happenings, young, formats)),
                animal.species(),
                GenesPart.of(model, knowledge, animal, !(said.isEmpty() && seen.isEmpty())),
                CautionLine.of(model, knowledge.of(animal.id())),
                PedigreePart.of(model, knowledge, animal, ink),
                KinPart.of(knowledge, animal),
                said,
                seen,
                young,
                keeping,
                new Photos(tx)
                        .of(animal.id()).stream()
                                .map(photo -> PhotoLine.of(photo, animal.tag().value(), formats))
                                .toList(),
                history(tx, knowledge, animal, formats),
                shortForms(typed, keeping));
    }

    /// The short forms begin with today and the last prey; what was typed stands over that.
    private Form shortForms(Form typed, KeepingPart keeping) {
        var today = holding.today().toString();
        var values = new LinkedHashMap<String, List<String>>();
        for (var day : List.of("weighedOn", "fedOn", "shedOn", "notedOn", "saidOn")) {
            values.put(day, List.of(today));
        }
        values.put("prey", List.of(keeping.prey()));
        values.put("kind", List.of("seen"));
        values.putAll(typed.values());
        return new Form(values, typed.faults());
    }

    private List<StatementLine> statements(
            Transaction tx, Knowledge knowledge, Animal animal, boolean said, Formats formats) {
        var lines = new ArrayList<StatementLine>();
        for (var statement : new Statements(tx).of(animal.id())) {
            if (statement instanceof Statement.Claim == said) {
                lines.add(
                        StatementLine.of(
                                holding.lines(animal.species()),
                                statement,
                                knowledge.of(animal.id()),
                                lines.isEmpty(),
                                formats));
            }
        }
        return lines;
    }

    private List<ChangeLine> history(
            Transaction tx, Knowledge knowledge, Animal animal, Formats formats) {
        var places = new Places(tx);
        var words =
                new HistoryWords(
                        id ->
                                knowledge
                                        .find(id)
                                        .map(found -> found.tag().value())
                                        .orElse("an animal no longer on record"),
                        tub ->
                                places.address(new TubId(tub))
                                        .map(Address::toString)
                                        .orElse("a place no longer on record"),
                        formats);
        return ChangeLine.all(
                new Journal(tx).historyOf(animal.id()),
                words,
                holding.database().clock().getZone());
    }

    private static String place(Transaction tx, Animal animal) {
        return animal.place()
                .flatMap(tub -> new Places(tx).address(tub))
                .map(Address::toString)
                .orElse("");
    }

    private List<Fact> facts(
            Knowledge knowledge,
            Animal animal,
            List<Happening> happenings,
            YoungPart young,
            Formats formats) {
        var words = new AnimalWords(formats);
        var facts = new ArrayList<Fact>();
        facts.add(
                Fact.of(
                        "Hatched",
                        words.hatched(animal.hatched())
                                + words.age(animal.hatched(), holding.today())
                                        .map(age -> ", " + age + " ago")
                                        .orElse("")));
        parents(knowledge, animal, facts);
        first(happenings, Happening.Weighing.class)
                .ifPresent(
                        weighing ->
                                facts.add(
                                        Fact.of(
                                                "Weight",
                                                formats.weight(weighing.grams())
                                                        + ", "
                                                        + formats.away(
                                                                weighing.on(), holding.today()))));
        first(happenings, Happening.Meal.class)
                .ifPresent(
                        meal ->
                                facts.add(
                                        Fact.of(
                                                "Last meal",
                                                KeepingPart.meal(meal, formats)
                                                        + ", "
                                                        + formats.away(
                                                                meal.on(), holding.today()))));
        if (!young.clutches().isEmpty()) {
            facts.add(Fact.of("Clutches", formats.whole(young.clutches().size())));
        }
        if (animal.origin().how() != Origin.How.UNKNOWN || !animal.origin().from().isEmpty()) {
            facts.add(Fact.of("Origin", origin(animal.origin(), formats)));
        }
        if (!animal.line().name().isEmpty() || !animal.line().credit().isEmpty()) {
            facts.add(Fact.of("Line", line(animal)));
        }
        facts.add(Fact.of("Species", holding.catalogue(animal.species()).species().commonName()));
        return facts;
    }

    private static void parents(Knowledge knowledge, Animal animal, List<Fact> facts) {
        var dams = links(knowledge, animal.parentage().dams());
        var sires = links(knowledge, animal.parentage().sires());
        if (!dams.isEmpty()) {
            facts.add(new Fact("Dam", "", dams));
        }
        if (!sires.isEmpty()) {
            facts.add(new Fact(sires.size() > 1 ? "Sire, one of" : "Sire", "", sires));
        }
    }

    private static List<Link> links(Knowledge knowledge, List<AnimalId> ids) {
        return ids.stream().flatMap(id -> YoungPart.link(knowledge, id).stream()).toList();
    }

    private static <T extends Happening> Optional<T> first(List<Happening> all, Class<T> kind) {
        return all.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static String origin(Origin origin, Formats formats) {
        return AnimalWords.origin(origin.how())
                + (origin.from().isEmpty() ? "" : " from " + origin.from())
                + origin.acquired().map(day -> ", " + formats.date(day)).orElse("");
    }

    private static String line(Animal animal) {
        return animal.line().credit().isEmpty()
                ? animal.line().name()
                : (animal.line().name() + " by " + animal.line().credit()).strip();
    }
}
