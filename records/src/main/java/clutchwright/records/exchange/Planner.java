package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Line;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.AnimalEntry.SireEntry;
import clutchwright.records.exchange.ImportPlan.Fate;
import clutchwright.records.exchange.ImportPlan.PlannedRow;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetRemark;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.concurrent.CancellationException;

/// Makes the plan of an import: rows by themselves, then parents, then the whole line of descent.
final class Planner {

    private static final int ROWS_BETWEEN_REPORTS = 100;

    private final Sheet sheet;
    private final ColumnMatching matching;
    private final Choices choices;
    private final SpeciesLines lines;
    private final boolean own;
    private final Recorded recorded;
    private final RowReader reader;
    private final Parents parents;
    private final List<Problem> problems = new ArrayList<>();
    private final SequencedMap<String, Draft> drafts = new LinkedHashMap<>();
    private List<Tag> order = List.of();

    /// @param own whether the file is one that we wrote ourselves
    Planner(
            Transaction tx,
            Sheet sheet,
            ColumnMatching matching,
            Choices choices,
            SpeciesLines lines,
            boolean own) {
        this(Recorded.of(tx), tx.today(), sheet, matching, choices, lines, own);
    }

    /// @param recorded what is on record beside the file
    /// @param own      whether the file is one that we wrote ourselves
    Planner(
            Recorded recorded,
            LocalDate today,
            Sheet sheet,
            ColumnMatching matching,
            Choices choices,
            SpeciesLines lines,
            boolean own) {
        this.sheet = sheet;
        this.matching = matching;
        this.choices = choices;
        this.lines = lines;
        this.own = own;
        this.recorded = recorded;
        this.reader = new RowReader(sheet, matching, choices, lines, today);
        this.parents = new Parents(choices.parents(), own);
    }

    /// The tags of the file's animals, parents before their young; known once a plan is made.
    List<Tag> order() {
        return order;
    }

    ImportPlan plan(Progress progress) {
        sheet.remarks().forEach(this::remark);
        if (matching.find(Column.TAG).isEmpty()) {
            problems.add(
                    new Problem(new Where.WholeFile(), new Finding.NoTagColumn(sheet.header())));
            return result(List.of(), List.of());
        }
        for (int at : matching.all(Column.AMONG_NOTES)) {
            problems.add(
                    new Problem(
                            new Where.WholeColumn(at, matching.headings().get(at)),
                            new Finding.KeptInNotes()));
        }
        readRows(progress);
        recorded.all().forEach(entry -> parents.know(entry.tag(), entry.name()));
        drafts.values().forEach(draft -> parents.know(draft.tag(), draft.name()));
        var entries = new LinkedHashMap<String, AnimalEntry>();
        drafts.forEach((key, draft) -> entries.put(key, linked(draft)));
        var strangers = parents.strangers().stream().map(this::entryOf).toList();
        if (!own) {
            // Our own files say it where it is on record.
            inferSexes(entries);
        }
        var rows = fates(entries);
        checkLineage(rows, strangers);
        return result(rows, strangers);
    }

    private void readRows(Progress progress) {
        int done = 0;
        for (var row : sheet.rows()) {
            reader.read(row).ifPresent(this::keep);
            if (++done % ROWS_BETWEEN_REPORTS == 0 || done == sheet.rows().size()) {
                if (!progress.reached(done, sheet.rows().size())) {
                    throw new CancellationException("import stopped at row " + row.number());
                }
            }
        }
        problems.addAll(reader.problems());
    }

    private void keep(Draft draft) {
        var before = drafts.putIfAbsent(Keys.of(draft.tag()), draft);
        if (before != null) {
            report(
                    draft.row(),
                    Column.TAG,
                    new Finding.TagTwice(draft.tag().value(), before.row()));
        }
    }

