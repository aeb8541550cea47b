package clutchwright.records.exchange;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.notation.GeneLine;
import clutchwright.records.checks.Edit;
import clutchwright.records.exchange.ImportOutcome.Applied;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.Room;
import clutchwright.records.places.Tub;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Transaction;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Reads every file of a package into the records, within one transaction.
final class PackageImport {

    private final Transaction tx;
    private final PackageSource source;
    private final Choices choices;
    private final List<Problem> problems = new ArrayList<>();
    private SpeciesLines lines;

    PackageImport(Transaction tx, PackageSource source, Choices choices, SpeciesLines lines) {
        this.tx = tx;
        this.source = source;
        this.choices = choices;
        this.lines = lines;
    }

    List<Problem> problems() {
        var all = new ArrayList<>(source.problems());
        all.addAll(problems);
        return all;
    }

    boolean canStand() {
        return problems().stream().noneMatch(Problem::stops);
    }

    /// Writes what it can; whether that may stand is asked afterwards.
    Applied run(Progress progress) throws IOException {
        var overlay = source.read("genes.csv", headings("genes.csv"));
        overlay.ifPresent(sheet -> lines = over(sheet));
        source.read("places.csv", OwnColumns.PLACES).ifPresent(this::places);
        var applied = animals(progress);
        if (!canStand()) {
            return applied;
        }
        var rows = new PackageRows(tx, problems);
        source.read("statements.csv", OwnColumns.STATEMENTS)
                .ifPresent(sheet -> statements(sheet, rows));
        for (var table : PackageTable.ALL) {
            source.read(table.file(), headings(table.file()))
                    .ifPresent(sheet -> rows.read(table, sheet));
        }
        var photos = source.read("photos.csv", OwnColumns.PHOTOS);
        if (photos.isPresent()) {
            photos(photos.get(), rows);
        }
        return applied;
    }

    private static List<String> headings(String file) {
        return PackageTable.ALL.stream()
                .filter(table -> table.file().equals(file))
                .flatMap(table -> table.columns().stream())
                .map(PackageColumn::heading)
                .toList();
    }

    /// The species with the package's own genes over them.
    private SpeciesLines over(Sheet sheet) {
        var texts = new LinkedHashMap<String, StringBuilder>();
        for (var cells : cells(sheet)) {
            texts.computeIfAbsent(cells.get("species"), _ -> new StringBuilder())
                    .append(cells.get("text"))
                    .append('\n');
        }
        var all = new ArrayList<GeneLine>();
        for (var line : lines.all()) {
            var species = line.catalogue().species();
            var text = texts.get(species.id());
            if (text == null) {
                all.add(line);
                continue;
            }
            switch (CatalogueText.readOver(species, "genes.csv", text.toString())) {
                case CatalogueText.Result.Loaded(var extended) ->
                        all.add(GeneLine.of(Catalogue.of(extended)));
                case CatalogueText.Result.Faulty(var faults) -> {
                    all.add(line);
                    faults.forEach(
                            fault -> report("genes.csv", 1, new Finding.OwnGenesFaulty(fault)));
                }
            }
        }
        return new SpeciesLines(all);
    }

    private void places(Sheet sheet) {
        var places = new Places(tx);
        for (var cells : cells(sheet)) {
            var room = cells.get("room");
            var rack = cells.get("rack");
            var tub = cells.get("tub");
            var notes = cells.get("notes");
            if (room.isBlank() || (rack.isBlank() && !tub.isBlank())) {
                report("places.csv", cells.row(), new Finding.NotInList("room", room, List.of()));
            } else if (rack.isBlank()) {
                room(places, room, notes);
            } else if (tub.isBlank()) {
                rack(places, room(places, room, ""), rack, notes);
            } else {
                tub(places, rack(places, room(places, room, ""), rack, ""), tub, notes);
            }
        }
    }

    private static Room room(Places places, String name, String notes) {
        return places.rooms().stream()
                .filter(one -> Keys.of(one.name()).equals(Keys.of(name)))
                .findFirst()
                .orElseGet(() -> places.addRoom(name, notes).theSaved());
    }

    private static Rack rack(Places places, Room room, String name, String notes) {
        return places.racks(room.id()).stream()
                .filter(one -> Keys.of(one.name()).equals(Keys.of(name)))
                .findFirst()
                .orElseGet(() -> places.addRack(room.id(), name, notes).theSaved());
    }

    private static Tub tub(Places places, Rack rack, String name, String notes) {
        return places.tubs(rack.id()).stream()
                .filter(one -> Keys.of(one.name()).equals(Keys.of(name)))
                .findFirst()
                .orElseGet(() -> places.addTub(rack.id(), name, notes).theSaved());
    }

