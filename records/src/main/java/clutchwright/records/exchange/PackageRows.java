package clutchwright.records.exchange;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.ParentageRows;
import clutchwright.records.checks.Parent;
import clutchwright.records.clutches.EggId;
import clutchwright.records.exchange.PackageColumn.Kind;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// Reads those files of a package that mirror a table, and writes their rows.
///
/// A row that is on record already, cell for cell, is passed over.
final class PackageRows {

    private final Transaction tx;
    private final List<Problem> problems;
    private final Map<Kind, Map<String, Long>> ids = new EnumMap<>(Kind.class);

    /// @param problems where what is wrong is put
    PackageRows(Transaction tx, List<Problem> problems) {
        this.tx = tx;
        this.problems = problems;
        for (var kind :
                List.of(
                        Kind.ANIMAL,
                        Kind.PAIRING,
                        Kind.CLUTCH,
                        Kind.EGG,
                        Kind.BOX,
                        Kind.INCUBATOR,
                        Kind.PROJECT,
                        Kind.PLAN)) {
            ids.put(kind, new HashMap<>());
        }
        new Animals(tx)
                .all()
                .forEach(
                        animal ->
                                names(Kind.ANIMAL).put(Keys.of(animal.tag()), animal.id().value()));
    }

    Optional<AnimalId> animal(String tag) {
        return Optional.ofNullable(names(Kind.ANIMAL).get(Keys.of(tag))).map(AnimalId::new);
    }

    Optional<EggId> egg(String name) {
        return Optional.ofNullable(names(Kind.EGG).get(Keys.of(name))).map(EggId::new);
    }

    void read(PackageTable table, Sheet sheet) {
        long last = tx.number("select coalesce(max(id), 0) from " + table.table());
        for (var row : sheet.rows()) {
            new OneRow(table, sheet, row, last).read();
        }
    }

    private Map<String, Long> names(Kind kind) {
        return Optional.ofNullable(ids.get(kind)).orElseThrow();
    }

    /// One row on its way into its table.
    private final class OneRow {

        private final PackageTable table;
        private final Sheet.Row row;
        private final Map<String, String> cells = new HashMap<>();
        private final long lastBefore;
        private final SequencedMap<String, Object> filled = new LinkedHashMap<>();
        private final List<String> blank = new ArrayList<>();
        private Optional<Sire> sireInDoubt = Optional.empty();
        private boolean faulty;

        OneRow(PackageTable table, Sheet sheet, Sheet.Row row, long lastBefore) {
            this.table = table;
            this.row = row;
            this.lastBefore = lastBefore;
            for (int i = 0; i < sheet.header().size(); i++) {
                cells.put(sheet.header().get(i), SpreadsheetSafety.reveal(row.cells().get(i)));
            }
        }

        void read() {
            table.columns().forEach(this::take);
            if (table.table().equals("box")) {
                filled.put("label_key", Words.key(cell("box")));
            }
            if (table.table().equals("egg")) {
                checkFate();
            }
            if (table.table().equals("incubator")) {
                filled.put("name_key", Words.key(cell("incubator")));
                within("set_point_celsius", "set point celsius", 20, 40);
            }
            if (table.table().equals("sensor")) {
                checkSensor();
            }
            checkAims();
            if (!faulty) {
                checkParents();
            }
            if (!faulty) {
                keep();
            }
        }

        private void take(PackageColumn column) {
            var cell = cell(column.heading());
            if (column.kind() == Kind.NAME) {
                return;
            }
            if (cell.isBlank()) {
                takeBlank(column);
                return;
            }
            switch (column.kind()) {
                case TEXT -> filled.put(column.column(), cell);
                case WORD -> word(column, cell);
                case WHOLE -> whole(column, cell);
                case COUNT -> count(column, cell);
                case NUMBER -> number(column, cell);
                case AMOUNT -> amount(column, cell);
                case SIGNED -> signed(column, cell);
                case YES_NO -> yesNo(column, cell);
                case DAY -> day(column, cell);
                case ANIMAL, PAIRING, CLUTCH, EGG, BOX, INCUBATOR, PROJECT, PLAN ->
                        reference(column, cell);
                case SIRE -> sire(column, cell);
                case NAME -> {}
            }
        }

        private void takeBlank(PackageColumn column) {
            if (column.kind() == Kind.TEXT && !column.required()) {
                // A question of sires is nothing or a word; other texts are never nothing.
                if (column.column().equals("sire_question")) {
                    blank.add(column.column());
                } else {
                    filled.put(column.column(), "");
                }
            } else if (column.required()) {
                report(new Finding.NotInList(column.heading(), "", column.words()));
            } else {
                blank.add(column.column());
            }
        }

