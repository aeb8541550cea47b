package clutchwright.app.incubators;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.OccupancyWords;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Words;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// All incubators with what their sensors said lately.
@Controller
public class IncubatorsPage {

    static final String PATH = "/eggs/incubators";

    private static final int DAYS = 3;

    private final Holding holding;
    private final Preferring preferring;

    IncubatorsPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(PATH)
    public Reply show(Form query) {
        var form = IncubatorForm.empty(formats());
        return Reply.show(
                view(query.text("name").isEmpty() ? form : form.with("name", query.text("name"))));
    }

    @PostMapping(PATH)
    public Reply add(Form form) {
        return switch (IncubatorForm.read(form, formats())) {
            case Entry.Faulty<IncubatorForm>(var faulty) -> Reply.faulty(view(faulty));
            case Entry.Understood<IncubatorForm>(var asked) -> add(form, asked);
        };
    }

    private Reply add(Form form, IncubatorForm asked) {
        var written =
                Written.to(
                        holding,
                        "Added the incubator " + asked.name(),
                        tx ->
                                new Incubators(tx)
                                        .add(asked.name(), asked.setPoint(), asked.notes()));
        return switch (written.result()) {
            case Edit.Saved<Incubator>(var saved) ->
                    written.going(
                            PATH + "/" + saved.id().value(),
                            "%s is on record. Give it a sensor.".formatted(saved.name()));
            case Edit.Refused<Incubator>(var problems) ->
                    Reply.faulty(
                            view(
                                    form.withFault(
                                            "name",
                                            new ProblemWords(_ -> "", formats())
                                                    .of(problems.getFirst()))));
            case Edit.Stale<Incubator> _ -> Reply.conflict("The incubator was changed.");
        };
    }

    private IncubatorsView view(Form form) {
        return holding.database()
                .read(
                        tx ->
                                new IncubatorsView(
                                        new Incubators(tx)
                                                .all().stream()
                                                        .map(
                                                                each ->
                                                                        IncubatorCard.of(
                                                                                tx,
                                                                                each,
                                                                                DAYS,
                                                                                holding.database()
                                                                                        .clock()
                                                                                        .getZone(),
                                                                                formats()))
                                                        .toList(),
                                        Occupancy.of(
                                                        tx,
                                                        holding.today(),
                                                        holding.database().clock().getZone())
                                                .map(this::full),
                                        named(tx),
                                        form));
    }

    private IncubatorsView.Full full(Occupancy occupancy) {
        var formats = formats();
        var words =
                OccupancyWords.of(
                        occupancy.fullest().on(),
                        occupancy.fullest().mean(),
                        occupancy.fullest().from(),
                        occupancy.fullest().to(),
                        occupancy.boxes(),
                        formats);
        return new IncubatorsView.Full(
                words,
                OccupancyDrawing.draw(occupancy, holding.today(), words),
                occupancy.months().stream()
                        .map(
                                day ->
                                        new IncubatorsView.Month(
                                                formats.date(day.on()),
                                                formats.decimals(day.mean(), 1),
                                                OccupancyWords.range(day.from(), day.to())))
                        .toList());
    }

    private static List<String> named(Transaction tx) {
        var known = new Incubators(tx).all().stream().map(each -> Words.key(each.name())).toList();
        return new Boxes(tx)
                .all().stream()
                        .map(Box::incubator)
                        .filter(name -> !name.isBlank() && !known.contains(Words.key(name)))
                        .distinct()
                        .toList();
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