    private Applied animals(Progress progress) {
        var nothing = new Applied(0, 0, 0);
        if (!source.has("animals.csv")) {
            problems.add(
                    new Problem(
                            new Where.WholeFile(),
                            new Finding.MissingReference("file", "animals.csv")));
            return nothing;
        }
        var sheet = source.read("animals.csv", OwnColumns.HEADINGS);
        if (sheet.isEmpty()) {
            return nothing;
        }
        var matching = ColumnMatching.propose(sheet.get());
        if (source.has("statements.csv")) {
            // They are all there, with their dates; these columns only show the latest.
            matching = leftOut(leftOut(matching, Column.STATED), Column.SHOWS);
        }
        var planner = new Planner(tx, sheet.get(), matching, choices, lines, source.isOurs());
        var plan = planner.plan((done, total) -> progress.reached(done, 2 * total));
        problems.addAll(plan.problems());
        return plan.canBeApplied()
                ? Application.write(tx, plan, planner.order(), progress)
                : nothing;
    }

    private static ColumnMatching leftOut(ColumnMatching matching, Column column) {
        return matching.find(column).map(at -> matching.with(at, Column.LEFT_OUT)).orElse(matching);
    }

    private void statements(Sheet sheet, PackageRows rows) {
        var statements = new Statements(tx);
        var genes = new GeneTexts(lines);
        var before = new LinkedHashSet<String>();
        statements
                .all()
                .values()
                .forEach(
                        all ->
                                all.forEach(
                                        said ->
                                                before.add(
                                                        said.animal()
                                                                + "\n"
                                                                + said.genes().written()
                                                                + "\n"
                                                                + said.witness())));
        for (var cells : cells(sheet)) {
            var animal = rows.animal(cells.get("animal"));
            var witness = witness(cells);
            if (animal.isEmpty()) {
                report(
                        "statements.csv",
                        cells.row(),
                        new Finding.MissingReference("animal", cells.get("animal")));
                continue;
            }
            var text = genes.of(cells.get("species"), cells.get("genes"));
            if (witness.isEmpty()
                    || before.contains(
                            animal.get() + "\n" + text.written() + "\n" + witness.get())) {
                continue;
            }
            if (text.canonical().isEmpty()) {
                report("statements.csv", cells.row(), new Finding.KeptUnread(text.written()));
            }
            var where = new Where.OtherFile("statements.csv", cells.row());
            switch (cells.get("kind")) {
                case "claim" -> saved(statements.claim(animal.get(), text, witness.get()), where);
                case "sighting" ->
                        saved(
                                statements.see(
                                        animal.get(),
                                        text,
                                        witness.get(),
                                        cells.get("doubted").equals("yes")),
                                where);
                default ->
                        problems.add(
                                new Problem(
                                        where,
                                        new Finding.NotInList(
                                                "kind",
                                                cells.get("kind"),
                                                List.of("claim", "sighting"))));
            }
        }
    }

    private Optional<Witness> witness(Cells cells) {
        return day(cells, "date").map(on -> new Witness(on, cells.get("by"), cells.get("source")));
    }

    /// Empty within, if there is none; empty at all, if it is none.
    private Optional<Optional<LocalDate>> day(Cells cells, String heading) {
        var text = cells.get(heading).strip();
        if (text.isEmpty()) {
            return Optional.of(Optional.empty());
        }
        try {
            return Optional.of(Optional.of(LocalDate.parse(text)));
        } catch (DateTimeParseException noDay) {
            report(cells.file(), cells.row(), new Finding.UnreadableDate(text));
            return Optional.empty();
        }
    }

    private void photos(Sheet sheet, PackageRows rows) throws IOException {
        var photos = new Photos(tx);
        for (var cells : cells(sheet)) {
            var animal = rows.animal(cells.get("animal"));
            var bytes = source.photo(cells.get("file"));
            var added = day(cells, "added").flatMap(day -> day).orElse(tx.today());
            if (animal.isEmpty() || bytes.isEmpty()) {
                var missing = animal.isEmpty() ? "animal" : "file";
                report(
                        "photos.csv",
                        cells.row(),
                        new Finding.MissingReference(missing, cells.get(missing)));
                continue;
            }
            saved(
                    photos.restore(animal.get(), bytes.get(), added, cells.get("caption")),
                    new Where.OtherFile("photos.csv", cells.row()));
        }
    }

    private <T> void saved(Edit<T> edit, Where where) {
        if (edit instanceof Edit.Refused<T>(var refused)) {
            refused.forEach(one -> problems.add(new Problem(where, new Finding.Refused(one))));
        }
    }

    private void report(String file, int row, Finding finding) {
        problems.add(new Problem(new Where.OtherFile(file, row), finding));
    }

    private static List<Cells> cells(Sheet sheet) {
        return sheet.rows().stream().map(row -> Cells.of(sheet, row)).toList();
    }

    /// A row by its headings.
    private record Cells(String file, int row, Map<String, String> byHeading) {

        static Cells of(Sheet sheet, Sheet.Row row) {
            var byHeading = new LinkedHashMap<String, String>();
            for (int i = 0; i < sheet.header().size(); i++) {
                byHeading.put(sheet.header().get(i), SpreadsheetSafety.reveal(row.cells().get(i)));
            }
            return new Cells(sheet.file(), row.number(), byHeading);
        }

        String get(String heading) {
            return byHeading.getOrDefault(heading, "");
        }
    }
}
