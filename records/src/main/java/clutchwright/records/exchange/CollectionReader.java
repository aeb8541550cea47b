package clutchwright.records.exchange;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Tag;
import clutchwright.records.exchange.ImportPlan.PlannedRow;
import clutchwright.records.exchange.PackageCollection.Result;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.FileFault;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetReading;
import clutchwright.records.statements.Statement;
import clutchwright.records.statements.StatementId;
import clutchwright.records.statements.Witness;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// Plans the import of files into records that hold nothing, and keeps what would be written.
final class CollectionReader {

    private static final String ANIMALS = "animals.csv";

    /// As [clutchwright.records.statements.Statements] orders them.
    private static final Comparator<Statement> NEWEST_FIRST =
            Comparator.<Statement, LocalDate>comparing(
                            said -> said.witness().on().orElse(LocalDate.MIN))
                    .thenComparingLong(said -> said.id().value())
                    .reversed();

    private final Choices choices;
    private final LocalDate today;
    private final List<Problem> problems = new ArrayList<>();
    private final SequencedMap<AnimalId, Animal> animals = new LinkedHashMap<>();
    private final Map<String, AnimalId> ids = new LinkedHashMap<>();
    private final SequencedMap<AnimalId, List<Statement>> statements = new LinkedHashMap<>();
    private SpeciesLines lines;
    private long statementsRead;

    CollectionReader(Choices choices, SpeciesLines lines, LocalDate today) {
        this.choices = choices;
        this.lines = lines;
        this.today = today;
    }

    Result read(Path path) throws IOException {
        if (OpenPackage.isOne(path)) {
            readPackage(path);
            return result(ANIMALS);
        }
        var name = Optional.ofNullable(path.getFileName()).orElse(path).toString();
        readTable(path, name);
        return result(name);
    }

    private void readPackage(Path path) throws IOException {
        try (var source = PackageSource.open(path)) {
            if (!source.has(ANIMALS)) {
                problems.add(
                        new Problem(
                                new Where.WholeFile(),
                                new Finding.MissingReference("file", ANIMALS)));
            }
            source.read(PackageGenes.FILE, PackageImport.headings(PackageGenes.FILE))
                    .ifPresent(sheet -> lines = PackageGenes.over(lines, sheet, problems));
            source.read(ANIMALS, OwnColumns.HEADINGS)
                    .ifPresent(
                            sheet ->
                                    take(
                                            sheet,
                                            PackageImport.matching(source, sheet),
                                            source.isOurs()));
            source.read("statements.csv", OwnColumns.STATEMENTS).ifPresent(this::takeStatements);
            problems.addAll(0, source.problems());
        }
    }

    private void readTable(Path path, String name) {
        switch (Tables.read(path, name, "")) {
            case SheetReading.Read(var sheet) -> take(sheet, ColumnMatching.propose(sheet), false);
            // A collection without animals is one too.
            case SheetReading.Unreadable(FileFault.OnlyHeader _) -> {}
            case SheetReading.Unreadable(var fault) ->
                    problems.add(new Problem(new Where.WholeFile(), new Finding.Unreadable(fault)));
        }
    }

    private void take(Sheet sheet, ColumnMatching matching, boolean ours) {
        var plan =
                new Planner(Recorded.nothing(), today, sheet, matching, choices, lines, ours)
                        .plan(Progress.unheard());
        problems.addAll(plan.problems());
        if (!plan.canBeApplied()) {
            return;
        }
        var entries = new ArrayList<AnimalEntry>();
        plan.rows().stream().map(PlannedRow::entry).forEach(entries::add);
        entries.addAll(plan.strangers());
        entries.forEach(entry -> ids.put(Keys.of(entry.tag()), new AnimalId(ids.size() + 1L)));
        var genes = new GeneTexts(lines);
        var witness = new Witness(Optional.empty(), "", sheet.file());
        for (var entry : entries) {
            var id = theId(entry.tag());
            animals.put(id, new Animal(id, 1, entry.particulars(this::theId)));
            if (!entry.stated().isEmpty()) {
                var text = genes.of(entry.species(), entry.stated());
                say(id, new Statement.Claim(nextStatement(), 1, id, text, witness));
            }
            if (!entry.shows().isEmpty()) {
                var text = genes.of(entry.species(), entry.shows());
                say(id, new Statement.Sighting(nextStatement(), 1, id, text, witness, false));
            }
        }
    }

    private void takeStatements(Sheet sheet) {
        if (animals.isEmpty()) {
            return;
        }
        var genes = new GeneTexts(lines);
        for (var said : StatementRow.all(sheet, problems)) {
            var id = ids.get(Keys.of(said.animal()));
            if (id == null) {
                problems.add(
                        new Problem(
                                said.where(),
                                new Finding.MissingReference("animal", said.animal())));
                continue;
            }
            var text = genes.of(said.species(), said.genes());
            if (text.canonical().isEmpty()) {
                problems.add(new Problem(said.where(), new Finding.KeptUnread(text.written())));
            }
            say(
                    id,
                    switch (said.kind()) {
                        case CLAIM ->
                                new Statement.Claim(nextStatement(), 1, id, text, said.witness());
                        case SIGHTING ->
                                new Statement.Sighting(
                                        nextStatement(),
                                        1,
                                        id,
                                        text,
                                        said.witness(),
                                        said.doubted());
                    });
        }
    }

    private StatementId nextStatement() {
        return new StatementId(++statementsRead);
    }

    private void say(AnimalId animal, Statement said) {
        statements.computeIfAbsent(animal, _ -> new ArrayList<>()).add(said);
    }

    private AnimalId theId(Tag tag) {
        return Optional.ofNullable(ids.get(Keys.of(tag))).orElseThrow();
    }

    private Result result(String table) {
        if (problems.stream().anyMatch(Problem::stops)) {
            return new Result.Refused(table, problems);
        }
        statements.replaceAll((_, said) -> said.stream().sorted(NEWEST_FIRST).toList());
        return switch (Pedigree.of(animals.values().stream().map(Animal::member).toList())) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new Result.Sound(
                            new PackageCollection(lines, pedigree, animals, statements, problems));
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalStateException("a sound plan of a faulty descent: " + faults);
        };
    }
}