    private AnimalEntry linked(Draft draft) {
        var dam = parents.dam(draft.dam(), draft.row());
        var sire = parents.sire(draft.sire(), draft.row());
        dam.findings().forEach(finding -> report(draft.row(), Column.DAM, finding));
        sire.findings().forEach(finding -> report(draft.row(), Column.SIRE, finding));
        var notes = new ArrayList<>(draft.notes());
        notes.addAll(dam.notes());
        notes.addAll(sire.notes());
        var question = draft.question().isEmpty() ? draft.tag().value() : draft.question();
        return new AnimalEntry(
                draft.tag(),
                draft.name(),
                draft.sex(),
                draft.hatched(),
                Parents.one(dam),
                Parents.sireOf(sire, question),
                draft.withoutSire(),
                draft.stated(),
                draft.shows(),
                draft.status(),
                draft.origin(),
                draft.line(),
                draft.place(),
                draft.species(),
                String.join("\n", notes),
                draft.weight());
    }

    private AnimalEntry entryOf(Parents.Stranger stranger) {
        return new AnimalEntry(
                stranger.tag(),
                "",
                Optional.of(sexOf(stranger.as())),
                new Hatched.Unknown(),
                Optional.empty(),
                new SireEntry.Unknown(),
                false,
                "",
                "",
                Status.UNKNOWN,
                Origin.unknown(),
                Line.none(),
                Optional.empty(),
                choices.species(),
                "",
                Optional.empty());
    }

    /// A parent that was not sexed has the sex of the part it plays.
    private void inferSexes(SequencedMap<String, AnimalEntry> entries) {
        var asDam = new LinkedHashMap<String, Integer>();
        var asSire = new LinkedHashMap<String, Integer>();
        entries.forEach(
                (key, entry) -> {
                    int row = theDraft(key).row();
                    entry.dam().ifPresent(tag -> asDam.putIfAbsent(Keys.of(tag), row));
                    sires(entry).forEach(tag -> asSire.putIfAbsent(Keys.of(tag), row));
                });
        for (var key : List.copyOf(entries.keySet())) {
            var entry = entries.get(key);
            if (entry == null || entry.sex().isPresent()) {
                continue;
            }
            var dam = Optional.ofNullable(asDam.get(key));
            var sire = Optional.ofNullable(asSire.get(key));
            if (dam.isPresent() && sire.isPresent()) {
                report(
                        theDraft(key).row(),
                        Column.SEX,
                        new Finding.UsedAsBoth(entry.tag().value(), dam.get(), sire.get()));
            } else if (dam.isPresent() || sire.isPresent()) {
                var as = dam.isPresent() ? Parent.DAM : Parent.SIRE;
                // What is on record wins over what can be inferred.
                if (recorded.find(entry.tag()).flatMap(AnimalEntry::sex).isEmpty()) {
                    entries.put(key, entry.withSex(sexOf(as)));
                    report(
                            theDraft(key).row(),
                            Column.SEX,
                            new Finding.SexFromParenthood(entry.tag().value(), sexOf(as), as));
                }
            }
        }
    }

    static List<Tag> sires(AnimalEntry entry) {
        return switch (entry.sire()) {
            case SireEntry.Unknown() -> List.of();
            case SireEntry.Known(var tag) -> List.of(tag);
            case SireEntry.OneOf(_, var candidates) -> List.copyOf(candidates.outcomes());
        };
    }

    private static Sex sexOf(Parent as) {
        return switch (as) {
            case DAM -> Sex.FEMALE;
            case SIRE -> Sex.MALE;
        };
    }

    private List<PlannedRow> fates(SequencedMap<String, AnimalEntry> entries) {
        var rows = new ArrayList<PlannedRow>();
        entries.forEach(
                (key, entry) -> {
                    var draft = theDraft(key);
                    rows.add(
                            recorded.find(entry.tag())
                                    .map(before -> onRecord(draft, entry, before))
                                    .orElseGet(
                                            () -> new PlannedRow(draft.row(), entry, Fate.ADDED)));
                });
        return rows;
    }

