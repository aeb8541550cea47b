package clutchwright.app.browser;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.LineEntry;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.util.Optional;

/// Animals and clutches that a test needs, entered as the screens would enter them.
record SeasonStock(Holding holding) {

    AnimalId enter(String tag, String name, Sex sex, String stated) {
        var species = holding.mainSpecies();
        return holding.database()
                .write(
                        holding.author(),
                        "Added " + tag,
                        tx -> {
                            var animal =
                                    new Animals(tx)
                                            .add(
                                                    Particulars.of(new Tag(tag), species)
                                                            .withName(name)
                                                            .withSex(sex))
                                            .theSaved();
                            if (LineEntry.read(holding.lines(species), stated)
                                    instanceof LineEntry.Understood(var text, _, _)) {
                                new Statements(tx)
                                        .claim(animal.id(), text, Witness.undated("the seller"))
                                        .theSaved();
                            } else {
                                throw new IllegalArgumentException("not a gene line: " + stated);
                            }
                            return animal.id();
                        });
    }

    /// An animal of which only the tag is known.
    void enterUnsexed(String tag) {
        holding.database()
                .write(
                        holding.author(),
                        "Added " + tag,
                        tx ->
                                new Animals(tx)
                                        .add(Particulars.of(new Tag(tag), holding.mainSpecies()))
                                        .theSaved());
    }

    void lay(AnimalId dam, int good, int slugs) {
        holding.database()
                .write(
                        holding.author(),
                        "A clutch",
                        tx ->
                                new Clutches(tx)
                                        .lay(
                                                new Laying(
                                                        Optional.empty(),
                                                        holding.today().minusDays(200).getYear(),
                                                        Parentage.of(
                                                                new Parentage.Dam.Known(dam),
                                                                new Parentage.Sire.Unknown()),
                                                        Optional.empty(),
                                                        holding.today().minusDays(200),
                                                        holding.mainSpecies(),
                                                        "",
                                                        good,
                                                        slugs),
                                                Questions.ALL_THE_SAME)
                                        .theSaved());
    }

    /// What came of a pairing.
    void layOf(long pairing, int good, int slugs) {
        holding.database()
                .write(
                        holding.author(),
                        "A clutch",
                        tx -> {
                            var of = new Pairings(tx).thePairing(new PairingId(pairing));
                            var laying =
                                    new Laying(
                                            Optional.empty(),
                                            holding.today().getYear(),
                                            Parentage.of(
                                                    new Parentage.Dam.Known(of.dam()),
                                                    new Parentage.Sire.Known(of.sire())),
                                            Optional.of(of.id()),
                                            holding.today(),
                                            holding.mainSpecies(),
                                            "",
                                            good,
                                            slugs);
                            return new Clutches(tx).lay(laying, Questions.ALL_THE_SAME).theSaved();
                        });
    }
}
