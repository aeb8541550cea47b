package clutchwright.app.settings;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.ColumnWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ImportWords;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.records.exchange.Choices.OnRecordAlready;
import clutchwright.records.exchange.Choices.StrangeParents;
import clutchwright.records.exchange.Column;
import clutchwright.records.exchange.DateOrder;
import clutchwright.records.exchange.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// What bringing a file in would do, and what can be chosen about it.
///
/// @param sheets to choose from; one where the file is one table, none for a package
/// @param columns what each is taken to hold; none for a package
/// @param form what is chosen
/// @param first what was understood of the first rows
/// @param groups the problems that are shown
/// @param show which are shown: blank for all, `stops`, `notes`
/// @param wouldComeIn in one sentence
/// @param comingIn animals that would be added or changed
public record ImportReviewView(
        String id,
        String name,
        List<Choice> sheets,
        List<ColumnLine> columns,
        Form form,
        List<Choice> species,
        List<UnderstoodRow> first,
        List<ProblemGroup> groups,
        String show,
        int stops,
        int notes,
        String wouldComeIn,
        int comingIn,
        boolean canBeApplied)
        implements View {

    private static final int FIRST_ROWS = 6;

    public ImportReviewView {
        sheets = List.copyOf(sheets);
        columns = List.copyOf(columns);
        species = List.copyOf(species);
        first = List.copyOf(first);
        groups = List.copyOf(groups);
    }

    static ImportReviewView of(
            FileInHand file, ImportReview review, Form query, ImportWords words, Formats formats) {
        var show =
                query.text("show").equals("stops") || query.text("show").equals("notes")
                        ? query.text("show")
                        : "";
        var problems = review.problems();
        var counts = review.counts();
        var stops = (int) problems.stream().filter(Problem::stops).count();
        return new ImportReviewView(
                file.id(),
                file.name(),
                sheets(review),
                columns(review),
                ImportForm.of(file.asked().choices()).with(ImportForm.SHEET, sheet(review)),
                species(file),
                first(file, review, formats),
                ProblemGroup.all(review, show, query.text("full"), words, formats),
                show,
                stops,
                problems.size() - stops,
                words.wouldComeIn(counts),
                counts.added() + counts.updated(),
                review.canBeApplied());
    }

    private static List<Choice> sheets(ImportReview review) {
        return review instanceof ImportReview.OfTable(var plan)
                ? plan.sheet().sheets().stream().map(name -> new Choice(name, name)).toList()
                : List.of();
    }

    private static String sheet(ImportReview review) {
        return review instanceof ImportReview.OfTable(var plan) ? plan.sheet().name() : "";
    }

    private static List<ColumnLine> columns(ImportReview review) {
        return review instanceof ImportReview.OfTable(var plan) ? ColumnLine.all(plan) : List.of();
    }

    private static List<UnderstoodRow> first(
            FileInHand file, ImportReview review, Formats formats) {
        return review instanceof ImportReview.OfTable(var plan)
                ? plan.preview(FIRST_ROWS).stream()
                        .map(row -> UnderstoodRow.of(row, file.lines(), formats))
                        .toList()
                : List.of();
    }

    private static List<Choice> species(FileInHand file) {
        return file.lines().all().stream()
                .map(line -> line.catalogue().species())
                .map(species -> new Choice(species.id(), SpeciesWords.name(species)))
                .toList();
    }

    public boolean isTable() {
        return !columns.isEmpty();
    }

    public List<Choice> meanings() {
        return Arrays.stream(Column.values())
                .map(column -> Choice.of(column, ColumnWords.of(column)))
                .toList();
    }

    public List<Choice> dateOrders() {
        return List.of(
                Choice.of(DateOrder.AS_THE_FILE_SHOWS, "As the file shows"),
                Choice.of(DateOrder.DAY_FIRST, "Day first: 03/04 is 3 April"),
                Choice.of(DateOrder.MONTH_FIRST, "Month first: 03/04 is March 4"));
    }

    public List<Choice> onRecord() {
        return List.of(
                Choice.of(OnRecordAlready.REFUSE, "Stop at them"),
                Choice.of(OnRecordAlready.SKIP_IDENTICAL, "Pass over those that say nothing new"),
                Choice.of(OnRecordAlready.UPDATE, "Change the record to what the file says"));
    }

    public List<Choice> parents() {
        return List.of(
                Choice.of(StrangeParents.REFUSE, "Stop at them"),
                Choice.of(StrangeParents.CREATE, "Make them, with nothing else known"),
                Choice.of(StrangeParents.KEEP_AS_NOTE, "Keep their names in the notes"));
    }

    @Override
    public String template() {
        return "settings/importReview.jte";
    }

    @Override
    public String title() {
        return "Import of " + name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
