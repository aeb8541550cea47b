package clutchwright.app.incubators;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.loggers.Watched;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SensorWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.incubators.Sensors;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// One sensor: its trace, what it is, and the files of its logger.
@Controller
public class SensorPage {

    static final String ONE = "/eggs/sensors/{id:[0-9]{1,18}}";
    static final String NONE = "There is no such sensor on record.";

    private final Holding holding;
    private final Preferring preferring;

    SensorPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(ONE)
    public Reply show(@PathVariable long id, Form query) {
        return with(
                id,
                sensor ->
                        Reply.show(
                                view(sensor, Days.of(query), SensorForm.of(sensor), Form.EMPTY)));
    }

    @PostMapping(ONE)
    public Reply change(@PathVariable long id, Form form) {
        return with(id, sensor -> change(sensor, form));
    }

    private Reply change(Sensor old, Form form) {
        var read =
                holding.database()
                        .read(
                                tx -> {
                                    var incubator =
                                            new Incubators(tx).theIncubator(old.incubator());
                                    return SensorForm.read(
                                            form,
                                            incubator,
                                            old.id(),
                                            SensorForm.places(tx, incubator));
                                });
        return switch (read) {
            case Entry.Faulty<Sensor>(var faulty) -> faulty(old, faulty);
            case Entry.Understood<Sensor>(var asked) -> {
                var written =
                        Written.to(
                                holding,
                                "Changed the sensor " + asked.name(),
                                tx -> new Sensors(tx).update(asked));
                yield switch (written.result()) {
                    case Edit.Saved<Sensor>(var saved) ->
                            written.going(path(saved), "%s is changed.".formatted(saved.name()));
                    case Edit.Refused<Sensor>(var problems) ->
                            faulty(old, SensorForm.refused(form, problems, formats()));
                    case Edit.Stale<Sensor> _ ->
                            Reply.conflict("Somebody else changed this sensor in the meantime.");
                };
            }
        };
    }

    @PostMapping(ONE + "/remove")
    public Reply remove(@PathVariable long id) {
        return with(
                id,
                sensor -> {
                    var written =
                            Written.to(
                                    holding,
                                    "Removed the sensor " + sensor.name(),
                                    tx -> new Sensors(tx).remove(sensor));
                    return written.going(
                            IncubatorsPage.PATH + "/" + sensor.incubator().value(),
                            "%s is no longer on record; its readings come back if you undo this."
                                    .formatted(sensor.name()));
                });
    }

    private Reply faulty(Sensor sensor, Form faulty) {
        return Reply.faulty(view(sensor, Days.of(Form.EMPTY), faulty, Form.EMPTY));
    }

    /// With what is wrong with a file that was sent.
    SensorView withFile(Sensor sensor, Form file) {
        return view(sensor, Days.of(Form.EMPTY), SensorForm.of(sensor), file);
    }

    Reply with(long id, Function<Sensor, Reply> reply) {
        return holding.database()
                .read(tx -> new Sensors(tx).find(new SensorId(id)))
                .map(reply)
                .orElseGet(() -> Reply.missing(NONE));
    }

    private SensorView view(Sensor sensor, int days, Form form, Form file) {
        var zone = holding.database().clock().getZone();
        var words = new SensorWords(formats(), zone);
        return holding.database()
                .read(
                        tx ->
                                new SensorView(
                                        Trace.of(tx, Watched.of(tx, sensor), days, zone, formats()),
                                        days,
                                        form,
                                        file,
                                        SensorForm.places(
                                                tx,
                                                new Incubators(tx)
                                                        .theIncubator(sensor.incubator())),
                                        new Readings(tx)
                                                .files(sensor.id()).stream()
                                                        .map(
                                                                each ->
                                                                        SensorView.words(
                                                                                each,
                                                                                words,
                                                                                formats()
                                                                                        .count(
                                                                                                each
                                                                                                        .readings(),
                                                                                                "reading",
                                                                                                "readings")))
                                                        .toList()));
    }

    static String path(Sensor sensor) {
        return "/eggs/sensors/" + sensor.id().value();
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
