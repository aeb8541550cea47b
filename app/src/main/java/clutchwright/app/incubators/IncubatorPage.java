package clutchwright.app.incubators;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.IncubatorId;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// One incubator with the traces of its sensors.
@Controller
public class IncubatorPage {

    private static final String ONE = IncubatorsPage.PATH + "/{id:[0-9]{1,18}}";
    private static final String NONE = "There is no such incubator on record.";

    private final Holding holding;
    private final Preferring preferring;

    IncubatorPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(ONE)
    public Reply show(@PathVariable long id, Form query) {
        return with(
                id,
                incubator ->
                        Reply.show(
                                view(
                                        incubator,
                                        Days.of(query),
                                        IncubatorForm.of(incubator, formats()),
                                        SensorForm.empty())));
    }

    @PostMapping(ONE)
    public Reply change(@PathVariable long id, Form form) {
        return with(
                id,
                incubator ->
                        switch (IncubatorForm.read(form, formats())) {
                            case Entry.Faulty<IncubatorForm>(var faulty) ->
                                    faulty(incubator, faulty);
                            case Entry.Understood<IncubatorForm>(var asked) ->
                                    change(incubator, form, asked);
                        });
    }

    private Reply change(Incubator old, Form form, IncubatorForm asked) {
        var changed =
                new Incubator(
                        old.id(),
                        SensorForm.version(form),
                        asked.name(),
                        asked.setPoint(),
                        asked.notes());
        var written =
                Written.to(
                        holding,
                        "Changed the incubator " + asked.name(),
                        tx -> new Incubators(tx).update(changed));
        return switch (written.result()) {
            case Edit.Saved<Incubator>(var saved) ->
                    written.going(path(saved), "%s is changed.".formatted(saved.name()));
            case Edit.Refused<Incubator>(var problems) ->
                    faulty(
                            old,
                            form.withFault(
                                    "name",
                                    new ProblemWords(_ -> "", formats()).of(problems.getFirst())));
            case Edit.Stale<Incubator> _ ->
                    Reply.conflict("Somebody else changed this incubator in the meantime.");
        };
    }

    @PostMapping(ONE + "/remove")
    public Reply remove(@PathVariable long id, Form form) {
        return with(
                id,
                incubator -> {
                    var written =
                            Written.to(
                                    holding,
                                    "Removed the incubator " + incubator.name(),
                                    tx ->
                                            new Incubators(tx)
                                                    .remove(
                                                            new Incubator(
                                                                    incubator.id(),
                                                                    SensorForm.version(form),
                                                                    incubator.name(),
                                                                    incubator.setPointCelsius(),
                                                                    incubator.notes())));
                    return switch (written.result()) {
                        case Edit.Saved<Incubator>(var gone) ->
                                written.going(
                                        IncubatorsPage.PATH,
                                        "%s is no longer on record.".formatted(gone.name()));
                        case Edit.Refused<Incubator>(var problems) ->
                                faulty(
                                        incubator,
                                        IncubatorForm.of(incubator, formats())
                                                .withFault(
                                                        "name",
                                                        new ProblemWords(_ -> "", formats())
                                                                .of(problems.getFirst())));
                        case Edit.Stale<Incubator> _ ->
                                Reply.conflict(
                                        "Somebody else changed this incubator in the meantime.");
                    };
                });
    }

    @PostMapping(ONE + "/sensors")
    public Reply addSensor(@PathVariable long id, Form form) {
        return with(
                id,
                incubator ->
                        switch (SensorForm.read(
                                form,
                                incubator,
                                new SensorId(0),
                                holding.database().read(tx -> SensorForm.places(tx, incubator)))) {
                            case Entry.Faulty<Sensor>(var faulty) ->
                                    faultySensor(incubator, faulty);
                            case Entry.Understood<Sensor>(var sensor) ->
                                    addSensor(incubator, form, sensor);
                        });
    }

    private Reply addSensor(Incubator incubator, Form form, Sensor sensor) {
        var written =
                Written.to(
                        holding,
                        "Added the sensor %s to %s".formatted(sensor.name(), incubator.name()),
                        tx -> new Sensors(tx).add(sensor));
        return switch (written.result()) {
            case Edit.Saved<Sensor>(var saved) ->
                    written.going(
                            SensorPage.path(saved), "%s is on record.".formatted(saved.name()));
            case Edit.Refused<Sensor>(var problems) ->
                    faultySensor(incubator, SensorForm.refused(form, problems, formats()));
            case Edit.Stale<Sensor> _ -> Reply.conflict("The sensor was changed.");
        };
    }

    private Reply faulty(Incubator incubator, Form faulty) {
        return Reply.faulty(view(incubator, Days.of(Form.EMPTY), faulty, SensorForm.empty()));
    }

    private Reply faultySensor(Incubator incubator, Form faulty) {
        return Reply.faulty(
                view(
                        incubator,
                        Days.of(Form.EMPTY),
                        IncubatorForm.of(incubator, formats()),
                        faulty));
    }

    private Reply with(long id, Function<Incubator, Reply> reply) {
        return holding.database()
                .read(tx -> new Incubators(tx).find(new IncubatorId(id)))
                .map(reply)
                .orElseGet(() -> Reply.missing(NONE));
    }

    private IncubatorView view(Incubator incubator, int days, Form form, Form sensor) {
        return holding.database()
                .read(
                        tx ->
                                new IncubatorView(
                                        IncubatorCard.of(
                                                tx,
                                                incubator,
                                                days,
                                                holding.database().clock().getZone(),
                                                formats()),
                                        BestSetting.of(
                                                tx,
                                                incubator,
                                                holding.today(),
                                                holding.database().clock().getZone(),
                                                formats()),
                                        days,
                                        form,
                                        sensor,
                                        SensorForm.places(tx, incubator)));
    }

    private static String path(Incubator incubator) {
        return IncubatorsPage.PATH + "/" + incubator.id().value();
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
