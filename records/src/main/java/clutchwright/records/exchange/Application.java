package clutchwright.records.exchange;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Questions;
import clutchwright.records.exchange.ImportPlan.Fate;
import clutchwright.records.exchange.ImportPlan.PlannedRow;
import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Transaction;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/// Writes what a plan says, parents before their young, within one transaction.
final class Application {

    private final Transaction tx;
    private final ImportPlan plan;
    private final Witness witness;
    private final Animals animals;
    private final Statements statements;
    private final TubsByName tubs;
    private final GeneTexts genes;
    private final Map<String, AnimalId> ids = new HashMap<>();

    private Application(Transaction tx, ImportPlan plan) {
        this.tx = tx;
        this.plan = plan;
        this.witness = new Witness(Optional.empty(), "", plan.sheet().file());
        this.animals = new Animals(tx);
        this.statements = new Statements(tx);
        this.tubs = new TubsByName(tx);
        this.genes = new GeneTexts(plan.lines());
    }

    /// Writes everything, or throws.
    ///
    /// @param order tags of the file's animals, parents first
    /// @throws RefusedByRecords if the records refuse a row that the plan had passed
    static ImportOutcome.Applied write(
            Transaction tx, ImportPlan plan, List<Tag> order, Progress progress) {
        return new Application(tx, plan).write(order, progress);
    }

    private ImportOutcome.Applied write(List<Tag> order, Progress progress) {
        animals.all().forEach(animal -> ids.put(Keys.of(animal.tag()), animal.id()));
        for (var stranger : plan.strangers()) {
            add(stranger, new Where.WholeFile());
        }
        var rows = new HashMap<String, PlannedRow>();
        plan.rows().forEach(row -> rows.put(Keys.of(row.entry().tag()), row));
        int done = 0;
        for (var tag : order) {
            var row = Optional.ofNullable(rows.get(Keys.of(tag))).orElseThrow();
            write(row);
            if (++done % 50 == 0 || done == order.size()) {
                int total = plan.sheet().rows().size();
                if (!progress.reached(total + done, 2 * total)) {
                    throw new CancellationException("import stopped at row " + row.row());
                }
            }
        }
        return new ImportOutcome.Applied(
                plan.count(Fate.ADDED) + plan.strangers().size(),
                plan.count(Fate.UPDATED),
                plan.count(Fate.SKIPPED));
    }

    private void write(PlannedRow row) {
        var where = new Where.WholeRow(row.row());
        switch (row.fate()) {
            case ADDED -> add(row.entry(), where);
            case UPDATED -> update(row.entry(), where);
            case SKIPPED, REFUSED -> {}
        }
    }

    private void add(AnimalEntry entry, Where where) {
        var added = required(animals.add(particulars(entry), Questions.ALL_THE_SAME), where).id();
        ids.put(Keys.of(entry.tag()), added);
        say(added, entry, where);
        weigh(added, entry, where);
    }

    private void update(AnimalEntry entry, Where where) {
        var before = animals.byTag(entry.tag().value()).orElseThrow();
        var said = statements.latest(before.id());
        required(animals.update(before.with(particulars(entry)), Questions.ALL_THE_SAME), where);
        var newWords =
                entry.withGenes(
                        said.claim()
                                        .map(claim -> claim.genes().written())
                                        .filter(entry.stated()::equals)
                                        .isPresent()
                                ? ""
                                : entry.stated(),
                        said.sighting()
                                        .map(sighting -> sighting.genes().written())
                                        .filter(entry.shows()::equals)
                                        .isPresent()
                                ? ""
                                : entry.shows());
        say(before.id(), newWords, where);
        weigh(before.id(), entry, where);
    }

    private void say(AnimalId id, AnimalEntry entry, Where where) {
        if (!entry.stated().isEmpty()) {
            required(
                    statements.claim(id, genes.of(entry.species(), entry.stated()), witness),
                    where);
        }
        if (!entry.shows().isEmpty()) {
            required(
                    statements.see(id, genes.of(entry.species(), entry.shows()), witness, false),
                    where);
        }
    }

    private void weigh(AnimalId id, AnimalEntry entry, Where where) {
        entry.weight()
                .ifPresent(
                        weight ->
                                required(
                                        new Husbandry(tx)
                                                .weigh(id, weight.on(), weight.grams(), ""),
                                        where));
    }

    private Particulars particulars(AnimalEntry entry) {
        var particulars = entry.particulars(this::theId);
        return entry.place().map(tubs::find).map(particulars::withPlace).orElse(particulars);
    }

    private AnimalId theId(Tag tag) {
        return Optional.ofNullable(ids.get(Keys.of(tag))).orElseThrow();
    }

    static <T> T required(Edit<T> edit, Where where) {
        return switch (edit) {
            case Edit.Saved<T>(var value) -> value;
            case Edit.Stale<T> _ -> throw new IllegalStateException("changed while importing");
            case Edit.Refused<T>(var problems) ->
                    throw new RefusedByRecords(
                            problems.stream()
                                    .map(one -> new Problem(where, new Finding.Refused(one)))
                                    .toList());
        };
    }
}
