package clutchwright.app.collection;

import clutchwright.app.collection.AnimalFormView.AnimalClash;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Surprise;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// Adds an animal, changes one, and takes one off the record.
@Controller
public class AnimalFormPage {

    private static final String NEW = "/collection/new";
    private static final String ANIMAL = "/collection/{id:[0-9]{1,18}}";

    private final Holding holding;
    private final AnimalSaving saving;
    private final Problems problems;

    AnimalFormPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.problems = new Problems(holding, preferring);
        this.saving = new AnimalSaving(holding, problems);
    }

    @GetMapping(NEW)
    public Reply blank() {
        return Reply.show(viewOfNew(AnimalFilling.ofNew(holding), false));
    }

    @PostMapping(NEW)
    public Reply add(Form form) {
        var written = Written.to(holding, "Added " + form.text("tag"), tx -> saving.add(tx, form));
        return switch (written.result()) {
            case AnimalSaving.Result.Saved(var animal) ->
                    written.going(AnimalHead.path(animal), said(animal, "added"));
            case AnimalSaving.Result.Faulty(var faulty, var asks) ->
                    Reply.faulty(viewOfNew(faulty, asks));
            case AnimalSaving.Result.Stale _, AnimalSaving.Result.Gone() ->
                    Reply.missing(AnimalPage.MISSING);
        };
    }

    @GetMapping(ANIMAL + "/edit")
    public Reply edit(@PathVariable long id) {
        return holding.database()
                .read(
                        tx ->
                                new Animals(tx)
                                        .find(new AnimalId(id))
                                        .map(
                                                animal ->
                                                        view(
                                                                animal,
                                                                AnimalFilling.of(tx, animal),
                                                                List.of(),
                                                                false)))
                .<Reply>map(Reply::show)
                .orElseGet(() -> Reply.missing(AnimalPage.MISSING));
    }

    @PostMapping(ANIMAL + "/edit")
    public Reply change(@PathVariable long id, Form form) {
        var animal = new AnimalId(id);
        var written =
                Written.to(
                        holding,
                        "Changed " + form.text("tag"),
                        tx -> saving.change(tx, animal, form));
        return switch (written.result()) {
            case AnimalSaving.Result.Saved(var saved) ->
                    written.going(AnimalHead.path(saved), said(saved, "saved"));
            case AnimalSaving.Result.Faulty(var faulty, var asks) ->
                    find(animal)
                            .<Reply>map(found -> Reply.faulty(view(found, faulty, List.of(), asks)))
                            .orElseGet(() -> Reply.missing(AnimalPage.MISSING));
            case AnimalSaving.Result.Stale(var theirs, var clashes) ->
                    Reply.conflictWith(
                            view(
                                    theirs,
                                    form.with("version", Long.toString(theirs.version())),
                                    clashes,
                                    false));
            case AnimalSaving.Result.Gone() -> Reply.missing(AnimalPage.MISSING);
        };
    }

    /// What was done, and whether what is on record now can all be true.
    private String said(Animal animal, String done) {
        var line = "%s %s.".formatted(animal.tag(), done);
        return Surprise.of(holding, animal.id())
                .map(sentence -> line + " " + sentence)
                .orElse(line);
    }

    /// Only while nothing refers to it.
    @PostMapping(ANIMAL + "/remove")
    public Reply remove(@PathVariable long id, Form form) {
        var animal = new AnimalId(id);
        var before = find(animal);
        if (before.isEmpty()) {
            return Reply.missing(AnimalPage.MISSING);
        }
        var written =
                Written.to(
                        holding,
                        "Removed " + before.get().tag(),
                        tx -> new Animals(tx).remove(animal, AnimalSaving.version(form)));
        return switch (written.result()) {
            case Edit.Saved<Animal>(var removed) ->
                    written.going("/collection", removed.tag() + " is off the record.");
            case Edit.Stale<Animal> _ ->
                    Reply.conflict(before.get().tag() + " was changed by somebody else.");
            case Edit.Refused<Animal>(var refused) ->
                    Reply.faulty(
                            holding.database()
                                    .read(
                                            tx ->
                                                    view(
                                                            before.get(),
                                                            problems.beside(
                                                                    AnimalFilling.of(
                                                                            tx, before.get()),
                                                                    refused,
                                                                    _ -> "remove"),
                                                            List.of(),
                                                            false)));
        };
    }

    private AnimalFormView viewOfNew(Form form, boolean asks) {
        return new AnimalFormView(
                "Add an animal", NEW, "/collection", true, species(), List.of(), asks, form);
    }

    private AnimalFormView view(Animal animal, Form form, List<AnimalClash> clashes, boolean asks) {
        return new AnimalFormView(
                "Edit " + animal.tag(),
                AnimalHead.path(animal) + "/edit",
                AnimalHead.path(animal),
                false,
                species(),
                clashes,
                asks,
                form);
    }

    private List<Choice> species() {
        return Catalogue.shippedSpecies().stream()
                .map(id -> new Choice(id, holding.catalogue(id).species().commonName()))
                .toList();
    }

    private java.util.Optional<Animal> find(AnimalId animal) {
        return holding.database().read(tx -> new Animals(tx).find(animal));
    }
}
