package clutchwright.app.labels;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Selecting;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.settings.Settings;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// What labels are wanted, how many sheets that takes, and the sheets themselves.
@Controller
public class LabelsPage {

    static final String PATH = "/labels";

    private final Holding holding;
    private final Selecting selecting;
    private final Preferring preferring;

    LabelsPage(Holding holding, Selecting selecting, Preferring preferring) {
        this.holding = holding;
        this.selecting = selecting;
        this.preferring = preferring;
    }

    @GetMapping(PATH)
    public Reply show(Form form, HttpServletRequest request) {
        var settings = settings();
        return switch (read(form, settings.geometry())) {
            case Entry.Understood<Asked>(var asked) ->
                    Reply.show(view(form, settings, Optional.of(asked), request));
            case Entry.Faulty<Asked>(var faulty) ->
                    form.text("of").isEmpty() && form.text("first").isEmpty()
                            ? Reply.show(view(form, settings, Optional.empty(), request))
                            : Reply.faulty(view(faulty, settings, Optional.empty(), request));
        };
    }

    /// The sheets as a file; what cannot be printed comes back as the form with its faults.
    @GetMapping(PATH + "/sheets.pdf")
    public Object print(Form form, HttpServletRequest request) {
        var settings = settings();
        if (read(form, settings.geometry()) instanceof Entry.Understood<Asked>(var asked)) {
            var labels = labels(asked, settings, request);
            if (!labels.isEmpty()) {
                return file(
                        new LabelSheets(
                                        settings.geometry(),
                                        labels,
                                        asked.first(),
                                        asked.outlined())
                                .pdf("Labels"));
            }
        }
        return show(form, request);
    }

    private static ResponseEntity<byte[]> file(byte[] pdf) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename("labels.pdf").build().toString())
                .cacheControl(CacheControl.noStore())
                .body(pdf);
    }

    private static Entry<Asked> read(Form form, SheetGeometry sheet) {
        var fields = new Fields(form);
        var wanted = Wanted.find(form.text("of"));
        if (wanted.isEmpty()) {
            fields.faulty("of", "Choose what the labels are for.");
        }
        var first =
                form.text("first").isEmpty()
                        ? fields.understood(1)
                        : fields.whole("first", 1, sheet.perSheet());
        var outlined = fields.ticked("outlined");
        return fields.into(() -> new Asked(wanted.orElseThrow(), first.value() - 1, outlined));
    }

    private LabelsView view(
            Form form, LabelSettings settings, Optional<Asked> asked, HttpServletRequest request) {
        var sheet = settings.geometry();
        var job = asked.map(it -> PrintJob.of(sheet, labels(it, settings, request), it.first()));
        var address = address(settings, request);
        return new LabelsView(
                form.text("first").isEmpty() ? form.with("first", "1") : form,
                Choices.of(holding, Wanted.find(form.text("of"))),
                job.filter(it -> it.labels() > 0),
                job.filter(it -> it.labels() == 0)
                        .flatMap(_ -> asked)
                        .map(it -> LabelWords.none(it.wanted()))
                        .orElse(""),
                LabelWords.sheet(settings),
                sheet.perSheet(),
                address,
                OwnAddresses.isOfThisComputerAlone(address));
    }

    private List<Label> labels(Asked asked, LabelSettings settings, HttpServletRequest request) {
        return new Stock(
                        holding,
                        selecting,
                        new Formats(preferring.preferences()),
                        address(settings, request))
                .labels(asked.wanted());
    }

    /// What was set, else the likeliest by which this computer is reached.
    private static String address(LabelSettings settings, HttpServletRequest request) {
        return settings.address()
                .or(() -> OwnAddresses.at(request.getLocalPort()).stream().findFirst())
                .orElse("http://localhost:" + request.getLocalPort());
    }

    private LabelSettings settings() {
        return holding.database().read(tx -> LabelSettings.read(new Settings(tx)));
    }

    /// @param first the first free label of the first sheet, from zero
    private record Asked(Wanted wanted, int first, boolean outlined) {}
}
