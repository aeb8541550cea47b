package clutchwright.app.incubators;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.incubators.LogDesk.InHand;
import clutchwright.app.loggers.LogColumns;
import clutchwright.app.loggers.LogColumns.DayOrder;
import clutchwright.app.loggers.LogSheet;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Readings;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.settings.Settings;
import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/// Brings in a logger's file. Its columns are asked for once; the next file with such headings is
/// understood.
@Controller
public class LogFilePage {

    private static final String REMEMBERED = "log-columns/";
    private static final String GONE =
            "That file is not at hand any more. Choose it on the sensor's page again.";

    private final Holding holding;
    private final Preferring preferring;
    private final SensorPage sensors;
    private final LogDesk desk;

    LogFilePage(Holding holding, Preferring preferring, SensorPage sensors, LogDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.sensors = sensors;
        this.desk = desk;
    }

    @PostMapping(SensorPage.ONE + "/log")
    public Reply take(
            @PathVariable long id,
            @RequestParam(name = "file", required = false) Optional<MultipartFile> sent) {
        return sensors.with(
                id,
                sensor -> {
                    var name = sent.map(MultipartFile::getOriginalFilename).orElse("");
                    if (name.isBlank()) {
                        return faulty(sensor, "Choose the logger's file.");
                    }
                    return switch (open(sent.orElseThrow(), name)) {
                        case LogSheet.Opened.Unreadable(var why) ->
                                faulty(sensor, "%s: %s".formatted(name, why));
                        case LogSheet.Opened.Table(var sheet) ->
                                understood(sensor, desk.take(sensor.id(), name, sheet));
                    };
                });
    }

    private LogSheet.Opened open(MultipartFile sent, String name) {
        try {
            var path = Files.createTempFile("clutchwright-log", ".csv");
            try {
                sent.transferTo(path);
                return LogSheet.open(path, name, formats());
            } finally {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            return new LogSheet.Opened.Unreadable("it cannot be read here.");
        }
    }

    /// At once, where a file with such headings came before.
    private Reply understood(Sensor sensor, InHand held) {
        var remembered =
                holding.database()
                        .read(
                                tx ->
                                        new Settings(tx)
                                                .find(
                                                        REMEMBERED
                                                                + LogColumns.key(
                                                                        held.sheet().headings())))
                        .map(LogColumns::read);
        return remembered
                .map(columns -> bring(sensor, held, columns, form(columns)))
                .orElseGet(() -> Reply.go(path(sensor, held)));
    }

    @GetMapping(SensorPage.ONE + "/log/{mark:[0-9a-f]{32}}")
    public Reply ask(@PathVariable long id, @PathVariable String mark) {
        return sensors.with(
                id,
                sensor ->
                        desk.find(mark, sensor.id())
                                .<Reply>map(
                                        held ->
                                                Reply.show(
                                                        new ColumnsView(
                                                                sensor,
                                                                held,
                                                                form(
                                                                        LogColumns.suggested(
                                                                                held.sheet()
                                                                                        .headings())))))
                                .orElseGet(() -> Reply.missing(GONE)));
    }

    @PostMapping(SensorPage.ONE + "/log/{mark:[0-9a-f]{32}}")
    public Reply bring(@PathVariable long id, @PathVariable String mark, Form form) {
        return sensors.with(
                id,
                sensor ->
                        desk.find(mark, sensor.id())
                                .map(held -> bring(sensor, held, form))
                                .orElseGet(() -> Reply.missing(GONE)));
    }

    private Reply bring(Sensor sensor, InHand held, Form form) {
        return switch (read(form, held.sheet().headings())) {
            case Entry.Faulty<LogColumns>(var faulty) ->
                    Reply.faulty(new ColumnsView(sensor, held, faulty));
            case Entry.Understood<LogColumns>(var columns) -> bring(sensor, held, columns, form);
        };
    }

    private Reply bring(Sensor sensor, InHand held, LogColumns columns, Form form) {
        var zone = holding.database().clock().getZone();
        return switch (held.sheet().readings(columns, zone, sensor)) {
            case LogSheet.Readings.Refused(var faults) ->
                    Reply.faulty(
                            new ColumnsView(
                                    sensor,
                                    held,
                                    form.withFault("temperature", String.join(" ", faults))));
            case LogSheet.Readings.Understood(var readings, var notes) -> {
                desk.putAway(held);
                yield write(sensor, held, columns, readings)
                        .going(
                                SensorPage.path(sensor) + "?days=14",
                                (formats().count(readings.size(), "reading", "readings")
                                                + " of "
                                                + held.name()
                                                + " are on record. "
                                                + String.join(" ", notes))
                                        .strip());
            }
        };
    }

    private Written<Boolean> write(
            Sensor sensor, InHand held, LogColumns columns, List<Reading> readings) {
        return Written.to(
                holding,
                "Brought in %s for the sensor %s".formatted(held.name(), sensor.name()),
                tx -> {
                    new Settings(tx)
                            .put(
                                    REMEMBERED + LogColumns.key(held.sheet().headings()),
                                    columns.held());
                    new Readings(tx).bring(sensor.id(), held.name(), readings);
                    return true;
                });
    }

    private Entry<LogColumns> read(Form form, List<String> headings) {
        var fields = new Fields(form);
        for (var field : List.of("time", "temperature")) {
            if (!headings.contains(form.text(field))) {
                fields.faulty(field, "Choose one of the columns.");
            }
        }
        if (!form.text("date").isEmpty() && !headings.contains(form.text("date"))) {
            fields.faulty("date", "Choose one of the columns.");
        }
        var scale = fields.choice("scale", Scale.class);
        var order = fields.choice("order", DayOrder.class);
        return fields.into(
                () ->
                        new LogColumns(
                                form.text("time"),
                                form.text("date").equals(form.text("time"))
                                        ? ""
                                        : form.text("date"),
                                form.text("temperature"),
                                scale.value(),
                                order.value()));
    }

    private static Form form(LogColumns columns) {
        var values = new LinkedHashMap<String, String>();
        values.put("time", columns.time());
        values.put("date", columns.date());
        values.put("temperature", columns.temperature());
        values.put("scale", columns.scale().name());
        values.put("order", columns.order().name());
        return Form.of(values);
    }

    private Reply faulty(Sensor sensor, String why) {
        return Reply.faulty(sensors.withFile(sensor, Form.EMPTY.withFault("file", why)));
    }

    private static String path(Sensor sensor, InHand held) {
        return SensorPage.path(sensor) + "/log/" + held.mark();
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
