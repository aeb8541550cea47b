package clutchwright.records.exchange;

import clutchwright.records.checks.Edit;
import clutchwright.records.exchange.ImportOutcome.Applied;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.photos.EggPhotos;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Places;
import clutchwright.records.places.Rack;
import clutchwright.records.places.Room;
import clutchwright.records.places.Tub;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Transaction;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
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
        var overlay = source.read(PackageGenes.FILE, headings(PackageGenes.FILE));
        overlay.ifPresent(sheet -> lines = PackageGenes.over(lines, sheet, problems));
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
        var eggPhotos = source.read("egg-photos.csv", OwnColumns.EGG_PHOTOS);
        if (eggPhotos.isPresent()) {
            eggPhotos(eggPhotos.get(), rows);
        }
        return applied;
    }

    static List<String> headings(String file) {
        return PackageTable.ALL.stream()
                .filter(table -> table.file().equals(file))
                .flatMap(table -> table.columns().stream())
                .map(PackageColumn::heading)
                .toList();
    }

    private void places(Sheet sheet) {
        var places = new Places(tx);
        for (var cells : RowByHeading.all(sheet)) {
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
        var matching = matching(source, sheet.get());
        var planner = new Planner(tx, sheet.get(), matching, choices, lines, source.isOurs());
        var plan = planner.plan((done, total) -> progress.reached(done, 2 * total));
        problems.addAll(plan.problems());
        return plan.canBeApplied()
                ? Application.write(tx, plan, planner.order(), progress)
                : nothing;
    }

    /// What each column of the package's animals holds.
    static ColumnMatching matching(PackageSource source, Sheet animals) {
        var matching = ColumnMatching.propose(animals);
        // They are all there, with their dates; these columns only show the latest.
        return source.has("statements.csv")
                ? leftOut(leftOut(matching, Column.STATED), Column.SHOWS)
                : matching;
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
        for (var said : StatementRow.all(sheet, problems)) {
            var animal = rows.animal(said.animal());
            if (animal.isEmpty()) {
                problems.add(
                        new Problem(
                                said.where(),
                                new Finding.MissingReference("animal", said.animal())));
                continue;
            }
            var text = genes.of(said.species(), said.genes());
            if (before.contains(animal.get() + "\n" + text.written() + "\n" + said.witness())) {
                continue;
            }
            if (text.canonical().isEmpty()) {
                problems.add(new Problem(said.where(), new Finding.KeptUnread(text.written())));
            }
            switch (said.kind()) {
                case CLAIM ->
                        saved(statements.claim(animal.get(), text, said.witness()), said.where());
                case SIGHTING ->
                        saved(
                                statements.see(animal.get(), text, said.witness(), said.doubted()),
                                said.where());
            }
        }
    }

    private void photos(Sheet sheet, PackageRows rows) throws IOException {
        var photos = new Photos(tx);
        for (var cells : RowByHeading.all(sheet)) {
            var animal = rows.animal(cells.get("animal"));
            var picture = picture("photos.csv", "animal", animal.isPresent(), cells);
            if (animal.isPresent() && picture.isPresent()) {
                saved(
                        photos.restore(
                                animal.get(), picture.get(), added(cells), cells.get("caption")),
                        new Where.OtherFile("photos.csv", cells.row()));
            }
        }
    }

    private void eggPhotos(Sheet sheet, PackageRows rows) throws IOException {
        var photos = new EggPhotos(tx);
        for (var cells : RowByHeading.all(sheet)) {
            var egg = rows.egg(cells.get("egg"));
            var picture = picture("egg-photos.csv", "egg", egg.isPresent(), cells);
            if (egg.isPresent() && picture.isPresent()) {
                saved(
                        photos.restore(
                                egg.get(), picture.get(), added(cells), cells.get("caption")),
                        new Where.OtherFile("egg-photos.csv", cells.row()));
            }
        }
    }

    /// The bytes of a row's picture, or a report of what the row lacks.
    ///
    /// @param of what it is a picture of
    private Optional<byte[]> picture(String file, String of, boolean known, RowByHeading cells)
            throws IOException {
        var bytes = source.photo(cells.get("file"));
        if (!known || bytes.isEmpty()) {
            var missing = known ? "file" : of;
            report(file, cells.row(), new Finding.MissingReference(missing, cells.get(missing)));
        }
        return bytes;
    }

    private LocalDate added(RowByHeading cells) {
        return StatementRow.day(cells, "added", problems).flatMap(day -> day).orElseGet(tx::today);
    }

    private <T> void saved(Edit<T> edit, Where where) {
        if (edit instanceof Edit.Refused<T>(var refused)) {
            refused.forEach(one -> problems.add(new Problem(where, new Finding.Refused(one))));
        }
    }

    private void report(String file, int row, Finding finding) {
        problems.add(new Problem(new Where.OtherFile(file, row), finding));
    }
}