    private PlannedRow onRecord(Draft draft, AnimalEntry entry, AnimalEntry before) {
        var merged = Merge.over(before, entry, draft.filled());
        var differing = Merge.differing(before, merged);
        boolean identical = differing.isEmpty();
        var skipping = choices.onRecord() == Choices.OnRecordAlready.SKIP_IDENTICAL;
        var updating = choices.onRecord() == Choices.OnRecordAlready.UPDATE;
        if (identical && (skipping || updating)) {
            report(draft.row(), Column.TAG, new Finding.SkippedIdentical(entry.tag().value()));
            return new PlannedRow(draft.row(), before, Fate.SKIPPED);
        }
        if (updating) {
            report(draft.row(), Column.TAG, new Finding.Updates(entry.tag().value(), differing));
            return new PlannedRow(draft.row(), merged, Fate.UPDATED);
        }
        report(
                draft.row(),
                Column.TAG,
                new Finding.OnRecord(entry.tag().value(), identical, differing));
        return new PlannedRow(draft.row(), entry, Fate.REFUSED);
    }

    private void checkLineage(List<PlannedRow> rows, List<AnimalEntry> strangers) {
        var lineage = new Lineage();
        recorded.all().forEach(lineage::onRecord);
        strangers.forEach(lineage::onRecord);
        rows.forEach(row -> lineage.inFile(row.entry(), row.row()));
        var checked = lineage.check();
        for (var fault : checked.faults()) {
            report(fault.row(), Parents.column(fault.as()), fault.finding());
        }
        order = checked.order();
    }

    private void remark(SheetRemark remark) {
        problems.add(
                switch (remark) {
                    case SheetRemark.LongRow(var row, var found, var expected, var surplus) ->
                            new Problem(
                                    new Where.WholeRow(row),
                                    new Finding.CellsBeyondHeader(found, expected, surplus));
                    case SheetRemark.ShortRow(var row, _, _) ->
                            new Problem(new Where.WholeRow(row), new Finding.Peculiar(remark));
                    case SheetRemark.FormulaValue(var row, var column, _) ->
                            cell(row, column, remark);
                    case SheetRemark.FormulaWithoutValue(var row, var column) ->
                            cell(row, column, remark);
                    case SheetRemark.ErrorCell(var row, var column, _) -> cell(row, column, remark);
                    case SheetRemark.EncodingTaken _, SheetRemark.RowsAboveHeader _ ->
                            new Problem(new Where.WholeFile(), new Finding.Peculiar(remark));
                });
    }

    private Problem cell(int row, int column, SheetRemark remark) {
        var heading = column < sheet.header().size() ? sheet.header().get(column) : "";
        return new Problem(new Where.Cell(row, column, heading), new Finding.Peculiar(remark));
    }

    private void report(int row, Column column, Finding finding) {
        problems.add(new Problem(matching.place(row, column), finding));
    }

    private Draft theDraft(String key) {
        var draft = drafts.get(key);
        if (draft == null) {
            throw new IllegalStateException("no row of " + key);
        }
        return draft;
    }

    private ImportPlan result(List<PlannedRow> rows, List<AnimalEntry> strangers) {
        problems.sort(
                Comparator.<Problem>comparingInt(problem -> rowOf(problem.where()))
                        .thenComparingInt(problem -> columnOf(problem.where())));
        Set<Integer> stopped = new HashSet<>();
        problems.stream()
                .filter(Problem::stops)
                .forEach(problem -> stopped.add(rowOf(problem.where())));
        return new ImportPlan(
                sheet,
                matching,
                choices,
                lines,
                rows.stream()
                        .map(
                                row ->
                                        stopped.contains(row.row())
                                                ? new PlannedRow(
                                                        row.row(), row.entry(), Fate.REFUSED)
                                                : row)
                        .toList(),
                strangers,
                problems);
    }

    /// Nothing but the whole file and whole columns stands before the first row.
    private static int rowOf(Where where) {
        return switch (where) {
            case Where.WholeFile(), Where.WholeColumn _ -> 0;
            case Where.WholeRow(var row) -> row;
            case Where.Cell(var row, _, _) -> row;
            case Where.OtherFile(_, var row) -> row;
        };
    }

    private static int columnOf(Where where) {
        return switch (where) {
            case Where.WholeFile(), Where.WholeRow _, Where.OtherFile _ -> -1;
            case Where.WholeColumn(var column, _) -> column;
            case Where.Cell(_, var column, _) -> column;
        };
    }
}
