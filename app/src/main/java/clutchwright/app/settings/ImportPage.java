package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.FileWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ImportWords;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.animals.Animals;
import clutchwright.records.exchange.ColumnMatching;
import clutchwright.records.exchange.ImportOutcome;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/// Brings animals in from a file: choose it, say what its columns hold, see what would happen,
/// then all of it or nothing.
@Controller
public class ImportPage {

    static final String PATH = "/settings/import";

    private static final String FILE = PATH + "/{id:[0-9a-f]{32}}";
    private static final String GONE =
            "That file is not at hand any more: it was brought in, put away, or lay too long.";

    private final Holding holding;
    private final Preferring preferring;
    private final ImportDesk desk;

    ImportPage(Holding holding, Preferring preferring, ImportDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.desk = desk;
    }

    @GetMapping(PATH)
    public Reply choose() {
        return Reply.show(new ImportChooseView(Form.EMPTY));
    }

    @PostMapping(PATH)
    public Reply take(
            @RequestParam(name = "file", required = false) Optional<MultipartFile> sent, Form form)
            throws IOException {
        var name = sent.map(MultipartFile::getOriginalFilename).orElse("");
        if (name.isBlank()) {
            return Reply.faulty(
                    new ImportChooseView(form.withFault("file", "Choose a file to bring in.")));
        }
        var file = desk.take(name, path -> sent.orElseThrow().transferTo(path));
        if (file.review() instanceof ImportReview.Unreadable(var fault)) {
            desk.putAway(file);
            return Reply.faulty(
                    new ImportChooseView(
                            form.withFault(
                                    "file",
                                    "%s: %s"
                                            .formatted(
                                                    file.name(), FileWords.of(fault, formats())))));
        }
        return Reply.go(file(file));
    }

    @GetMapping(FILE)
    public Reply review(@PathVariable String id, Form query) {
        return with(
                id,
                file ->
                        file.job().filter(ImportPage::mattersStill).isPresent()
                                ? Reply.go(file(file) + "/progress")
                                : Reply.show(
                                        ImportReviewView.of(
                                                file, file.review(), query, words(), formats())));
    }

    @PostMapping(FILE)
    public Reply change(@PathVariable String id, Form form) {
        return with(
                id,
                file -> {
                    file.ask(ImportForm.read(file, matching(file), form));
                    return Reply.go(file(file) + "#columns");
                });
    }

    @PostMapping(FILE + "/bring-in")
    public Reply bringIn(@PathVariable String id) {
        return with(
                id,
                file -> {
                    file.bringIn();
                    return file.job().isPresent()
                            ? Reply.go(file(file) + "/progress")
                            : Reply.go(file(file));
                });
    }

    @GetMapping(FILE + "/progress")
    public Reply progress(@PathVariable String id) {
        return onItsWay(id, false);
    }

    /// The bar alone, fetched again and again while it runs.
    @GetMapping(FILE + "/bar")
    public Reply bar(@PathVariable String id) {
        return onItsWay(id, true);
    }

    private Reply onItsWay(String id, boolean piece) {
        return with(
                id,
                file ->
                        file.job()
                                .map(ImportJob::state)
                                .map(
                                        state ->
                                                state instanceof ImportJob.State.Running running
                                                        ? Reply.show(
                                                                ImportProgressView.of(
                                                                        file, running, piece))
                                                        : Reply.go(file(file) + "/done"))
                                .orElseGet(() -> Reply.go(file(file))));
    }

    @PostMapping(FILE + "/stop")
    public Reply stop(@PathVariable String id) {
        return with(
                id,
                file -> {
                    file.job().ifPresent(ImportJob::stop);
                    return Reply.go(file(file) + "/progress");
                });
    }

    @GetMapping(FILE + "/done")
    public Reply done(@PathVariable String id) {
        return with(
                id,
                file ->
                        file.job()
                                .map(ImportJob::state)
                                .<Reply>map(
                                        state ->
                                                state instanceof ImportJob.State.Running
                                                        ? Reply.go(file(file) + "/progress")
                                                        : Reply.show(
                                                                ImportDoneView.of(
                                                                        file, state, words())))
                                .orElseGet(() -> Reply.go(file(file))));
    }

    @PostMapping(FILE + "/away")
    public Reply putAway(@PathVariable String id) {
        return with(
                id,
                file -> {
                    if (file.job().filter(ImportJob::isRunning).isPresent()) {
                        return Reply.go(file(file) + "/progress");
                    }
                    desk.putAway(file);
                    return Reply.go(PATH)
                            .saying(file.name() + " is put away. Nothing was changed.");
                });
    }

    private Reply with(String id, Function<FileInHand, Reply> answer) {
        return desk.find(id).map(answer).orElseGet(() -> Reply.missing(GONE));
    }

    private static Optional<ColumnMatching> matching(FileInHand file) {
        return file.review() instanceof ImportReview.OfTable(var plan)
                ? Optional.of(plan.matching())
                : Optional.empty();
    }

    /// One that was stopped or refused may be looked at again.
    private static boolean mattersStill(ImportJob job) {
        return job.isRunning()
                || (job.state() instanceof ImportJob.State.Over(var outcome, _)
                        && outcome instanceof ImportOutcome.Applied);
    }

    private static String file(FileInHand file) {
        return PATH + "/" + file.id();
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    private ImportWords words() {
        var formats = formats();
        return new ImportWords(
                new ProblemWords(
                        id ->
                                holding.database()
                                        .read(tx -> new Animals(tx).find(id))
                                        .map(animal -> animal.tag().value())
                                        .orElse("this animal"),
                        formats),
                formats);
    }
}
