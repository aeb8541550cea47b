package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import java.util.function.BiFunction;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// The short forms on an animal's page: weighed, fed, shed, a note on its health.
@Controller
public class KeepingPage {

    private static final String ANIMAL = "/collection/{id:[0-9]{1,18}}";

    private final Holding holding;
    private final Preferring preferring;
    private final AnimalSheet sheet;

    KeepingPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
        this.sheet = new AnimalSheet(holding, preferring);
    }

    @PostMapping(ANIMAL + "/weighed")
    public Reply weigh(@PathVariable long id, Form form) {
        var formats = new Formats(preferring.preferences());
        var fields = new Fields(form);
        var on = fields.date("weighedOn");
        var weight = fields.number("weight", 0.1, 200_000);
        return save(
                id,
                form,
                fields.into(
                        () ->
                                new Doing(
                                        "Weighed",
                                        "weighed.",
                                        (husbandry, animal) ->
                                                husbandry.weigh(
                                                        animal,
                                                        on.value(),
                                                        formats.gramsOf(weight.value()),
                                                        form.text("weighNote")))));
    }

    @PostMapping(ANIMAL + "/fed")
    public Reply feed(@PathVariable long id, Form form) {
        var fields = new Fields(form);
        var on = fields.date("fedOn");
        var taken = !form.text("taken").equals("no");
        return save(
                id,
                form,
                fields.into(
                        () ->
                                new Doing(
                                        taken ? "Fed" : "Refused a meal",
                                        taken ? "fed." : "refused its meal.",
                                        (husbandry, animal) ->
                                                husbandry.feed(
                                                        animal,
                                                        on.value(),
                                                        form.text("prey"),
                                                        taken,
                                                        form.text("fedNote")))));
    }

    @PostMapping(ANIMAL + "/shed")
    public Reply shed(@PathVariable long id, Form form) {
        var fields = new Fields(form);
        var on = fields.date("shedOn");
        var complete = !form.text("complete").equals("no");
        return save(
                id,
                form,
                fields.into(
                        () ->
                                new Doing(
                                        "Shed",
                                        "shed.",
                                        (husbandry, animal) ->
                                                husbandry.shed(
                                                        animal,
                                                        on.value(),
                                                        complete,
                                                        form.text("shedNote")))));
    }

    @PostMapping(ANIMAL + "/noted")
    public Reply note(@PathVariable long id, Form form) {
        var fields = new Fields(form);
        var on = fields.date("notedOn");
        var note = fields.text("note", "Write what you noticed.");
        return save(
                id,
                form,
                fields.into(
                        () ->
                                new Doing(
                                        "Noted its health",
                                        "has a note on its health.",
                                        (husbandry, animal) ->
                                                husbandry.note(animal, on.value(), note.value()))));
    }

    @PostMapping(ANIMAL + "/happenings/remove")
    public Reply remove(@PathVariable long id, Form form) {
        var animal = new AnimalId(id);
        var written =
                Written.to(
                        holding,
                        "Removed a record of " + tag(animal),
                        tx -> {
                            var husbandry = new Husbandry(tx);
                            return husbandry.of(animal).stream()
                                    .filter(happening -> isMeant(happening, form))
                                    .findFirst()
                                    .map(husbandry::remove)
                                    .isPresent();
                        });
        return written.going(
                "/collection/" + id,
                written.result() ? "Removed." : "It was not on record any more.");
    }

    private static boolean isMeant(Happening happening, Form form) {
        return KeepingPart.kind(happening).equals(form.text("kind"))
                && Long.toString(happening.id()).equals(form.text("row"));
    }

    private Reply save(long id, Form form, Entry<Doing> entry) {
        var animal = new AnimalId(id);
        return switch (entry) {
            case Entry.Understood<Doing>(var doing) -> save(animal, form, doing);
            case Entry.Faulty<Doing>(var faulty) -> again(animal, faulty);
        };
    }

    private Reply save(AnimalId animal, Form form, Doing doing) {
        var tag = tag(animal);
        var written =
                Written.<Edit<? extends Happening>>to(
                        holding,
                        doing.what() + " " + tag,
                        tx -> doing.writing().apply(new Husbandry(tx), animal));
        return switch (written.result()) {
            case Edit.Saved<? extends Happening> _ ->
                    written.going("/collection/" + animal, tag + " " + doing.said());
            case Edit.Stale<? extends Happening> _ -> Reply.conflict(tag + " was changed.");
            case Edit.Refused<? extends Happening>(var problems) ->
                    again(
                            animal,
                            new Problems(holding, preferring)
                                    .beside(
                                            form,
                                            problems,
                                            problem -> field(ProblemWords.fieldOf(problem))));
        };
    }

    private Reply again(AnimalId animal, Form faulty) {
        return sheet.view(animal, faulty, "")
                .<Reply>map(Reply::faulty)
                .orElseGet(() -> Reply.missing(AnimalPage.MISSING));
    }

    private String tag(AnimalId animal) {
        return holding.database()
                .read(tx -> new Animals(tx).find(animal))
                .map(Animal::tag)
                .map(Object::toString)
                .orElse("an animal");
    }

    private static String field(Field field) {
        return switch (field) {
            case WEIGHED -> "weighedOn";
            case GRAMS -> "weight";
            case FED -> "fedOn";
            case SHED -> "shedOn";
            case NOTED -> "notedOn";
            default -> "note";
        };
    }

    /// @param what for the journal, before the animal's tag
    /// @param said for the keeper, after the animal's tag
    private record Doing(
            String what,
            String said,
            BiFunction<Husbandry, AnimalId, Edit<? extends Happening>> writing) {}
}
