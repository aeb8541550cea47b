package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.PairingWords;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The form of a pairing.
final class PairingForm {

    /// Ticked by a keeper who was asked.
    static final String SURE = "sure";

    private PairingForm() {}

    /// What is planned.
    record Plan(int season, AnimalId dam, AnimalId sire, String notes) {}

    static Form of(Pairing pairing, String damTag, String sireTag) {
        var values = new LinkedHashMap<String, String>();
        values.put("version", Long.toString(pairing.version()));
        values.put("season", Integer.toString(pairing.season()));
        values.put("damTag", damTag);
        values.put("sireTag", sireTag);
        values.put("putTogether", pairing.putTogether().map(LocalDate::toString).orElse(""));
        values.put("separated", pairing.separated().map(LocalDate::toString).orElse(""));
        values.put("notes", pairing.notes());
        return Form.of(values);
    }

    static Entry<Plan> read(Transaction tx, Form form) {
        var fields = new Fields(form);
        var season = fields.whole("season", 1900, tx.today().getYear() + 2);
        var dam = mate(tx, form, fields, "damTag");
        var sire = mate(tx, form, fields, "sireTag");
        return fields.into(
                () -> new Plan(season.value(), dam.value(), sire.value(), form.text("notes")));
    }

    /// The pairing as it is to become. How far it has come follows from its days.
    static Entry<Pairing> read(Transaction tx, Form form, PairingId id) {
        var fields = new Fields(form);
        var version = fields.whole("version", 1, Integer.MAX_VALUE);
        var season = fields.whole("season", 1900, tx.today().getYear() + 2);
        var dam = mate(tx, form, fields, "damTag");
        var sire = mate(tx, form, fields, "sireTag");
        var together = fields.anyDate("putTogether");
        var separated = fields.anyDate("separated");
        return fields.into(
                () ->
                        new Pairing(
                                id,
                                version.value(),
                                season.value(),
                                dam.value(),
                                sire.value(),
                                separated.value().isPresent()
                                        ? Pairing.State.DONE
                                        : together.value().isPresent()
                                                ? Pairing.State.ACTIVE
                                                : Pairing.State.PLANNED,
                                together.value(),
                                separated.value(),
                                form.text("notes")));
    }

    private static Fields.Read<AnimalId> mate(
            Transaction tx, Form form, Fields fields, String field) {
        return switch (Named.read(tx, form, field)) {
            case Named.One(var animal) -> fields.understood(animal.id());
            case Named.Unclear(var sentence) -> fields.faulty(field, sentence);
            case Named.Nobody() ->
                    fields.faulty(
                            field,
                            field.startsWith("dam")
                                    ? "Write the tag or the name of the dam."
                                    : "Write the tag or the name of the sire.");
        };
    }

    /// The form with every problem at its field; questions are asked apart.
    static Form withProblems(Form form, List<Problem> problems, Holding holding, Formats formats) {
        var faulty = form;
        for (var problem : problems) {
            if (!problem.isQuestion()) {
                faulty = faulty.withFault(field(problem), sentence(problem, holding, formats));
            }
        }
        return faulty;
    }

    /// The questions that a pairing raises, in a row; empty where it raises none.
    static String questions(List<Problem> problems, Holding holding, Formats formats) {
        return String.join(
                " ",
                problems.stream()
                        .filter(Problem::isQuestion)
                        .map(problem -> sentence(problem, holding, formats))
                        .toList());
    }

    static String sentence(Problem problem, Holding holding, Formats formats) {
        if (problem instanceof Problem.NameTaken(var field, var name) && field == Field.SEASON) {
            return PairingWords.twice(Integer.parseInt(name));
        }
        var knowledge = holding.knowledge();
        return new ProblemWords(
                        id ->
                                knowledge
                                        .find(id)
                                        .map(animal -> animal.tag().value())
                                        .orElse("this animal"),
                        formats)
                .of(problem);
    }

    private static String field(Problem problem) {
        var fields =
                Map.of(
                        Field.DAM, "damTag",
                        Field.SIRE, "sireTag",
                        Field.PUT_TOGETHER, "putTogether",
                        Field.SEPARATED, "separated");
        if (problem instanceof Problem.NameTaken) {
            return "damTag";
        }
        return Optional.ofNullable(fields.get(ProblemWords.fieldOf(problem))).orElse("season");
    }
}
