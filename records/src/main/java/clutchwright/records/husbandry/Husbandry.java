package clutchwright.records.husbandry;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.husbandry.Happening.HealthNote;
import clutchwright.records.husbandry.Happening.Meal;
import clutchwright.records.husbandry.Happening.Shed;
import clutchwright.records.husbandry.Happening.Weighing;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Weights, meals, sheds and notes on health.
public final class Husbandry {

    private static final List<String> TABLES = List.of("weighing", "meal", "shed", "health_note");

    private static final String HUNGRY =
            "from animal a join meal m on m.id = (select x.id from meal x where x.animal = a.id"
                    + " and x.taken = 1 order by x.made_on desc, x.id desc limit 1)"
                    + " where a.status in ('KEPT', 'HOLD_BACK', 'FOR_SALE')"
                    + " and m.made_on < (case when a.hatched > ? then ? else ? end)"
                    + " and not exists (select 1 from meal r where r.animal = a.id"
                    + " and r.made_on >= ?)";

    /// A year alone is no day.
    private static final String FIRST_DAYS =
            "select a.id, a.hatched,"
                    + " case when exists (select 1 from shed s where s.animal = a.id)"
                    + " then 1 else 0 end as shed,"
                    + " case when exists (select 1 from meal m where m.animal = a.id"
                    + " and m.taken = 1) then 1 else 0 end as eaten,"
                    + " (select max(m.made_on) from meal m where m.animal = a.id) as offered"
                    + " from animal a where a.status in ('KEPT', 'HOLD_BACK', 'FOR_SALE')"
                    + " and length(a.hatched) = 10 and a.hatched between ? and ?"
                    + " order by a.hatched, a.id";

    private final Transaction tx;

    public Husbandry(Transaction tx) {
        this.tx = tx;
    }

    /// @param grams above zero
    public Edit<Weighing> weigh(AnimalId animal, LocalDate on, double grams, String notes) {
        return add(new Weighing(0, 1, animal, on, grams, notes), Weighing.class);
    }

    /// A meal of unweighed prey.
    public Edit<Meal> feed(
            AnimalId animal, LocalDate on, String prey, boolean taken, String notes) {
        return add(new Meal(0, 1, animal, on, prey, Optional.empty(), taken, notes), Meal.class);
    }

    /// A meal of weighed prey.
    ///
    /// @param grams above zero
    public Edit<Meal> feed(
            AnimalId animal, LocalDate on, String prey, double grams, boolean taken, String notes) {
        return add(new Meal(0, 1, animal, on, prey, Optional.of(grams), taken, notes), Meal.class);
    }

    public Edit<Shed> shed(AnimalId animal, LocalDate on, boolean complete, String notes) {
        return add(new Shed(0, 1, animal, on, complete, notes), Shed.class);
    }

    /// @param notes not blank
    public Edit<HealthNote> note(AnimalId animal, LocalDate on, String notes) {
        return add(new HealthNote(0, 1, animal, on, notes), HealthNote.class);
    }