        private void word(PackageColumn column, String cell) {
            var word = cell.strip().toLowerCase(Locale.ROOT);
            if (column.words().contains(word)) {
                filled.put(column.column(), word.toUpperCase(Locale.ROOT).replace(' ', '_'));
            } else {
                report(new Finding.NotInList(column.heading(), cell, column.words()));
            }
        }

        private void whole(PackageColumn column, String cell) {
            boolean season = column.column().equals("season");
            if (cell.strip().matches("[0-9]{1,6}")) {
                long number = Long.parseLong(cell.strip());
                if (season ? number >= 1900 && number <= 2999 : number > 0) {
                    filled.put(column.column(), number);
                    return;
                }
            }
            report(
                    new Finding.NotInList(
                            column.heading(), cell, List.of(season ? "1900–2999" : "1, 2, 3 …")));
        }

        private void count(PackageColumn column, String cell) {
            if (cell.strip().matches("[0-9]{1,6}")) {
                filled.put(column.column(), Long.parseLong(cell.strip()));
            } else {
                report(new Finding.NotInList(column.heading(), cell, List.of("0, 1, 2 …")));
            }
        }

        private void amount(PackageColumn column, String cell) {
            if (cell.strip().matches("[0-9]{1,9}(\\.[0-9]{1,30})?")) {
                filled.put(column.column(), Double.parseDouble(cell.strip()));
            } else {
                report(new Finding.NotInList(column.heading(), cell, List.of("0 or more")));
            }
        }

        private void number(PackageColumn column, String cell) {
            if (cell.strip().matches("[0-9]{1,300}(\\.[0-9]{1,400})?")) {
                double number = Double.parseDouble(cell.strip());
                if (number > 0 && Double.isFinite(number)) {
                    filled.put(column.column(), number);
                    return;
                }
            }
            report(new Finding.BadNumber(Column.WEIGHT, cell));
        }

        private void signed(PackageColumn column, String cell) {
            if (cell.strip().matches("-?[0-9]{1,9}(\\.[0-9]{1,30})?")) {
                filled.put(column.column(), Double.parseDouble(cell.strip()));
            } else {
                report(new Finding.NotInList(column.heading(), cell, List.of()));
            }
        }

        private void yesNo(PackageColumn column, String cell) {
            switch (cell.strip().toLowerCase(Locale.ROOT)) {
                case "yes" -> filled.put(column.column(), true);
                case "no" -> filled.put(column.column(), false);
                default ->
                        report(new Finding.NotInList(column.heading(), cell, List.of("yes", "no")));
            }
        }

        private void day(PackageColumn column, String cell) {
            try {
                var day = LocalDate.parse(cell.strip());
                if (day.isAfter(tx.today().plusDays(1))) {
                    report(new Finding.InTheFuture(day, tx.today()));
                }
                filled.put(column.column(), day);
            } catch (DateTimeParseException noDay) {
                report(new Finding.UnreadableDate(cell));
            }
        }

        private void reference(PackageColumn column, String cell) {
            var id = names(column.kind()).get(Keys.of(cell));
            if (id == null) {
                report(new Finding.MissingReference(column.heading(), cell));
            } else {
                filled.put(column.column(), id);
            }
        }

        private void sire(PackageColumn column, String cell) {
            var weights = new LinkedHashMap<AnimalId, Fraction>();
            for (var candidate : ParentCell.readOwn(cell).candidates()) {
                var animal = animal(candidate.text());
                var weight = candidate.weight().orElse(new ParentCell.Weight.Of(Fraction.WHOLE));
                if (animal.isEmpty()) {
                    report(new Finding.MissingReference(column.heading(), candidate.text()));
                } else if (weight instanceof ParentCell.Weight.Of(var value)) {
                    weights.merge(animal.get(), value, Fraction::plus);
                } else {
                    report(new Finding.BadWeights(cell));
                }
            }
            if (weights.size() == 1) {
                filled.put(column.column(), weights.firstEntry().getKey().value());
            } else {
                blank.add(column.column());
                Distribution.proportionalTo(weights)
                        .ifPresent(
                                all ->
                                        sireInDoubt =
                                                Optional.of(
                                                        new Sire.InDoubt(
                                                                new SireQuestion(
                                                                        cell("sire question"),
                                                                        all))));
            }
        }

        /// What the tables of prices, projects and plans hold no row without.
        private void checkAims() {
            switch (table.table()) {
                case "price" -> checkPrice();
                case "project" -> {
                    filled.put("name_key", Words.key(cell("project")));
                    within("clutches", "clutches", 0, 100);
                    within("eggs", "eggs", 1, 100);
                    within("hatch_rate", "hatch rate", 0, 1);
                    within("male_seasons", "male seasons", 1, 60);
                    within("female_seasons", "female seasons", 1, 60);
                    within("confidence", "confidence", 0.001, 0.999);
                    within("seasons", "seasons", 1, 60);
                }
                case "season_plan" -> filled.put("name_key", Words.key(cell("name")));
                case "plan_word" -> {
                    if ("OVERRULED".equals(filled.get("word")) && cell("reason").isBlank()) {
                        report(new Finding.NotInList("reason", "", List.of()));
                    }
                }
                default -> {}
            }
        }

