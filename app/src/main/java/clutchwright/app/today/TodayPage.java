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
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// The screen that opens first: what there is to do now.
@Controller
public class TodayPage {

    private static final int FEW_MEALS = 8;
    private static final int MANY_MEALS = 500;

    private final Holding holding;
    private final Preferring preferring;

    TodayPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/")
    public Reply show(Form query) {
        var most = query.text("meals").equals("all") ? MANY_MEALS : FEW_MEALS;
        var zone = holding.database().clock().getZone();
        var found = holding.database().read(tx -> Found.read(tx, holding.today(), zone, most));
        return Reply.show(TodayView.of(found, new Formats(preferring.preferences()), zone));
    }

    /// A meal that was offered, with one tap: today, or on the day on which the phone kept the tap.
    @PostMapping("/today/meals/{id:[0-9]{1,18}}")
    public Reply offered(@PathVariable long id, Form form) {
        var animal = holding.database().read(tx -> new Animals(tx).find(new AnimalId(id)));
        if (animal.isEmpty()) {
            return Reply.missing("That animal is not on record.");
        }
        var fields = new Fields(form);
        var on = fields.anyDate("on");
        return switch (fields.into(on::value)) {
            case Entry.Faulty<Optional<LocalDate>>(var faulty) -> refused(faulty.fault("on"));
            case Entry.Understood<Optional<LocalDate>>(var day) ->
                    offered(animal.get(), day.orElseGet(holding::today), form);
        };
    }

    private Reply offered(Animal animal, LocalDate on, Form form) {
        var tag = animal.tag();
        var taken = !form.text("taken").equals("no");
        var written =
                Written.to(
                        holding,
                        taken ? "Fed " + tag : tag + " refused a meal",
                        tx ->
                                new Husbandry(tx)
                                        .feed(animal.id(), on, form.text("prey"), taken, ""));
        return switch (written.result()) {
            case Edit.Saved<Happening.Meal> _ ->
                    written.going(
                            Back.from(form),
                            taken ? tag + " is fed." : tag + " refused; that is on record.");
            case Edit.Refused<Happening.Meal>(var problems) ->
                    refused(
                            HappeningWords.of(
                                    animal, problems, new Formats(preferring.preferences())));
            case Edit.Stale<Happening.Meal> _ -> Reply.conflict("The meal was changed.");
        };
    }

    private static Reply refused(String why) {
        return Reply.faulty(new Notice("Nothing was written", List.of(why)));
    }
}
