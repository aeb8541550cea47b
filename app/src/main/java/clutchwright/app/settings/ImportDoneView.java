package clutchwright.app.settings;

import clutchwright.app.holding.Written;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.ImportWords;
import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.Problem;
import java.util.List;
import java.util.Optional;

/// What came of an import.
///
/// @param applied whether the collection was changed
/// @param sentences what happened, in order
/// @param problems what stood against it, each with its place
/// @param undo where it is taken back; blank where there is nothing to take back
public record ImportDoneView(
        String id,
        String title,
        boolean applied,
        List<String> sentences,
        List<String> problems,
        String undo)
        implements View {

    private static final int MOST_PROBLEMS = 50;

    public ImportDoneView {
        sentences = List.copyOf(sentences);
        problems = List.copyOf(problems);
    }

    static ImportDoneView of(FileInHand file, ImportJob.State state, ImportWords words) {
        return switch (state) {
            case ImportJob.State.Over(ImportOutcome.Applied counts, var change) ->
                    new ImportDoneView(
                            file.id(),
                            "Brought in",
                            true,
                            List.of(words.broughtIn(file.name(), counts)),
                            List.of(),
                            change.map(Written::undo).orElse(""));
            case ImportJob.State.Over(ImportOutcome.Cancelled(), _) ->
                    not(file, "Stopped", List.of("Nothing was changed."), List.of());
            case ImportJob.State.Over(ImportOutcome.Refused(var problems), _) ->
                    not(
                            file,
                            "Not brought in",
                            List.of(
                                    "Something changed since the file was looked at, or the records"
                                            + " refused a part of it. Nothing was changed."),
                            problems.stream()
                                    .filter(Problem::stops)
                                    .limit(MOST_PROBLEMS)
                                    .map(
                                            problem ->
                                                    words.of(problem.where())
                                                            + ": "
                                                            + words.of(problem.finding()))
                                    .toList());
            case ImportJob.State.Failed() ->
                    not(
                            file,
                            "Something went wrong here",
                            List.of(
                                    "This is a fault of the program or of the disk. Nothing was"
                                            + " changed; the terminal in which Clutchwright runs"
                                            + " says more."),
                            List.of());
            case ImportJob.State.Running _ ->
                    throw new IllegalStateException("an import that still runs is not done");
        };
    }

    private static ImportDoneView not(
            FileInHand file, String title, List<String> sentences, List<String> problems) {
        return new ImportDoneView(file.id(), title, false, sentences, problems, "");
    }

    @Override
    public String template() {
        return "settings/importDone.jte";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
