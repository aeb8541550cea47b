package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.ParentageRows;
import clutchwright.records.animals.Tag;
import clutchwright.records.clutches.ClutchNumber;
import clutchwright.records.exchange.AnimalEntry.SireEntry;
import clutchwright.records.exchange.PackageColumn.Kind;
import clutchwright.records.photos.EggPhotos;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Places;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.Statements;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// Writes every file of the open package.
final class PackageExport {

    private final Transaction tx;
    private final PackageFolder folder;
    private final List<Described> described = new ArrayList<>();
    private final Map<Kind, Map<Long, String>> names = new EnumMap<>(Kind.class);
    private final Map<Long, String> clutchSires = new HashMap<>();

    PackageExport(Transaction tx, PackageFolder folder) {
        this.tx = tx;
        this.folder = folder;
    }

    /// A file as the description of the package lists it.
    ///
    /// @param types of the columns, as a Table Schema names them
    record Described(String file, List<String> headings, List<String> types, int rows) {}

    OpenPackage.Written write() throws IOException {
        animals();
        statements();
        places();
        readNames();
        for (var table : PackageTable.ALL) {
            mirror(table);
        }
        int photos = photos() + eggPhotos();
        folder.write("datapackage.json", PackageDescription.of(tx.today(), described));
        return new OpenPackage.Written(
                described.stream()
                        .filter(one -> one.file().equals("animals.csv"))
                        .mapToInt(Described::rows)
                        .sum(),
                described.stream().map(Described::file).toList(),
                photos);
    }

    private void animals() throws IOException {
        var rows = new ArrayList<List<String>>();
        for (var entry : Recorded.of(tx).all()) {
            rows.add(animal(entry));
        }
        csv("animals.csv", OwnColumns.HEADINGS, OwnColumns.TYPES, rows);
        names.put(Kind.ANIMAL, new HashMap<>());
        new Animals(tx)
                .all()
                .forEach(animal -> put(Kind.ANIMAL, animal.id().value(), animal.tag().value()));
    }

    private static List<String> animal(AnimalEntry entry) {
        return List.of(
                entry.tag().value(),
                entry.name(),
                entry.sex().map(Sex::name).orElse("").toLowerCase(Locale.ROOT),
                entry.hatched().iso(),
                sire(entry.sire()),
                entry.dam().map(SireText::one).orElse(""),
                entry.stated(),
                entry.shows(),
                StatusWords.write(entry.status()),
                entry.species(),
                OriginWords.write(entry.origin().how()),
                entry.origin().from(),
                entry.origin().acquired().map(LocalDate::toString).orElse(""),
                entry.line().name(),
                entry.line().credit(),
                entry.place().map(PlaceName::room).orElse(""),
                entry.place().map(PlaceName::rack).orElse(""),
                entry.place().map(PlaceName::tub).orElse(""),
                entry.sire() instanceof SireEntry.OneOf(var question, _) ? question : "",
                entry.withoutSire() ? "yes" : "",
                entry.notes());
    }

    private static String sire(SireEntry sire) {
        return switch (sire) {
            case SireEntry.Unknown() -> "";
            case SireEntry.Known(var tag) -> SireText.one(tag);
            case SireEntry.OneOf(_, var candidates) -> SireText.oneOf(candidates);
        };
    }

    private void statements() throws IOException {
        var all =
                new Statements(tx)
                        .all().values().stream()
                                .flatMap(List::stream)
                                .sorted(Comparator.comparingLong(said -> said.id().value()))
                                .toList();
        var rows = new ArrayList<List<String>>();
        for (var said : all) {
            rows.add(
                    List.of(
                            name(Kind.ANIMAL, said.animal().value()),
                            said instanceof Statement.Claim ? "claim" : "sighting",
                            said.genes().written(),
                            said.genes().species(),
                            said.witness().on().map(LocalDate::toString).orElse(""),
                            said.witness().by(),
                            said.witness().source(),
                            said instanceof Statement.Sighting(_, _, _, _, _, var doubted)
                                            && doubted
                                    ? "yes"
                                    : "no"));
        }
        csv(
                "statements.csv",
                OwnColumns.STATEMENTS,
                List.of(
                        "string", "string", "string", "string", "date", "string", "string",
                        "boolean"),
                rows);
    }

    private void places() throws IOException {
        var places = new Places(tx);
        var rows = new ArrayList<List<String>>();
        for (var room : places.rooms()) {
            rows.add(List.of(room.name(), "", "", room.notes()));
            for (var rack : places.racks(room.id())) {
                rows.add(List.of(room.name(), rack.name(), "", rack.notes()));
                for (var tub : places.tubs(rack.id())) {
                    rows.add(List.of(room.name(), rack.name(), tub.name(), tub.notes()));
                }
            }
        }
        csv("places.csv", OwnColumns.PLACES, List.of("string", "string", "string", "string"), rows);
    }

