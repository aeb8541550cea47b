package clutchwright.app.browser;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.LineEntry;
import clutchwright.app.holding.Written;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Laying;
import clutchwright.records.places.Places;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;

/// Puts animals on record for a test, the way the records take them.
record Stock(Holding holding) {

    Animal add(String tag, UnaryOperator<Particulars> particulars) {
        return Written.to(
                        holding,
                        "Added " + tag,
                        tx ->
                                new Animals(tx)
                                        .add(
                                                particulars.apply(
                                                        Particulars.of(
                                                                new Tag(tag),
                                                                holding.mainSpecies())))
                                        .theSaved())
                .result();
    }

    Animal female(String tag, String said) {
        var animal = add(tag, of -> of.withSex(Sex.FEMALE).withHatched(new Hatched.InYear(2019)));
        said(animal.id(), said);
        return animal;
    }

    Animal male(String tag, String said) {
        var animal = add(tag, of -> of.withSex(Sex.MALE).withHatched(new Hatched.InYear(2019)));
        said(animal.id(), said);
        return animal;
    }

    Animal young(String tag, Animal dam, Animal sire, LocalDate hatched) {
        return add(
                tag,
                of ->
                        of.withHatched(new Hatched.OnDay(hatched))
                                .withParentage(
                                        Parentage.of(
                                                new Parentage.Dam.Known(dam.id()),
                                                new Parentage.Sire.Known(sire.id()))));
    }

    void said(AnimalId animal, String line) {
        Written.to(
                holding,
                "Wrote down what was said",
                tx ->
                        new Statements(tx)
                                .claim(animal, genes(line), Witness.undated("the seller"))
                                .theSaved());
    }

    void seen(AnimalId animal, String line, LocalDate on) {
        Written.to(
                holding,
                "Wrote down what was seen",
                tx ->
                        new Statements(tx)
                                .see(animal, genes(line), Witness.on(on, "Keeper"), false)
                                .theSaved());
    }

    void put(Animal animal, String room, String rack, String tub) {
        Written.to(
                holding,
                "Moved " + animal.tag(),
                tx -> {
                    var animals = new Animals(tx);
                    var now = animals.theAnimal(animal.id());
                    var place = new Places(tx).theTub(room, rack, tub).id();
                    return animals.update(now.with(now.particulars().withPlace(place))).theSaved();
                });
    }

    Clutch clutch(Animal dam, Animal sire, LocalDate laid, int good, int slugs) {
        var parentage =
                Parentage.of(
                        new Parentage.Dam.Known(dam.id()), new Parentage.Sire.Known(sire.id()));
        return Written.to(
                        holding,
                        "Laid",
                        tx ->
                                new Clutches(tx)
                                        .lay(
                                                new Laying(
                                                        Optional.empty(),
                                                        laid.getYear(),
                                                        parentage,
                                                        Optional.empty(),
                                                        laid,
                                                        holding.mainSpecies(),
                                                        "",
                                                        good,
                                                        slugs),
                                                clutchwright.records.checks.Questions.ASK)
                                        .theSaved())
                .result();
    }

    GeneText genes(String line) {
        return switch (LineEntry.read(holding.lines(holding.mainSpecies()), line)) {
            case LineEntry.Understood(var text, _, _) -> text;
            case LineEntry.Blank(), LineEntry.Unclear _ ->
                    throw new IllegalArgumentException("not a gene line: " + line);
        };
    }

    Animal now(Animal animal) {
        return holding.database().read(tx -> new Animals(tx).theAnimal(animal.id()));
    }

    Optional<Animal> find(String tag) {
        return holding.database().read(tx -> new Animals(tx).byTag(tag));
    }
}
