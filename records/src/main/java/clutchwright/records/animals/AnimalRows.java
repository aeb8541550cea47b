package clutchwright.records.animals;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.List;

/// An animal as a row, and back.
final class AnimalRows {

    private final Transaction tx;
    private final ParentageRows parents;

    AnimalRows(Transaction tx) {
        this.tx = tx;
        this.parents = new ParentageRows(tx, "animal");
    }

    Values write(Particulars animal) {
        var values =
                Values.of()
                        .set("tag", animal.tag().value())
                        .set("tag_key", animal.tag().key())
                        .set("name", animal.name())
                        .setIfAny("sex", animal.sex())
                        .setIfAny(
                                "hatched", animal.hatched().span().map(_ -> animal.hatched().iso()))
                        .set("origin", animal.origin().how())
                        .set("origin_from", animal.origin().from())
                        .setIfAny("acquired", animal.origin().acquired())
                        .set("line", animal.line().name())
                        .set("credit", animal.line().credit())
                        .set("status", animal.status())
                        .setIfAny("place", animal.place().map(TubId::value))
                        .set("species", animal.species())
                        .set("notes", animal.notes());
        parents.write(animal.parentage(), values);
        return values;
    }

    boolean writeCandidates(AnimalId id, Particulars animal) {
        return parents.writeCandidates(id.value(), animal.parentage());
    }

    /// The animals that a query finds; it selects all columns of `animal`.
    List<Animal> read(String sql, Object... parameters) {
        record Half(ParentageRows.Written parents, Animal animal) {}
        var halves =
                tx.list(row -> new Half(parents.read(row), withoutParents(row)), sql, parameters);
        var candidates =
                parents.candidatesOf(
                        halves.stream()
                                .map(Half::parents)
                                .filter(written -> written.question().isPresent())
                                .map(ParentageRows.Written::owner)
                                .toList());
        return halves.stream()
                .map(
                        half ->
                                half.animal()
                                        .with(
                                                half.animal()
                                                        .particulars()
                                                        .withParentage(
                                                                half.parents()
                                                                        .parentage(candidates))))
                .toList();
    }

    private static Animal withoutParents(Row row) {
        return new Animal(
                new AnimalId(row.number("id")),
                row.number("version"),
                new Particulars(
                        new Tag(row.text("tag")),
                        row.text("name"),
                        row.findText("sex").map(Sex::valueOf),
                        Hatched.parse(row.findText("hatched").orElse("")),
                        new Parentage.Founder(),
                        new Origin(
                                Origin.How.valueOf(row.text("origin")),
                                row.text("origin_from"),
                                row.findDay("acquired")),
                        new Line(row.text("line"), row.text("credit")),
                        Status.valueOf(row.text("status")),
                        row.findNumber("place").map(TubId::new),
                        row.text("species"),
                        row.text("notes")));
    }
}
