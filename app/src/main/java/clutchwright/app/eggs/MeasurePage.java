package clutchwright.app.eggs;

import clutchwright.app.loggers.PairedLog;
import clutchwright.app.loggers.TemperatureLog.Scale;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.ConductanceWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.EmbryoHeat.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/// A logger's file of a box is handed in, and it is said what the box lets out. Nothing is kept.
@Controller
public class MeasurePage {

    private static final String PATH = "/eggs/box/measure";
    private static final int MOST_EGGS = 60;
    private static final long MOST_BYTES = 20L << 20;

    private final Preferring preferring;

    MeasurePage(Preferring preferring) {
        this.preferring = preferring;
    }

    @GetMapping(PATH)
    public Reply show(Form query) {
        var form =
                Form.EMPTY
                        .with("eggs", query.text("eggs").isEmpty() ? "8" : query.text("eggs"))
                        .with("grown", "85")
                        .with("probe", Probe.BOX.name())
                        .with("scale", Scale.CELSIUS.name())
                        .with(
                                "grams",
                                formats().decimals(formats().ofGrams(EmbryoHeat.EGG_GRAMS), 1));
        return Reply.show(new MeasureView(form, Optional.empty()));
    }

    @PostMapping(PATH)
    public Reply measure(@RequestParam("file") MultipartFile file, Form form) throws IOException {
        var fields = new Fields(form);
        var probe = fields.choice("probe", Probe.class);
        var scale = fields.choice("scale", Scale.class);
        var eggs = fields.whole("eggs", 1, MOST_EGGS);
        var grown = fields.number("grown", 0, 100);
        var grams =
                fields.number(
                        "grams",
                        Math.rint(formats().ofGrams(20)),
                        Math.rint(formats().ofGrams(250)));
        var set =
                perhaps(
                        fields,
                        form,
                        "set",
                        Math.rint(formats().ofCelsius(15)),
                        Math.rint(formats().ofCelsius(45)));
        var offset = perhaps(fields, form, "offset", -5, 5);
        if (file.isEmpty() || file.getSize() > MOST_BYTES) {
            fields.faulty(
                    "file",
                    file.isEmpty()
                            ? "Choose the logger’s file."
                            : "The file is larger than 20 MB: a week of one box is enough.");
        }
        var read =
                fields.into(
                        () ->
                                new Asked(
                                        new BoxMeasure(
                                                probe.value(),
                                                set.value().map(formats()::celsiusOf),
                                                eggs.value(),
                                                grown.value() / 100,
                                                offset.value(),
                                                formats().gramsOf(grams.value()),
                                                Optional.empty(),
                                                Shape.LOGISTIC),
                                        scale.value()));
        return switch (read) {
            case Entry.Faulty<Asked>(var faulty) -> faulty(faulty);
            case Entry.Understood<Asked>(var asked) -> measure(file, form, asked);
        };
    }

    private static Fields.Read<Optional<Double>> perhaps(
            Fields fields, Form form, String field, double least, double most) {
        return form.text(field).isBlank()
                ? fields.understood(Optional.empty())
                : fields.number(field, least, most).map(Optional::of);
    }

    private Reply measure(MultipartFile file, Form form, Asked asked) throws IOException {
        var name = Optional.ofNullable(file.getOriginalFilename()).orElse("");
        var held = Files.createTempFile("logger", ending(name));
        try {
            file.transferTo(held);
            return switch (PairedLog.read(held, asked.scale())) {
                case PairedLog.Refused(var faults) ->
                        faulty(form.withFault("file", said(name, held, faults.getFirst())));
                case PairedLog.Understood log -> measure(name, form, asked.measure(), log);
            };
        } finally {
            Files.deleteIfExists(held);
        }
    }

    private Reply measure(String name, Form form, BoxMeasure measure, PairedLog.Understood log) {
        if (log.hasIncubator() == measure.setPointCelsius().isPresent()) {
            return faulty(
                    form.withFault(
                            "set",
                            log.hasIncubator()
                                    ? "The file has a column of the incubator’s air: leave this empty."
                                    : "The file has no column of the incubator’s air: write what it is set to."));
        }
        return switch (measure.of(log)) {
            case BoxMeasure.Result.Refused(var why) -> faulty(form.withFault("file", upper(why)));
            case BoxMeasure.Result.Found found ->
                    Reply.show(new MeasureView(form, Optional.of(measured(name, measure, found))));
        };
    }

    private MeasureView.Measured measured(
            String name, BoxMeasure measure, BoxMeasure.Result.Found found) {
        var told = found.told();
        var figure = String.format(Locale.ROOT, "%.2f", told.conductance().wattsPerKelvin());
        var words = ConductanceWords.told(told, found.balance().hours().size());
        return new MeasureView.Measured(
                name,
                words,
                found.notes(),
                RiseDrawing.draw(
                        found.balance(), 1 / told.conductance().wattsPerKelvin(), words, formats()),
                "/eggs/box?tub=OWN&ua=%s&eggs=%d".formatted(figure, measure.eggs()),
                "/settings/eggs?ua=" + figure);
    }

    private static Reply faulty(Form faulty) {
        return Reply.faulty(new MeasureView(faulty, Optional.empty()));
    }

    /// The file under the name that its owner knows.
    private static String said(String name, Path held, String fault) {
        return upper(fault.replace(held.getFileName().toString(), name));
    }

    private static String upper(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /// By which kinds of tables are told apart.
    private static String ending(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(".xlsx") ? ".xlsx" : ".csv";
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    private record Asked(BoxMeasure measure, Scale scale) {}
}