    private void readNames() {
        for (var kind :
                List.of(
                        Kind.PAIRING,
                        Kind.CLUTCH,
                        Kind.EGG,
                        Kind.BOX,
                        Kind.INCUBATOR,
                        Kind.PROJECT,
                        Kind.PLAN)) {
            names.put(kind, new HashMap<>());
        }
        tx.list(row -> row.number("id"), "select id from pairing order by id")
                .forEach(id -> put(Kind.PAIRING, id, "P" + (names(Kind.PAIRING).size() + 1)));
        tx.list(
                row ->
                        put(
                                Kind.CLUTCH,
                                row.number("id"),
                                clutch(row.number("season"), row.number("running"))),
                "select id, season, running from clutch");
        tx.list(
                row ->
                        put(
                                Kind.EGG,
                                row.number("id"),
                                egg(
                                        name(Kind.CLUTCH, row.number("clutch")),
                                        row.number("running"))),
                "select id, clutch, running from egg");
        tx.list(
                row -> put(Kind.BOX, row.number("id"), row.text("label")),
                "select id, label from box");
        tx.list(
                row -> put(Kind.INCUBATOR, row.number("id"), row.text("name")),
                "select id, name from incubator");
        tx.list(
                row -> put(Kind.PROJECT, row.number("id"), row.text("name")),
                "select id, name from project");
        tx.list(row -> row.number("id"), "select id from season_plan order by id")
                .forEach(id -> put(Kind.PLAN, id, "L" + (names(Kind.PLAN).size() + 1)));
        var candidates = new ParentageRows(tx, "clutch");
        var ids = List.copyOf(names(Kind.CLUTCH).keySet());
        candidates
                .candidatesOf(ids)
                .forEach(
                        (id, weights) ->
                                clutchSires.put(
                                        id,
                                        SireText.oneOf(
                                                new clutchwright.engine.probability.Distribution<>(
                                                                weights)
                                                        .map(this::tag))));
    }

    static String clutch(long season, long running) {
        var number = new ClutchNumber(Math.toIntExact(season), Math.toIntExact(running));
        // The short form leaves the century out.
        return season / 100 == 20 ? number.toString() : season + "-" + running;
    }

    static String egg(String clutch, long running) {
        return clutch + "/" + running;
    }

    private void mirror(PackageTable table) throws IOException {
        var rows =
                tx.list(
                        row -> table.columns().stream().map(one -> cell(table, one, row)).toList(),
                        "select * from " + table.table() + " order by id");
        csv(
                table.file(),
                table.columns().stream().map(PackageColumn::heading).toList(),
                table.columns().stream().map(one -> one.kind().schemaType()).toList(),
                rows);
    }

    private String cell(PackageTable table, PackageColumn column, Row row) {
        return switch (column.kind()) {
            case TEXT -> row.findText(column.column()).orElse("");
            case DAY -> row.findText(column.column()).orElse("");
            case WORD -> row.text(column.column()).toLowerCase(Locale.ROOT).replace('_', ' ');
            case WHOLE, COUNT ->
                    row.findNumber(column.column()).map(number -> Long.toString(number)).orElse("");
            case NUMBER, SIGNED, AMOUNT ->
                    row.findReal(column.column()).map(PackageExport::number).orElse("");
            case YES_NO -> row.truth(column.column()) ? "yes" : "no";
            case NAME -> name(table.names().orElseThrow(), row.number("id"));
            case ANIMAL, PAIRING, CLUTCH, EGG, BOX, INCUBATOR, PROJECT, PLAN ->
                    row.findNumber(column.column()).map(id -> name(column.kind(), id)).orElse("");
            case SIRE ->
                    row.findNumber(column.column())
                            .map(id -> SireText.one(tag(new AnimalId(id))))
                            .or(() -> Optional.ofNullable(clutchSires.get(row.number("id"))))
                            .orElse("");
        };
    }

    /// The shortest digits that give the same double back, without a tail of zeros.
    private static String number(double value) {
        return new java.math.BigDecimal(Double.toString(value))
                .stripTrailingZeros()
                .toPlainString();
    }

    private int photos() throws IOException {
        var photos = new Photos(tx);
        var rows = new ArrayList<List<String>>();
        for (var animal : new Animals(tx).all()) {
            // Oldest first, so that reading them in this order keeps it.
            for (var photo : photos.of(animal.id()).reversed()) {
                var file = photos.file(photo);
                if (Files.isRegularFile(file)) {
                    var name = "photos/" + photo.digest() + ".jpg";
                    folder.copy(name, file);
                    rows.add(
                            List.of(
                                    animal.tag().value(),
                                    name,
                                    photo.added().toString(),
                                    photo.caption()));
                }
            }
        }
        csv("photos.csv", OwnColumns.PHOTOS, List.of("string", "string", "date", "string"), rows);
        return rows.size();
    }

    private int eggPhotos() throws IOException {
        var photos = new EggPhotos(tx);
        var rows = new ArrayList<List<String>>();
        for (var photo : photos.all()) {
            var file = photos.file(photo);
            if (Files.isRegularFile(file)) {
                var name = "photos/" + photo.digest() + ".jpg";
                folder.copy(name, file);
                rows.add(
                        List.of(
                                name(Kind.EGG, photo.egg().value()),
                                name,
                                photo.added().toString(),
                                photo.caption()));
            }
        }
        csv(
                "egg-photos.csv",
                OwnColumns.EGG_PHOTOS,
                List.of("string", "string", "date", "string"),
                rows);
        return rows.size();
    }

    private void csv(
            String file, List<String> headings, List<String> types, List<List<String>> rows)
            throws IOException {
        folder.writeRows(file, headings, rows);
        described.add(new Described(file, headings, types, rows.size()));
    }

    private Tag tag(AnimalId id) {
        return new Tag(name(Kind.ANIMAL, id.value()));
    }

    private Map<Long, String> names(Kind kind) {
        return Optional.ofNullable(names.get(kind)).orElseThrow();
    }

    private String put(Kind kind, long id, String name) {
        names(kind).put(id, name);
        return name;
    }

    private String name(Kind kind, long id) {
        return Optional.ofNullable(names(kind).get(id)).orElseThrow();
    }
}
