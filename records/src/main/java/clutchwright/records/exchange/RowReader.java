package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.exchange.AnimalEntry.WeightEntry;
import clutchwright.records.exchange.DateReading.Written;
import clutchwright.records.exchange.sheets.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Understands rows one by one, and says of each cell what is wrong with it.
final class RowReader {

    /// No snake was ever reported to have lived longer; a date before that is a slip.
    private static final int LONGEST_LIFE_YEARS = 65;

    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_GENES = 500;

    private final ColumnMatching matching;
    private final Choices choices;
    private final SpeciesLines lines;
    private final LocalDate today;
    private final DateWords dateWords;
    private final DateColumns order;
    private final boolean oneIsMale;
    private final Map<String, Reading> readings = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    RowReader(
            Sheet sheet,
            ColumnMatching matching,
            Choices choices,
            SpeciesLines lines,
            LocalDate today) {
        this.matching = matching;
        this.choices = choices;
        this.lines = lines;
        this.today = today;
        this.dateWords = new DateWords(today.getYear());
        this.order = DateColumns.of(sheet, matching, dateWords, choices.dateOrder());
        this.oneIsMale =
                matching.find(Column.SEX)
                        .map(
                                at ->
                                        sheet.rows().stream()
                                                .map(row -> row.cells().get(at).strip())
                                                .anyMatch(Set.of("0.1", "0,1")::contains))
                        .orElse(false);
        problems.addAll(order.problems());
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /// The row understood; empty if it has no tag that could stand for it.
    Optional<Draft> read(Sheet.Row row) {
        var cells = new Cells(row);
        var tag = tag(cells);
        var species = species(cells);
        var stated = stated(cells);
        var shows = cells.text(Column.SHOWS).filter(text -> !GeneCells.isNothing(text)).orElse("");
        var sex = sex(cells);
        if (species.isPresent()) {
            sex = genes(cells, Column.STATED, species.get(), stated, sex);
            sex = genes(cells, Column.SHOWS, species.get(), shows, sex);
        }
        var notes = new ArrayList<String>();
        var hatched = hatched(cells, notes);
        var origin = origin(cells, notes);
        var weight = weight(cells);
        notes(cells, notes);
        if (tag.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Draft(
                        row.number(),
                        tag.get(),
                        limited(cells, Column.NAME, LONGEST_NAME),
                        sex,
                        hatched,
                        cells.text(Column.DAM).orElse(""),
                        cells.text(Column.SIRE).orElse(""),
                        cells.text(Column.SIRE_QUESTION).orElse(""),
                        cells.text(Column.WITHOUT_SIRE).map(RowReader::isYes).orElse(false),
                        stated,
                        shows,
                        status(cells),
                        origin,
                        new Line(
                                cells.text(Column.LINE).orElse(""),
                                cells.text(Column.CREDIT).orElse("")),
                        place(cells),
                        species.map(GeneLine::catalogue)
                                .map(catalogue -> catalogue.species().id())
                                .orElse(choices.species()),
                        notes,
                        weight,
                        cells.filled()));
    }

    private Optional<Tag> tag(Cells cells) {
        var text = cells.text(Column.TAG).orElse("");
        if (text.isEmpty()) {
            cells.report(Column.TAG, new Finding.TagMissing());
            return Optional.empty();
        }
        if (!Tag.isWellFormed(text)) {
            cells.report(Column.TAG, new Finding.TooLong(Column.TAG, text.length(), Tag.LONGEST));
            return Optional.empty();
        }
        return Optional.of(new Tag(text));
    }

    private Optional<GeneLine> species(Cells cells) {
        var written = cells.text(Column.SPECIES);
        var found = lines.find(written.orElse(choices.species()));
        if (found.isEmpty()) {
            cells.report(
                    Column.SPECIES,
                    new Finding.UnknownSpecies(
                            written.orElse(choices.species()), lines.expected()));
        }
        return found;
    }

    private Optional<Sex> sex(Cells cells) {
        var text = cells.text(Column.SEX).orElse("");
        return switch (SexWords.read(text)) {
            case SexWords.Read.Known(var sex) -> Optional.of(sex);
            case SexWords.Read.Blank() -> Optional.empty();
            case SexWords.Read.One() -> {
                if (oneIsMale) {
                    cells.report(Column.SEX, new Finding.OneIsMale());
                    yield Optional.of(Sex.MALE);
                }
                cells.report(Column.SEX, new Finding.UnknownSex(text, SexWords.EXPECTED));
                yield Optional.empty();
            }
            case SexWords.Read.NotUnderstood() -> {
                cells.report(Column.SEX, new Finding.UnknownSex(text, SexWords.EXPECTED));
                yield Optional.empty();
            }
        };
    }

    private String stated(Cells cells) {
        var joined = new GeneCells();
        for (int i = 0; i < matching.columns().size(); i++) {
            switch (matching.columns().get(i)) {
                case STATED -> joined.stated(cells.at(i));
                case HETS -> joined.hets(cells.at(i));
                case POSSIBLE_HETS -> joined.possibleHets(cells.at(i), matching.headings().get(i));
                case TAG,
                        NAME,
                        SEX,
                        HATCHED,
                        SIRE,
                        DAM,
                        SHOWS,
                        STATUS,
                        SPECIES,
                        ROOM,
                        RACK,
                        TUB,
                        PLACE,
                        WEIGHT,
                        WEIGHED,
                        ORIGIN,
                        BREEDER,
                        LINE,
                        CREDIT,
                        ACQUIRED,
                        NOTES,
                        SIRE_QUESTION,
                        WITHOUT_SIRE,
                        AMONG_NOTES,
                        LEFT_OUT -> {}
            }
        }
        return joined.line();
    }

    /// Reads a gene line; the sex it names completes the one of the sex column.
    private Optional<Sex> genes(
            Cells cells, Column column, GeneLine notation, String line, Optional<Sex> sex) {
        if (line.isEmpty()) {
            return sex;
        }
        if (line.length() > LONGEST_GENES) {
            cells.report(column, new Finding.TooLong(column, line.length(), LONGEST_GENES));
            return sex;
        }
        var species = notation.catalogue().species().id();
        return switch (readings.computeIfAbsent(species + '\n' + line, _ -> notation.read(line))) {
            case Reading.Unclear(var faults, _) -> {
                faults.forEach(
                        fault -> cells.report(column, new Finding.GenesUnclear(line, fault)));
                yield sex;
            }
            case Reading.Understood(var genes, _, var notes) -> {
                notes.forEach(note -> cells.report(column, new Finding.GenesNoted(line, note)));
                yield sexOf(cells, column, genes, line, sex);
            }
        };
    }

    private static Optional<Sex> sexOf(
            Cells cells, Column column, Genes genes, String line, Optional<Sex> sex) {
        var group = genes.animals();
        if (group.isEmpty()) {
            return sex;
        }
        if (group.get().males() + group.get().females() + group.get().unsexed() > 1) {
            cells.report(column, new Finding.SeveralAnimals(line, group.get()));
            return sex;
        }
        var inLine = genes.sex();
        if (inLine.isPresent() && sex.isEmpty()) {
            cells.report(column, new Finding.SexFromLine(inLine.get()));
            return inLine;
        }
        if (inLine.isPresent() && !inLine.equals(sex)) {
            cells.report(column, new Finding.SexContradicted(sex.get(), inLine.get()));
        }
        return sex;
    }

    private Hatched hatched(Cells cells, List<String> notes) {
        var text = cells.text(Column.HATCHED).orElse("");
        return switch (dateWords.read(text)) {
            case DateReading.InYear(var year, var written) -> {
                if (year > today.getYear()) {
                    cells.report(
                            Column.HATCHED,
                            new Finding.InTheFuture(LocalDate.of(year, 1, 1), today));
                }
                if (written == Written.ROUGHLY) {
                    cells.report(Column.HATCHED, new Finding.OnlyYear(text, year));
                    notes.add(cells.heading(Column.HATCHED) + ": " + text);
                }
                yield new Hatched.InYear(year);
            }
            case DateReading.Blank _,
                    DateReading.OnDay _,
                    DateReading.EitherOrder _,
                    DateReading.ProvesOrder _,
                    DateReading.NoSuchDay _,
                    DateReading.NotADate _ ->
                    day(cells, Column.HATCHED)
                            .<Hatched>map(Hatched.OnDay::new)
                            .orElseGet(Hatched.Unknown::new);
        };
    }

    /// The day in the cell; what is wrong with it is reported.
    private Optional<LocalDate> day(Cells cells, Column column) {
        var text = cells.text(column).orElse("");
        return switch (dateWords.read(text)) {
            case DateReading.Blank() -> Optional.empty();
            case DateReading.OnDay(var day, var written) -> {
                if (written == Written.AS_SERIAL) {
                    cells.report(column, new Finding.SerialDate(text, day));
                }
                yield plausible(cells, column, day, text, written == Written.SHORT_YEAR);
            }
            case DateReading.ProvesOrder(var day, _, var shortYear) ->
                    plausible(cells, column, day, text, shortYear);
            case DateReading.EitherOrder(var dayFirst, var monthFirst, var shortYear) -> {
                if (dayFirst.equals(monthFirst)) {
                    yield plausible(cells, column, dayFirst, text, shortYear);
                }
                // Where the order is not known, that was reported for the whole column.
                yield order.order()
                        .flatMap(
                                known ->
                                        plausible(
                                                cells,
                                                column,
                                                known == DateOrder.DAY_FIRST
                                                        ? dayFirst
                                                        : monthFirst,
                                                text,
                                                shortYear));
            }
            case DateReading.InYear(var year, _) -> {
                cells.report(column, new Finding.OnlyYear(text, year));
                yield Optional.empty();
            }
            case DateReading.NoSuchDay() -> {
                cells.report(column, new Finding.NoSuchDay(text));
                yield Optional.empty();
            }
            case DateReading.NotADate() -> {
                cells.report(column, new Finding.UnreadableDate(text));
                yield Optional.empty();
            }
        };
    }

    private Optional<LocalDate> plausible(
            Cells cells, Column column, LocalDate day, String text, boolean shortYear) {
        // A day is left for clocks and time zones.
        if (day.isAfter(today.plusDays(1))) {
            cells.report(column, new Finding.InTheFuture(day, today));
        } else if (day.isBefore(today.minusYears(LONGEST_LIFE_YEARS))) {
            cells.report(column, new Finding.LongAgo(day));
        } else if (shortYear) {
            cells.report(column, new Finding.ShortYear(text, day));
        }
        return Optional.of(day);
    }

    private Status status(Cells cells) {
        var text = cells.text(Column.STATUS).orElse("");
        var status = StatusWords.read(text);
        if (status.isEmpty()) {
            cells.report(Column.STATUS, new Finding.UnknownStatus(text, StatusWords.expected()));
        }
        return status.orElse(Status.KEPT);
    }

    private Origin origin(Cells cells, List<String> notes) {
        var text = cells.text(Column.ORIGIN).orElse("");
        var from = cells.text(Column.BREEDER).orElse("");
        var how = OriginWords.read(text);
        if (how.isEmpty()) {
            cells.report(Column.ORIGIN, new Finding.OriginKept(text));
            notes.add(cells.heading(Column.ORIGIN) + ": " + text);
        }
        return new Origin(how.orElse(Origin.How.UNKNOWN), from, day(cells, Column.ACQUIRED));
    }

    private Optional<WeightEntry> weight(Cells cells) {
        var text = cells.text(Column.WEIGHT).orElse("");
        var on = day(cells, Column.WEIGHED);
        if (GeneCells.isNothing(text)) {
            return Optional.empty();
        }
        var grams = WeightWords.read(text);
        if (grams.isEmpty()) {
            cells.report(Column.WEIGHT, new Finding.BadNumber(Column.WEIGHT, text));
            return Optional.empty();
        }
        if (on.isEmpty()) {
            cells.report(Column.WEIGHT, new Finding.WeightUndated(today));
        }
        return Optional.of(new WeightEntry(grams.get(), on.orElse(today)));
    }

    private static Optional<PlaceName> place(Cells cells) {
        return PlaceName.of(
                        cells.text(Column.ROOM).orElse(""),
                        cells.text(Column.RACK).orElse(""),
                        cells.text(Column.TUB).orElse(""))
                .or(() -> cells.text(Column.PLACE).flatMap(PlaceName::read));
    }

    private void notes(Cells cells, List<String> notes) {
        for (int at : matching.all(Column.NOTES)) {
            if (!cells.at(at).isBlank()) {
                notes.addFirst(cells.at(at).strip());
            }
        }
        for (int at : matching.all(Column.AMONG_NOTES)) {
            if (!cells.at(at).isBlank()) {
                notes.add(matching.headings().get(at) + ": " + cells.at(at).strip());
            }
        }
    }

    private String limited(Cells cells, Column column, int limit) {
        var text = cells.text(column).orElse("");
        if (text.length() > limit) {
            cells.report(column, new Finding.TooLong(column, text.length(), limit));
        }
        return text;
    }

    private static boolean isYes(String text) {
        return Set.of("yes", "y", "true", "1", "x")
                .contains(text.toLowerCase(java.util.Locale.ROOT));
    }

    /// The cells of one row by what they hold.
    private final class Cells {

        private final Sheet.Row row;

        private Cells(Sheet.Row row) {
            this.row = row;
        }

        String at(int column) {
            return SpreadsheetSafety.reveal(row.cells().get(column));
        }

        /// Stripped; empty where nothing stands.
        Optional<String> text(Column column) {
            return matching.find(column)
                    .map(this::at)
                    .map(String::strip)
                    .filter(text -> !text.isEmpty());
        }

        String heading(Column column) {
            return matching.find(column).map(matching.headings()::get).orElse(column.label());
        }

        Set<Column> filled() {
            var filled = EnumSet.noneOf(Column.class);
            for (int i = 0; i < matching.columns().size(); i++) {
                if (!row.cells().get(i).isBlank()) {
                    filled.add(matching.columns().get(i));
                }
            }
            return filled;
        }

        void report(Column column, Finding finding) {
            problems.add(new Problem(matching.place(row.number(), column), finding));
        }
    }
}
