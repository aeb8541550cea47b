package clutchwright.app.today;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Notice;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// A hatchling's first shed, with one tap: today, or on the day on which the phone kept the tap.
@Controller
public class ShedPage {

    private final Holding holding;
    private final Preferring preferring;

    ShedPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @PostMapping("/today/sheds/{id:[0-9]{1,18}}")
    public Reply shed(@PathVariable long id, Form form) {
        var animal = holding.database().read(tx -> new Animals(tx).find(new AnimalId(id)));
        if (animal.isEmpty()) {
            return Reply.missing("That animal is not on record.");
        }
        var fields = new Fields(form);
        var on = fields.anyDate("on");
        return switch (fields.into(on::value)) {
            case Entry.Faulty<Optional<LocalDate>>(var faulty) -> refused(faulty.fault("on"));
            case Entry.Understood<Optional<LocalDate>>(var day) ->
                    write(
                            animal.get(),
                            day.orElseGet(holding::today),
                            !form.text("complete").equals("no"),
                            Back.from(form));
        };
    }

    private Reply write(Animal animal, LocalDate on, boolean complete, String back) {
        var tag = animal.tag();
        var written =
                Written.to(
                        holding,
                        tag + " shed",
                        tx -> new Husbandry(tx).shed(animal.id(), on, complete, ""));
        return switch (written.result()) {
            case Edit.Saved<Happening.Shed> _ ->
                    written.going(back, tag + (complete ? " shed whole." : " shed in pieces."));
            case Edit.Refused<Happening.Shed>(var problems) ->
                    refused(
                            HappeningWords.of(
                                    animal, problems, new Formats(preferring.preferences())));
            case Edit.Stale<Happening.Shed> _ -> Reply.conflict("The shed was changed.");
        };
    }

    private static Reply refused(String why) {
        return Reply.faulty(new Notice("Nothing was written", List.of(why)));
    }
}
