package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.records.exchange.Choices;
import clutchwright.records.exchange.ColumnMatching;
import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.ImportPlan;
import clutchwright.records.exchange.OpenPackage;
import clutchwright.records.exchange.Progress;
import clutchwright.records.exchange.RememberedMatchings;
import clutchwright.records.exchange.SpeciesLines;
import clutchwright.records.exchange.Tables;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.journal.Change;
import clutchwright.records.journal.Journal;
import clutchwright.records.store.ChangeId;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/// A file that a keeper has handed over and not yet brought in or put away, with what was chosen
/// for it so far.
///
/// Its bytes stay in a file of their own. What the dry run found is kept until another choice is
/// made or the records change.
final class FileInHand {

    /// So many changes may come between an import and the look for it in the journal.
    private static final int NEWEST = 20;

    private final String id;
    private final String name;
    private final Path path;
    private final Instant since;
    private final Holding holding;
    private final SpeciesLines lines;
    private Asked asked;
    private Optional<Reviewed> reviewed = Optional.empty();
    private Optional<ImportJob> job = Optional.empty();

    /// What the keeper chose.
    ///
    /// @param matching empty until it is changed: then what is remembered or the headings say
    record Asked(String sheet, Optional<ColumnMatching> matching, Choices choices) {}

    private record Reviewed(Asked asked, long revision, ImportReview review) {}

    FileInHand(String id, String name, Path path, Instant since, Holding holding) {
        this.id = id;
        this.name = name;
        this.path = path;
        this.since = since;
        this.holding = holding;
        this.lines = holding.database().read(tx -> new OwnSpecies().lines(tx));
        this.asked = new Asked("", Optional.empty(), Choices.usual(holding.mainSpecies()));
    }

    String id() {
        return id;
    }

    String name() {
        return name;
    }

    Instant since() {
        return since;
    }

    SpeciesLines lines() {
        return lines;
    }

    synchronized Asked asked() {
        return asked;
    }

    synchronized Optional<ImportJob> job() {
        return job;
    }

    /// Another choice; what the columns hold is remembered for files with the same headings.
    synchronized void ask(Asked changed) {
        var before = asked;
        asked = changed;
        if (!changed.matching().equals(before.matching())) {
            changed.matching().ifPresent(this::remember);
        }
    }

    private void remember(ColumnMatching matching) {
        holding.database()
                .write(
                        holding.author(),
                        "Said what the columns of " + name + " hold",
                        tx -> {
                            new RememberedMatchings(tx).remember(matching);
                            return matching;
                        });
    }

    /// What bringing it in would do, as things stand.
    synchronized ImportReview review() {
        var revision = holding.database().revision();
        var kept =
                reviewed.filter(r -> r.revision() == revision && r.asked().equals(asked))
                        .map(Reviewed::review);
        return kept.orElseGet(
                () -> {
                    var fresh = freshReview();
                    reviewed =
                            Optional.of(new Reviewed(asked, holding.database().revision(), fresh));
                    return fresh;
                });
    }

    private ImportReview freshReview() {
        if (OpenPackage.isOne(path)) {
            return new ImportReview.OfPackage(readPackage(false, Progress.unheard()));
        }
        return switch (Tables.read(path, name, asked.sheet())) {
            case SheetReading.Unreadable(var fault) -> new ImportReview.Unreadable(fault);
            case SheetReading.Read(var sheet) -> new ImportReview.OfTable(plan(sheet));
        };
    }

    private ImportPlan plan(Sheet sheet) {
        return holding.database()
                .read(
                        tx ->
                                ImportPlan.of(
                                        tx,
                                        sheet,
                                        asked.matching()
                                                .filter(m -> m.headings().equals(sheet.header()))
                                                .orElseGet(
                                                        () ->
                                                                new RememberedMatchings(tx)
                                                                        .propose(sheet)),
                                        asked.choices(),
                                        lines,
                                        Progress.unheard()));
    }

    private OpenPackage.Result readPackage(boolean keep, Progress progress) {
        return OpenPackage.read(
                holding.database(),
                holding.author(),
                what(),
                path,
                asked.choices(),
                lines,
                keep,
                progress);
    }

    /// Begins to write, unless it is being written or was written already.
    synchronized void bringIn() {
        if (job.isPresent() && !mayGoAgain(job.get())) {
            return;
        }
        var review = review();
        if (review.canBeApplied()) {
            job = Optional.of(ImportJob.start(progress -> over(review, progress), this::tidy));
        }
    }

    private static boolean mayGoAgain(ImportJob job) {
        return switch (job.state()) {
            case ImportJob.State.Running _ -> false;
            case ImportJob.State.Failed() -> true;
            case ImportJob.State.Over(var outcome, _) ->
                    !(outcome instanceof ImportOutcome.Applied);
        };
    }

    private ImportJob.State.Over over(ImportReview review, Progress progress) {
        var outcome =
                switch (review) {
                    case ImportReview.OfTable(var plan) ->
                            plan.apply(holding.database(), holding.author(), what(), progress);
                    case ImportReview.OfPackage _ -> readPackage(true, progress).outcome();
                    case ImportReview.Unreadable _ -> new ImportOutcome.Cancelled();
                };
        return new ImportJob.State.Over(
                outcome,
                outcome instanceof ImportOutcome.Applied ? newestChange() : Optional.empty());
    }

    private Optional<ChangeId> newestChange() {
        return holding.database()
                .read(
                        tx ->
                                new Journal(tx)
                                        .latest(NEWEST).stream()
                                                .filter(change -> change.what().equals(what()))
                                                .map(Change::id)
                                                .findFirst());
    }

    private void tidy() {
        if (job().map(ImportJob::state)
                .filter(ImportJob.State.Over.class::isInstance)
                .map(ImportJob.State.Over.class::cast)
                .filter(over -> over.outcome() instanceof ImportOutcome.Applied)
                .isPresent()) {
            putAway();
        }
    }

    /// Its bytes are removed.
    void putAway() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String what() {
        return "Brought in " + name;
    }
}
