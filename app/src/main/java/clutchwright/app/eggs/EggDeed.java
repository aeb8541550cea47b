package clutchwright.app.eggs;

import clutchwright.app.wording.CandlingWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.EggId;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/// What a keeper does with some eggs of a clutch at once.
sealed interface EggDeed {

    record Candle(Candling.Finding finding, LocalDate on, String notes) implements EggDeed {}

    record Lose(LocalDate on, String finding) implements EggDeed {}

    /// @param incubator left as it is where it is blank
    record PutInto(String label, String incubator) implements EggDeed {

        /// The box of that label, made or moved to another incubator where that is said.
        private Edit<Box> box(Transaction tx) {
            var boxes = new Boxes(tx);
            var found =
                    boxes.all().stream()
                            .filter(box -> box.label().equalsIgnoreCase(label.strip()))
                            .findFirst();
            if (found.isEmpty()) {
                return boxes.add(label, incubator, "");
            }
            var box = found.get();
            return incubator.isBlank() || incubator.strip().equals(box.incubator())
                    ? new Edit.Saved<>(box)
                    : boxes.update(
                            new Box(box.id(), box.version(), box.label(), incubator, box.notes()));
        }
    }

    record Reopen() implements EggDeed {}

    /// An egg as it was seen.
    record Seen(EggId id, long version) {}

    /// What came of it for all the eggs together: all of them or none.
    sealed interface Result {

        record Done(int eggs) implements Result {}

        record Refused(List<Problem> problems) implements Result {

            public Refused {
                problems = List.copyOf(problems);
            }
        }

        record Stale(int egg) implements Result {}
    }

    default Result to(Transaction tx, List<Seen> eggs) {
        var problems = new ArrayList<Problem>();
        for (var edit : edits(tx, eggs)) {
            switch (edit) {
                case Edit.Saved<?> _ -> {}
                case Edit.Refused<?>(var found) -> problems.addAll(found);
                case Edit.Stale<?>(var current) -> {
                    tx.abandon();
                    return new Result.Stale(current instanceof Egg egg ? egg.number() : 0);
                }
            }
        }
        if (!problems.isEmpty()) {
            tx.abandon();
            return new Result.Refused(problems);
        }
        return new Result.Done(eggs.size());
    }

    private List<Edit<?>> edits(Transaction tx, List<Seen> seen) {
        var eggs = new Eggs(tx);
        var edits = new ArrayList<Edit<?>>();
        switch (this) {
            case Candle(var finding, var on, var notes) ->
                    seen.forEach(egg -> edits.add(eggs.candle(egg.id(), on, finding, notes)));
            case Lose(var on, var finding) ->
                    seen.forEach(egg -> edits.add(eggs.lose(egg.id(), egg.version(), on, finding)));
            case Reopen() -> seen.forEach(egg -> edits.add(eggs.reopen(egg.id(), egg.version())));
            case PutInto put -> {
                var box = put.box(tx);
                edits.add(box);
                box.saved()
                        .ifPresent(
                                into ->
                                        edits.add(
                                                eggs.putInto(
                                                        into.id(),
                                                        seen.stream().map(Seen::id).toList())));
            }
        }
        return edits;
    }

    /// In the keeper's words, for the journal and for the sentence afterwards.
    default String what() {
        return switch (this) {
            case Candle(var finding, _, _) ->
                    switch (finding) {
                        case GOOD, NO_VEINS, DOUBTFUL, COLLAPSED ->
                                "candled: " + CandlingWords.of(finding);
                        case SLUG -> "called slug";
                    };
            case Lose _ -> "marked lost";
            case PutInto(var label, _) -> "put into box " + label;
            case Reopen() -> "waited for again";
        };
    }
}
