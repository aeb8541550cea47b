package clutchwright.app.collection;

import clutchwright.app.collection.AnimalFormView.AnimalClash;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.statements.Latest;
import clutchwright.records.statements.Statements;
import clutchwright.records.statements.Witness;
import clutchwright.records.store.Transaction;
import java.util.List;

/// Writes what the form of an animal holds, all of it or nothing.
record AnimalSaving(Holding holding, Problems problems) {

    /// What became of it.
    sealed interface Result {

        record Saved(Animal animal) implements Result {}

        /// @param asks whether nothing stands against it but a question
        record Faulty(Form form, boolean asks) implements Result {}

        /// @param clashes where that version differs from what was typed
        record Stale(Animal theirs, List<AnimalClash> clashes) implements Result {

            public Stale {
                clashes = List.copyOf(clashes);
            }
        }

        /// It is not on record any more.
        record Gone() implements Result {}
    }

    Result add(Transaction tx, Form form) {
        return switch (AnimalEntry.read(tx, holding, form, new Parentage.Founder())) {
            case Entry.Faulty<AnimalEntry>(var faulty) -> new Result.Faulty(faulty, false);
            case Entry.Understood<AnimalEntry>(var typed) -> {
                var animal = typed.place().placing(tx).apply(typed.particulars());
                yield finish(
                        tx,
                        form,
                        typed,
                        Latest.nothing(),
                        new Animals(tx).add(animal, questions(form)));
            }
        };
    }

    Result change(Transaction tx, AnimalId id, Form form) {
        var current = new Animals(tx).find(id);
        if (current.isEmpty()) {
            return new Result.Gone();
        }
        if (current.get().version() != version(form)) {
            return stale(tx, current.get(), form);
        }
        var before = new Statements(tx).latest(id);
        return switch (AnimalEntry.read(tx, holding, form, current.get().parentage())) {
            case Entry.Faulty<AnimalEntry>(var faulty) -> new Result.Faulty(faulty, false);
            case Entry.Understood<AnimalEntry>(var typed) -> {
                var animal = typed.place().placing(tx).apply(typed.particulars());
                yield finish(
                        tx,
                        form,
                        typed,
                        before,
                        new Animals(tx).update(current.get().with(animal), questions(form)));
            }
        };
    }

    static long version(Form form) {
        var text = form.text("version");
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 0;
    }

    private Result finish(
            Transaction tx, Form form, AnimalEntry typed, Latest before, Edit<Animal> edit) {
        return switch (edit) {
            case Edit.Saved<Animal>(var saved) -> {
                writeStatements(tx, saved, typed, before, form);
                yield new Result.Saved(saved);
            }
            case Edit.Stale<Animal>(var theirs) -> {
                tx.abandon();
                yield stale(tx, theirs, form);
            }
            case Edit.Refused<Animal>(var refused) -> {
                // A place may have been made already.
                tx.abandon();
                yield new Result.Faulty(
                        problems.beside(form, refused, AnimalSaving::field),
                        refused.stream().allMatch(Problem::isQuestion));
            }
        };
    }

    /// Only what differs from what is on record is new; what was written before stays.
    private void writeStatements(
            Transaction tx, Animal animal, AnimalEntry typed, Latest before, Form form) {
        var statements = new Statements(tx);
        typed.stated()
                .filter(
                        text ->
                                before.claim()
                                        .filter(
                                                claim ->
                                                        claim.genes()
                                                                .written()
                                                                .equals(text.written()))
                                        .isEmpty())
                .ifPresent(
                        text ->
                                statements.claim(
                                        animal.id(),
                                        text,
                                        Witness.on(holding.today(), form.text("statedBy"))));
        typed.shows()
                .filter(
                        text ->
                                before.sighting()
                                        .filter(
                                                seen ->
                                                        seen.genes()
                                                                .written()
                                                                .equals(text.written()))
                                        .isEmpty())
                .ifPresent(
                        text ->
                                statements.see(
                                        animal.id(),
                                        text,
                                        Witness.on(holding.today(), holding.author().name()),
                                        false));
    }

    private static Result stale(Transaction tx, Animal theirs, Form form) {
        return new Result.Stale(theirs, AnimalFilling.clashes(AnimalFilling.of(tx, theirs), form));
    }

    private static Questions questions(Form form) {
        return form.has("sure", "yes") ? Questions.ALL_THE_SAME : Questions.ASK;
    }

    private static String field(Problem problem) {
        if (problem instanceof Problem.UsedAs) {
            return "sex";
        }
        return switch (ProblemWords.fieldOf(problem)) {
            case NAME -> "name";
            case HATCHED -> "hatched";
            case ACQUIRED -> "acquired";
            case DAM -> "dam";
            case SIRE -> "sire";
            case NOTE -> "notes";
            case SPECIES -> "species";
            case ROOM, RACK, TUB -> "tub";
            default -> "tag";
        };
    }
}