        private void checkPrice() {
            filled.put("genes_key", Words.key(cell("genes")));
            if (blank.contains("sells") != blank.contains("later")) {
                report(new Finding.NotInList("later", cell("later"), List.of()));
            }
            if (filled.get("amount") instanceof Double first) {
                within("later", "later", 0, first);
            }
        }

        /// One topic cannot feed two sensors.
        private void checkSensor() {
            filled.put("name_key", Words.key(cell("sensor")));
            within("correction_kelvin", "correction kelvin", -5, 5);
            within("silent_after_minutes", "silent after minutes", 1, 10_080);
            var topic = cell("topic");
            var taken =
                    tx.first(
                            found -> found.text("name_key"),
                            "select name_key from sensor where topic <> '' and topic = ?"
                                    + " and member = ?",
                            topic,
                            cell("member"));
            if (taken.filter(name -> !name.equals(filled.get("name_key"))).isPresent()) {
                report(new Finding.OnRecord(topic, false, List.of()));
            }
        }

        private void within(String column, String heading, double low, double high) {
            if (filled.get(column) instanceof Number number
                    && !(number.doubleValue() >= low && number.doubleValue() <= high)) {
                report(
                        new Finding.NotInList(
                                heading,
                                cell(heading),
                                List.of(number(low) + " to " + number(high))));
            }
        }

        private static String number(double value) {
            return Long.toString(Math.round(value));
        }

        private void checkFate() {
            var fate = filled.get("fate");
            boolean dated = filled.containsKey("fated_on");
            boolean needs = "LOST".equals(fate) || "HATCHED".equals(fate);
            if (fate != null && dated != needs) {
                report(new Finding.NotInList("date", cell("date"), List.of()));
            }
        }

        private void checkParents() {
            parent("dam", Parent.DAM);
            parent("sire", Parent.SIRE);
        }

        private void parent(String column, Parent as) {
            if (filled.get(column) instanceof Long id) {
                new Animals(tx)
                        .problemsAsParent(new AnimalId(id), as).stream()
                                .filter(problem -> !problem.isQuestion())
                                .forEach(problem -> report(new Finding.Refused(problem)));
            }
        }

        private void keep() {
            var same = rowLike(filled, blank, Optional.of(lastBefore));
            if (same.isPresent()) {
                name(same.get());
                return;
            }
            var keys = new LinkedHashMap<String, Object>();
            for (var column : table.unique()) {
                Optional.ofNullable(filled.get(column)).ifPresent(it -> keys.put(column, it));
            }
            if (!keys.isEmpty() && rowLike(keys, List.of(), Optional.empty()).isPresent()) {
                report(new Finding.OnRecord(label(), false, List.of()));
                return;
            }
            var values = Values.of();
            filled.forEach(values::set);
            blank.forEach(values::clear);
            long id = tx.insert(table.table(), values);
            sireInDoubt.ifPresent(
                    sire ->
                            new ParentageRows(tx, table.table())
                                    .writeCandidates(
                                            id, Parentage.of(new Parentage.Dam.Unknown(), sire)));
            name(id);
        }

        private Optional<Long> rowLike(
                Map<String, Object> has, List<String> hasNot, Optional<Long> upTo) {
            var sql = new StringBuilder("select id from " + table.table() + " where 1 = 1");
            var parameters = new ArrayList<Object>();
            has.forEach(
                    (column, value) -> {
                        sql.append(" and ").append(column).append(" = ?");
                        parameters.add(stored(value));
                    });
            hasNot.forEach(column -> sql.append(" and ").append(column).append(" is null"));
            upTo.ifPresent(
                    id -> {
                        sql.append(" and id <= ?");
                        parameters.add(id);
                    });
            if (upTo.equals(Optional.of(0L))) {
                return Optional.empty();
            }
            return tx.first(found -> found.number("id"), sql.toString(), parameters.toArray());
        }

        private static Object stored(Object value) {
            return switch (value) {
                case Boolean truth -> truth ? 1L : 0L;
                case LocalDate day -> day.toString();
                default -> value;
            };
        }

        /// By the names that other files use for this row.
        private void name(long id) {
            table.names()
                    .ifPresent(
                            kind -> {
                                names(kind).put(Keys.of(label()), id);
                            });
        }

        private String label() {
            var first = table.columns().getFirst();
            return cell(first.heading());
        }

        private String cell(String heading) {
            return cells.getOrDefault(heading, "");
        }

        private void report(Finding finding) {
            faulty = true;
            problems.add(new Problem(new Where.OtherFile(table.file(), row.number()), finding));
        }
    }
}
