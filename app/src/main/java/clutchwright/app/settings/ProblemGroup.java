package clutchwright.app.settings;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ImportWords;
import clutchwright.records.exchange.ImportPlan;
import clutchwright.records.exchange.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/// The problems of one column, of whole rows, or of one file of a package.
///
/// @param key names the group in an address
/// @param counts how many stop and how many only deserve a word
/// @param lines those that are shown
/// @param more how many are not
public record ProblemGroup(
        String key, String title, String counts, boolean stops, List<ProblemLine> lines, int more) {

    private static final int MOST_LINES = 40;
    private static final int LONGEST_CELL = 60;

    public ProblemGroup {
        lines = List.copyOf(lines);
    }

    /// @param row blank where it is not of one row
    /// @param found the cell as it stands in the file
    public record ProblemLine(
            String row, String found, String what, String remedies, boolean stops) {}

    /// @param show `stops`, `notes`, or blank for both
    /// @param full the key of the group that is shown to its end
    static List<ProblemGroup> all(
            ImportReview review, String show, String full, ImportWords words, Formats formats) {
        var cells = cells(review);
        return grouped(review).entrySet().stream()
                .map(
                        group ->
                                of(
                                        group.getKey(),
                                        group.getValue(),
                                        show,
                                        full,
                                        cells,
                                        words,
                                        formats))
                .filter(group -> !group.lines().isEmpty())
                .sorted((one, other) -> Boolean.compare(other.stops(), one.stops()))
                .toList();
    }

    private static ProblemGroup of(
            String title,
            List<Problem> problems,
            String show,
            String full,
            Map<Integer, List<String>> cells,
            ImportWords words,
            Formats formats) {
        var stops = problems.stream().filter(Problem::stops).count();
        var shown =
                problems.stream()
                        .filter(p -> show.isEmpty() || p.stops() == show.equals("stops"))
                        .sorted((one, other) -> Boolean.compare(other.stops(), one.stops()))
                        .toList();
        var key = Integer.toHexString(title.hashCode());
        var most = full.equals(key) ? shown.size() : Math.min(MOST_LINES, shown.size());
        return new ProblemGroup(
                key,
                title,
                counts(stops, problems.size() - stops, formats),
                stops > 0,
                shown.stream().limit(most).map(p -> line(p, cells, words)).toList(),
                shown.size() - most);
    }

    private static String counts(long stops, long notes, Formats formats) {
        var said = new ArrayList<String>();
        if (stops > 0) {
            said.add(formats.whole(stops) + (stops == 1 ? " stops it" : " stop it"));
        }
        if (notes > 0) {
            said.add(formats.count(notes, "note", "notes"));
        }
        return String.join(", ", said);
    }

    private static ProblemLine line(
            Problem problem, Map<Integer, List<String>> cells, ImportWords words) {
        return new ProblemLine(
                row(problem.where()),
                problem.where() instanceof Problem.Where.Cell(var row, var column, _)
                        ? shortened(cell(cells, row, column), LONGEST_CELL)
                        : "",
                words.of(problem.finding()),
                String.join(" Or: ", problem.remedies().stream().map(words::of).toList()),
                problem.stops());
    }

    private static String row(Problem.Where where) {
        return switch (where) {
            case Problem.Where.Cell(var row, _, _) -> Integer.toString(row);
            case Problem.Where.WholeRow(var row) -> Integer.toString(row);
            case Problem.Where.OtherFile(_, var row) -> Integer.toString(row);
            case Problem.Where.WholeColumn _, Problem.Where.WholeFile() -> "";
        };
    }

    private static String cell(Map<Integer, List<String>> cells, int row, int column) {
        var found = cells.getOrDefault(row, List.of());
        return column < found.size() ? found.get(column) : "";
    }

    private static Map<Integer, List<String>> cells(ImportReview review) {
        var cells = new LinkedHashMap<Integer, List<String>>();
        if (review instanceof ImportReview.OfTable(var plan)) {
            plan.sheet().rows().forEach(row -> cells.put(row.number(), row.cells()));
        }
        return cells;
    }

    private static SequencedMap<String, List<Problem>> grouped(ImportReview review) {
        var groups = new LinkedHashMap<String, List<Problem>>();
        if (review instanceof ImportReview.OfTable(ImportPlan plan)) {
            plan.problemsByColumn()
                    .forEach(
                            (heading, problems) ->
                                    groups.put(
                                            heading.isEmpty() ? "Rows and the whole file" : heading,
                                            problems));
        } else {
            for (var problem : review.problems()) {
                groups.computeIfAbsent(fileOf(problem.where()), _ -> new ArrayList<>())
                        .add(problem);
            }
        }
        return groups;
    }

    private static String fileOf(Problem.Where where) {
        return switch (where) {
            case Problem.Where.OtherFile(var file, _) -> file;
            case Problem.Where.WholeFile() -> "The whole package";
            case Problem.Where.Cell _, Problem.Where.WholeRow _, Problem.Where.WholeColumn _ ->
                    "animals.csv";
        };
    }

    static String shortened(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }
}
