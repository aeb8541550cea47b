package clutchwright.records.plans;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.List;
import java.util.Optional;

/// The plans that were worked out for a season, to be compared and taken up.
public final class Plans {

    private final Transaction tx;

    public Plans(Transaction tx) {
        this.tx = tx;
    }

    /// Keeps a plan under a name that no other of the season has.
    ///
    /// @param worth of all pairs together
    /// @param bound on it
    public Edit<SavedPlan> add(
            int season, String name, double worth, double bound, List<SavedPlan.Pair> pairs) {
        return problems(season, name, 0)
                .<SavedPlan>refusal()
                .orElseGet(
                        () -> {
                            var id =
                                    tx.insert(
                                            "season_plan",
                                            named(name)
                                                    .set("season", season)
                                                    .set("made_on", tx.today())
                                                    .set("worth", worth)
                                                    .set("bound", bound));
                            for (var pair : pairs) {
                                tx.insert(
                                        "season_plan_pair",
                                        Values.of()
                                                .set("plan", id)
                                                .set("dam", pair.dam().value())
                                                .set("sire", pair.sire().value()));
                            }
                            return new Edit.Saved<>(thePlan(new PlanId(id)));
                        });
    }

    public Edit<SavedPlan> rename(PlanId id, long version, String name) {
        var current = thePlan(id);
        return problems(current.season(), name, id.value())
                .<SavedPlan>refusal()
                .orElseGet(
                        () ->
                                tx.update("season_plan", id.value(), version, named(name))
                                        ? new Edit.Saved<>(thePlan(id))
                                        : new Edit.Stale<>(current));
    }

    /// Pairings that were taken up from it stay.
    ///
    /// @return the plan that was removed; empty if there is none
    public Optional<SavedPlan> remove(PlanId id) {
        var current = find(id);
        if (current.isPresent()) {
            tx.deleteWhere("season_plan_pair", "plan", id.value());
            tx.delete("season_plan", id.value());
        }
        return current;
    }

    /// The latest first.
    public List<SavedPlan> ofSeason(int season) {
        return tx.list(
                this::read, "select * from season_plan where season = ? order by id desc", season);
    }

    public Optional<SavedPlan> find(PlanId id) {
        return tx.first(this::read, "select * from season_plan where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public SavedPlan thePlan(PlanId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no plan " + id));
    }

    private Findings problems(int season, String name, long id) {
        return new Findings(tx.today())
                .notBlank(Field.NAME, name)
                .addIf(
                        tx.number(
                                        "select count(*) from season_plan"
                                                + " where season = ? and name_key = ? and id <> ?",
                                        season,
                                        Words.key(name),
                                        id)
                                > 0,
                        new Problem.NameTaken(Field.NAME, name.strip()));
    }

    private static Values named(String name) {
        return Values.of().set("name", name.strip()).set("name_key", Words.key(name));
    }

    private SavedPlan read(Row row) {
        var id = row.number("id");
        return new SavedPlan(
                new PlanId(id),
                row.number("version"),
                Math.toIntExact(row.number("season")),
                row.text("name"),
                row.day("made_on"),
                row.real("worth"),
                row.real("bound"),
                tx.list(
                        pair ->
                                new SavedPlan.Pair(
                                        new AnimalId(pair.number("dam")),
                                        new AnimalId(pair.number("sire"))),
                        "select * from season_plan_pair where plan = ? order by id",
                        id));
    }
}