    /// Changes a happening, if it still is of the version that was edited.
    public Edit<Happening> update(Happening changed) {
        var table = HappeningRows.table(changed);
        var current = find(table, changed.id());
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(HappeningRows.field(changed), changed.id()));
        }
        return problems(changed)
                .<Happening>refusal()
                .orElseGet(
                        () ->
                                tx.update(
                                                table,
                                                changed.id(),
                                                changed.version(),
                                                HappeningRows.write(changed))
                                        ? new Edit.Saved<>(find(table, changed.id()).orElseThrow())
                                        : new Edit.Stale<>(current.get()));
    }

    /// @return what was removed
    public Edit<Happening> remove(Happening happening) {
        var table = HappeningRows.table(happening);
        var current = find(table, happening.id());
        if (current.isEmpty()) {
            return Edit.refused(
                    new Problem.Missing(HappeningRows.field(happening), happening.id()));
        }
        if (current.get().version() != happening.version()) {
            return new Edit.Stale<>(current.get());
        }
        tx.delete(table, happening.id());
        return new Edit.Saved<>(current.get());
    }

    /// All that happened to an animal, newest first.
    public List<Happening> of(AnimalId animal) {
        var found = new ArrayList<Happening>();
        for (var table : TABLES) {
            found.addAll(
                    tx.list(
                            row -> HappeningRows.read(table, row),
                            "select * from " + table + " where animal = ?",
                            animal.value()));
        }
        found.sort(Comparator.comparing(Happening::on).thenComparingLong(Happening::id).reversed());
        return found;
    }

    /// The weights of an animal, oldest first.
    public List<Weighing> weights(AnimalId animal) {
        return tx.list(
                row -> (Weighing) HappeningRows.read("weighing", row),
                "select * from weighing where animal = ? order by made_on, id",
                animal.value());
    }

    /// The last weight of every animal that was ever weighed.
    public Map<AnimalId, Weighing> lastWeights() {
        return last("weighing", Weighing.class, "");
    }

    /// The last weight of every female of a pairing of these seasons that was ever weighed.
    public Map<AnimalId, Weighing> lastWeightsOfDams(int firstSeason, int lastSeason) {
        return last(
                "weighing",
                Weighing.class,
                " where animal in (select dam from pairing where season between %d and %d)"
                        .formatted(firstSeason, lastSeason));
    }

    /// The last meal of every animal that ever took one.
    public Map<AnimalId, Meal> lastMealsTaken() {
        return last("meal", Meal.class, " where taken = 1");
    }

    /// Who goes without a meal for longer than is usual, longest first: the last meal that each of
    /// them took.
    ///
    /// Only animals that live here and whose meals are written down, and that were not offered
    /// one lately.
    public List<Meal> hungry(Hunger hunger, int most) {
        return tx.list(
                row -> (Meal) HappeningRows.read("meal", row),
                "select m.* " + HUNGRY + " order by m.made_on, m.id limit ?",
                hunger.youngFrom().toString(),
                hunger.youngBefore().toString(),
                hunger.adultsBefore().toString(),
                hunger.offeredFrom().toString(),
                most);
    }

    /// How many there are of those.
    public int countHungry(Hunger hunger) {
        return Math.toIntExact(
                tx.number(
                        "select count(*) " + HUNGRY,
                        hunger.youngFrom().toString(),
                        hunger.youngBefore().toString(),
                        hunger.adultsBefore().toString(),
                        hunger.offeredFrom().toString()));
    }

    /// The young that live here and hatched in those days, both counting, the oldest first.
    public List<FirstDays> firstDays(LocalDate from, LocalDate to) {
        return tx.list(
                row ->
                        new FirstDays(
                                new AnimalId(row.number("id")),
                                row.day("hatched"),
                                row.truth("shed"),
                                row.truth("eaten"),
                                row.findDay("offered")),
                FIRST_DAYS,
                from.toString(),
                to.toString());
    }

    private <T extends Happening> Map<AnimalId, T> last(String table, Class<T> kind, String where) {
        var found = new HashMap<AnimalId, T>();
        tx.list(
                        row -> kind.cast(HappeningRows.read(table, row)),
                        "select * from " + table + where + " order by made_on, id")
                .forEach(each -> found.put(each.animal(), each));
        return found;
    }

    private Optional<Happening> find(String table, long id) {
        return tx.first(
                row -> HappeningRows.read(table, row),
                "select * from " + table + " where id = ?",
                id);
    }

    private <T extends Happening> Edit<T> add(T happening, Class<T> kind) {
        return problems(happening)
                .<T>refusal()
                .orElseGet(
                        () -> {
                            var table = HappeningRows.table(happening);
                            long id = tx.insert(table, HappeningRows.write(happening));
                            return new Edit.Saved<>(kind.cast(find(table, id).orElseThrow()));
                        });
    }

    private Findings problems(Happening happening) {
        var findings = new Findings(tx.today());
        findings.notInTheFuture(HappeningRows.field(happening), happening.on());
        findings.addIf(
                tx.row("animal", happening.animal().value()).isEmpty(),
                new Problem.Missing(Field.TAG, happening.animal().value()));
        switch (happening) {
            case Weighing weighing -> positive(findings, weighing.grams());
            case Meal meal -> meal.grams().ifPresent(grams -> positive(findings, grams));
            case Shed _ -> {}
            case HealthNote note -> findings.notBlank(Field.NOTE, note.notes());
        }
        return findings;
    }

    private static void positive(Findings findings, double grams) {
        findings.addIf(
                !(grams > 0) || Double.isInfinite(grams),
                new Problem.NotPositive(Field.GRAMS, grams));
    }
}
