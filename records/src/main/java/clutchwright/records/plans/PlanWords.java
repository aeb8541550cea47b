package clutchwright.records.plans;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.util.List;
import java.util.Optional;

/// What was said of single pairs for a season's plan.
public final class PlanWords {

    private final Transaction tx;

    public PlanWords(Transaction tx) {
        this.tx = tx;
    }

    public List<PlanWord> ofSeason(int season) {
        return tx.list(
                PlanWords::read, "select * from plan_word where season = ? order by id", season);
    }

    /// Says it, or says it with another reason. What is pinned is no longer forbidden, and the
    /// other way round; a female has one pinned male at most.
    ///
    /// @throws IllegalArgumentException if a hindrance is overruled without a reason
    public void say(int season, AnimalId dam, AnimalId sire, PlanWord.Word word, String reason) {
        var said = new PlanWord(0, season, dam, sire, word, reason);
        switch (word) {
            case PINNED -> {
                takeBack(season, dam, sire, PlanWord.Word.FORBIDDEN);
                ofSeason(season).stream()
                        .filter(other -> other.word() == PlanWord.Word.PINNED)
                        .filter(other -> other.dam().equals(dam) && !other.sire().equals(sire))
                        .forEach(other -> tx.delete("plan_word", other.id()));
            }
            case FORBIDDEN -> takeBack(season, dam, sire, PlanWord.Word.PINNED);
            case OVERRULED -> {}
        }
        var there = find(season, dam, sire, word);
        if (there.isPresent()) {
            tx.update("plan_word", there.get().id(), values(said));
        } else {
            tx.insert("plan_word", values(said));
        }
    }

    /// @return whether it was said
    public boolean takeBack(int season, AnimalId dam, AnimalId sire, PlanWord.Word word) {
        var there = find(season, dam, sire, word);
        there.ifPresent(said -> tx.delete("plan_word", said.id()));
        return there.isPresent();
    }

    private Optional<PlanWord> find(int season, AnimalId dam, AnimalId sire, PlanWord.Word word) {
        return tx.first(
                PlanWords::read,
                "select * from plan_word where season = ? and dam = ? and sire = ? and word = ?",
                season,
                dam.value(),
                sire.value(),
                word.name());
    }

    private static Values values(PlanWord said) {
        return Values.of()
                .set("season", said.season())
                .set("dam", said.dam().value())
                .set("sire", said.sire().value())
                .set("word", said.word())
                .set("reason", said.reason());
    }

    private static PlanWord read(Row row) {
        return new PlanWord(
                row.number("id"),
                Math.toIntExact(row.number("season")),
                new AnimalId(row.number("dam")),
                new AnimalId(row.number("sire")),
                PlanWord.Word.valueOf(row.text("word")),
                row.text("reason"));
    }
}
