package clutchwright.app.collection;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HistoryWords;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.inference.Held;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.journal.Journal;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/// The pieces of an animal's page, read from the records at one moment.
///
/// @param lines of the animal's species
record AnimalPieces(
        Transaction tx,
        Knowledge knowledge,
        GeneLine lines,
        Animal animal,
        Formats formats,
        LocalDate today,
        ZoneId zone) {

    AnimalHead head() {
        var facts =
                new AnimalFacts(knowledge, animal, formats, today)
                        .all(
                                new Husbandry(tx).of(animal.id()),
                                young().clutches().size(),
                                lines.catalogue().species().commonName());
        return AnimalHead.of(animal, place(), facts);
    }

    GenesPart genes(boolean lookedAt) {
        return GenesPart.of(model(), knowledge, animal, lookedAt);
    }

    List<CautionLine> cautions() {
        return CautionLine.of(model(), held());
    }

    PedigreePart pedigree(String ink) {
        return PedigreePart.of(model(), knowledge, animal, ink);
    }

    List<StatementLine> statements(boolean said) {
        var found = new ArrayList<StatementLine>();
        for (var statement : new Statements(tx).of(animal.id())) {
            if (statement instanceof Statement.Claim == said) {
                found.add(StatementLine.of(lines, statement, held(), found.isEmpty(), formats));
            }
        }
        return found;
    }

    YoungPart young() {
        return YoungPart.of(tx, model(), knowledge, animal, formats);
    }

    KeepingPart keeping() {
        return KeepingPart.of(new Husbandry(tx).of(animal.id()), formats);
    }

    List<PhotoLine> photos() {
        return new Photos(tx)
                .of(animal.id()).stream()
                        .map(photo -> PhotoLine.of(photo, animal.tag().value(), formats))
                        .toList();
    }

    List<ChangeLine> history() {
        var words = new HistoryWords(this::tag, this::placeOf, formats);
        return ChangeLine.all(new Journal(tx).historyOf(animal.id()), words, zone);
    }

    private GeneticModel model() {
        return lines.catalogue().model();
    }

    private Held held() {
        return knowledge.of(animal.id());
    }

    private String place() {
        return animal.place().map(TubId::value).map(this::placeOf).orElse("");
    }

    private String tag(AnimalId id) {
        return knowledge
                .find(id)
                .map(found -> found.tag().value())
                .orElse("an animal no longer on record");
    }

    private String placeOf(long tub) {
        return new Places(tx)
                .address(new TubId(tub))
                .map(Address::toString)
                .orElse("a place no longer on record");
    }
}
