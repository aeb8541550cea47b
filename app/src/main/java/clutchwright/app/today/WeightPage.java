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
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// A weight written down on Today: of this day, or of the day on which the phone kept it.
@Controller
public class WeightPage {

    private final Holding holding;
    private final Preferring preferring;

    WeightPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @PostMapping("/today/weights/{id:[0-9]{1,18}}")
    public Reply weighed(@PathVariable long id, Form form) {
        var animal = holding.database().read(tx -> new Animals(tx).find(new AnimalId(id)));
        if (animal.isEmpty()) {
            return Reply.missing("That animal is not on record.");
        }
        var fields = new Fields(form);
        var on = fields.anyDate("on");
        var weight = fields.number("weight", 0.1, 200_000);
        return switch (fields.into(
                () -> new Read(on.value().orElseGet(holding::today), weight.value()))) {
            case Entry.Faulty<Read>(var faulty) -> refused(List.copyOf(faulty.faults().values()));
            case Entry.Understood<Read>(var read) -> write(animal.get(), read, Back.from(form));
        };
    }

    private Reply write(Animal animal, Read read, String back) {
        var formats = new Formats(preferring.preferences());
        var written =
                Written.to(
                        holding,
                        "Weighed " + animal.tag(),
                        tx ->
                                new Husbandry(tx)
                                        .weigh(
                                                animal.id(),
                                                read.on(),
                                                formats.gramsOf(read.typed()),
                                                ""));
        return switch (written.result()) {
            case Edit.Saved<Happening.Weighing>(var weighing) ->
                    written.going(
                            back,
                            "%s weighs %s."
                                    .formatted(animal.tag(), formats.weight(weighing.grams())));
            case Edit.Refused<Happening.Weighing>(var problems) ->
                    refused(List.of(HappeningWords.of(animal, problems, formats)));
            case Edit.Stale<Happening.Weighing> _ -> Reply.conflict("The weight was changed.");
        };
    }

    private static Reply refused(List<String> why) {
        return Reply.faulty(new Notice("Nothing was written", why));
    }

    /// @param typed in the keeper's unit
    private record Read(LocalDate on, double typed) {}
}
