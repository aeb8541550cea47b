package clutchwright.app.browser;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.LineEntry;
import clutchwright.app.holding.Written;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.time.LocalDate;
import java.util.Optional;

/// Animals, pairings and clutches for the tests of the screen Eggs.
record EggsStock(Holding holding) {

    AnimalId animal(String tag, Sex sex, String line) {
        return animal(Particulars.of(new Tag(tag), holding.mainSpecies()).withSex(sex), line);
    }

    AnimalId unsexed(String tag) {
        return animal(Particulars.of(new Tag(tag), holding.mainSpecies()), "Normal");
    }

    void paired(AnimalId dam, AnimalId sire) {
        Written.to(
                holding,
                "paired",
                tx ->
                        new Pairings(tx)
                                .plan(holding.today().getYear(), dam, sire, "", Questions.ASK)
                                .theSaved());
    }

    void together(AnimalId dam, AnimalId sire, LocalDate since) {
        paired(dam, sire);
        Written.to(
                holding,
                "put together",
                tx -> {
                    var pairings = new Pairings(tx);
                    return pairings.update(pairings.of(dam).getFirst().begun(since), Questions.ASK)
                            .theSaved();
                });
    }

    Clutch clutch(Parentage parentage, LocalDate laid, int good, int slugs) {
        return Written.to(
                        holding,
                        "laid",
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
                                                Questions.ASK)
                                        .theSaved())
                .result();
    }

    static Parentage parents(AnimalId dam, AnimalId sire) {
        return new Parentage.Biparental(
                new Parentage.Dam.Known(dam), new Parentage.Sire.Known(sire));
    }

    private AnimalId animal(Particulars particulars, String line) {
        return Written.to(
                        holding,
                        "added",
                        tx -> {
                            var id = new Animals(tx).add(particulars).theSaved().id();
                            var lines = holding.lines(particulars.species());
                            if (LineEntry.read(lines, line)
                                    instanceof LineEntry.Understood(var text, _, _)) {
                                new Statements(tx)
                                        .claim(id, text, Witness.undated("the breeder"))
                                        .theSaved();
                            } else {
                                throw new IllegalArgumentException(line);
                            }
                            return id;
                        })
                .result();
    }
}
