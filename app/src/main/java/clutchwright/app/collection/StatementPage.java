package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.LineEntry;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.ProblemWords;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.StatementId;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import java.util.LinkedHashMap;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// What was said and what was seen of an animal: written down, corrected, removed.
@Controller
public class StatementPage {

    private static final String ALL = "/collection/{id:[0-9]{1,18}}/statements";
    private static final String ONE = ALL + "/{statement:[0-9]{1,18}}";

    private final Holding holding;
    private final Problems problems;

    StatementPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.problems = new Problems(holding, preferring);
    }

    @PostMapping(ALL)
    public Reply add(@PathVariable long id, Form form) {
        var animal = find(id);
        if (animal.isEmpty()) {
            return Reply.missing(AnimalPage.MISSING);
        }
        return switch (read(animal.get(), form)) {
            case Entry.Understood<Typed>(var typed) -> {
                var said = form.text("kind").equals("said");
                var written =
                        Written.<Edit<? extends Statement>>to(
                                holding,
                                (said
                                                ? "Wrote down what was said of "
                                                : "Wrote down what was seen of ")
                                        + animal.get().tag(),
                                tx ->
                                        said
                                                ? new Statements(tx)
                                                        .claim(
                                                                animal.get().id(),
                                                                typed.genes(),
                                                                typed.witness())
                                                : new Statements(tx)
                                                        .see(
                                                                animal.get().id(),
                                                                typed.genes(),
                                                                typed.witness(),
                                                                typed.doubted()));
                yield answer(
                        written,
                        animal.get(),
                        form,
                        faulty -> StatementView.ofNew(animal.get(), faulty),
                        "Written down.");
            }
            case Entry.Faulty<Typed>(var faulty) ->
                    Reply.faulty(StatementView.ofNew(animal.get(), faulty));
        };
    }

    @GetMapping(ONE)
    public Reply show(@PathVariable long id, @PathVariable long statement) {
        return find(id).flatMap(
                        animal ->
                                find(animal, statement)
                                        .<Reply>map(
                                                found ->
                                                        Reply.show(
                                                                StatementView.of(
                                                                        animal,
                                                                        found,
                                                                        filled(found)))))
                .orElseGet(StatementPage::missing);
    }

    @PostMapping(ONE)
    public Reply correct(@PathVariable long id, @PathVariable long statement, Form form) {
        var animal = find(id);
        var current = animal.flatMap(found -> find(found, statement));
        if (animal.isEmpty() || current.isEmpty()) {
            return missing();
        }
        return switch (read(animal.get(), form)) {
            case Entry.Understood<Typed>(var typed) -> {
                var changed = ofVersion(current.get(), typed, version(form));
                var written =
                        Written.<Edit<? extends Statement>>to(
                                holding,
                                "Corrected what is on record of " + animal.get().tag(),
                                tx -> new Statements(tx).update(changed));
                yield answer(
                        written,
                        animal.get(),
                        form,
                        faulty -> StatementView.of(animal.get(), changed, faulty),
                        "Corrected.");
            }
            case Entry.Faulty<Typed>(var faulty) ->
                    Reply.faulty(StatementView.of(animal.get(), current.get(), faulty));
        };
    }

    @PostMapping(ONE + "/remove")
    public Reply remove(@PathVariable long id, @PathVariable long statement, Form form) {
        var animal = find(id);
        if (animal.isEmpty()) {
            return missing();
        }
        var written =
                Written.to(
                        holding,
                        "Removed a statement of " + animal.get().tag(),
                        tx ->
                                new Statements(tx)
                                        .remove(new StatementId(statement), version(form))
                                        .saved()
                                        .isPresent());
        return written.going(
                "/collection/" + id,
                written.result()
                        ? "Removed."
                        : "Not removed: it was changed or removed in the meantime.");
    }

    private Reply answer(
            Written<Edit<? extends Statement>> written,
            Animal animal,
            Form form,
            Function<Form, StatementView> again,
            String said) {
        return switch (written.result()) {
            case Edit.Saved<? extends Statement> _ -> written.going(AnimalHead.path(animal), said);
            case Edit.Stale<? extends Statement>(var theirs) ->
                    Reply.conflictWith(again.apply(mineOver(theirs, form)));
            case Edit.Refused<? extends Statement>(var refused) ->
                    Reply.faulty(again.apply(problems.beside(form, refused, StatementPage::field)));
        };
    }

    private static Form mineOver(Statement theirs, Form form) {
        return form.with("version", Long.toString(theirs.version()))
                .withFault(
                        "line",
                        "Somebody else changed it to “%s” meanwhile. Save to put yours in its place."
                                .formatted(theirs.genes().written()));
    }

    private static String field(Problem problem) {
        return ProblemWords.fieldOf(problem) == Field.SAID_OR_SEEN_ON ? "saidOn" : "line";
    }

    private Entry<Typed> read(Animal animal, Form form) {
        var fields = new Fields(form);
        var on = fields.anyDate("saidOn");
        var genes =
                switch (LineEntry.read(holding.lines(animal.species()), form.text("line"))) {
                    case LineEntry.Understood(var text, _, _) -> Optional.of(text);
                    case LineEntry.Blank() -> {
                        fields.faulty("line", "Write the genes, or Normal if it shows none.");
                        yield Optional.<GeneText>empty();
                    }
                    case LineEntry.Unclear(_, var faults) -> {
                        fields.faulty("line", ReadingWords.of(faults.getFirst()));
                        yield Optional.<GeneText>empty();
                    }
                };
        return fields.into(
                () ->
                        new Typed(
                                genes.orElseThrow(),
                                new Witness(on.value(), form.text("by"), form.text("source")),
                                fields.ticked("doubted")));
    }

    private static Form filled(Statement statement) {
        var texts = new LinkedHashMap<String, String>();
        texts.put("version", Long.toString(statement.version()));
        texts.put("line", statement.genes().written());
        texts.put("saidOn", statement.witness().on().map(Object::toString).orElse(""));
        texts.put("by", statement.witness().by());
        texts.put("source", statement.witness().source());
        if (statement instanceof Statement.Sighting sighting && sighting.doubted()) {
            texts.put("doubted", "yes");
        }
        return Form.of(texts);
    }

    private static Statement ofVersion(Statement current, Typed typed, long version) {
        return switch (current) {
            case Statement.Claim claim ->
                    new Statement.Claim(
                            claim.id(), version, claim.animal(), typed.genes(), typed.witness());
            case Statement.Sighting seen ->
                    new Statement.Sighting(
                            seen.id(),
                            version,
                            seen.animal(),
                            typed.genes(),
                            typed.witness(),
                            typed.doubted());
        };
    }

    private Optional<Animal> find(long id) {
        return holding.database().read(tx -> new Animals(tx).find(new AnimalId(id)));
    }

    private Optional<Statement> find(Animal animal, long statement) {
        return holding.database()
                .read(tx -> new Statements(tx).find(new StatementId(statement)))
                .filter(found -> found.animal().equals(animal.id()));
    }

    private static long version(Form form) {
        var text = form.text("version");
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 0;
    }

    private static Reply missing() {
        return Reply.missing("That statement is not on record any more.");
    }

    private record Typed(GeneText genes, Witness witness, boolean doubted) {}
}
