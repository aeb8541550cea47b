package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Strands;
import clutchwright.app.web.Form;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.app.wording.ReadingWords;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Reading;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Parent;
import clutchwright.records.checks.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/// Reads the parents of a prediction, and gathers what is wrong with them beside their fields.
final class ParentReader {

    private static final int SHORT_LINE = 34;

    private final Holding holding;
    private final Formats formats;
    private final String species;
    private Form form;

    ParentReader(Holding holding, Formats formats, Form asked, String species) {
        this.holding = holding;
        this.formats = formats;
        this.species = species;
        this.form = asked.with("species", species);
    }

    /// The form as asked, with the tags of animals that a link named and every fault.
    Form form() {
        return form;
    }

    String species() {
        return species;
    }

    /// @param role `dam` or `sire`
    /// @param number of the sire: `""`, `2` or `3`
    /// @return nothing where neither an animal nor genes are given, or they are faulty
    Optional<ParentCard> read(Named named, String role, String number, Sex sex) {
        var tagField = role + "Tag" + number;
        var lineField = role + "Line" + number;
        var line = form.text(lineField);
        return switch (named) {
            case Named.Unclear(var sentence) -> faulty(tagField, sentence);
            case Named.Nobody() -> line.isEmpty() ? Optional.empty() : typed(lineField, line, sex);
            case Named.One(var animal) -> {
                form = form.with(tagField, animal.tag().value());
                yield line.isEmpty()
                        ? recorded(tagField, animal, sex)
                        : faulty(
                                lineField,
                                "Either an animal or genes: take away the genes, or the tag %s."
                                        .formatted(animal.tag()));
            }
        };
    }

    private Optional<ParentCard> recorded(String field, Animal animal, Sex sex) {
        if (animal.sex().filter(sex.opposite()::equals).isPresent()) {
            var as = sex == Sex.FEMALE ? Parent.DAM : Parent.SIRE;
            var words = new ProblemWords(id -> animal.tag().value(), formats);
            return faulty(field, words.of(new Problem.WrongSex(animal.id(), as, sex.opposite())));
        }
        if (!animal.species().equals(species)) {
            return faulty(
                    field,
                    "%s is a %s, and the other animal is a %s: they have no young together."
                            .formatted(
                                    animal.tag(),
                                    commonName(animal.species()),
                                    commonName(species)));
        }
        var knowledge = holding.knowledge();
        return Optional.of(
                new ParentCard(
                        Optional.of(animal),
                        animal.tag().value(),
                        animal.name(),
                        species,
                        holding.line(animal.id()),
                        Strands.of(knowledge.strands(animal.id())),
                        knowledge.asParent(animal.id(), sex),
                        animal.sex().isPresent()
                                ? List.of()
                                : List.of(
                                        "Not sexed yet: taken as a %s here."
                                                .formatted(AnimalWords.sex(sex)))));
    }

    private Optional<ParentCard> typed(String field, String line, Sex sex) {
        var lines = holding.lines(species);
        return switch (lines.read(line)) {
            case Reading.Unclear(var faults, _) ->
                    faulty(
                            field,
                            faults.stream()
                                    .map(
                                            fault ->
                                                    "Character %d: %s"
                                                            .formatted(
                                                                    fault.start() + 1,
                                                                    ReadingWords.of(fault)))
                                    .collect(Collectors.joining(" ")));
            case Reading.Understood(var genes, _, var notes) -> {
                if (genes.sex().filter(sex.opposite()::equals).isPresent()) {
                    yield faulty(
                            field,
                            "The line speaks of a %s, and this is the place of a %s."
                                    .formatted(
                                            AnimalWords.sex(sex.opposite()), AnimalWords.sex(sex)));
                }
                var stated = lines.asParent(genes, sex);
                var words = new ArrayList<>(sentences(notes));
                stated.open()
                        .forEach(
                                question ->
                                        words.add(
                                                "“%s” may be %s: each is taken to be equally likely."
                                                        .formatted(
                                                                question.written(),
                                                                String.join(
                                                                        " or ",
                                                                        question.choices()))));
                yield Optional.of(
                        new ParentCard(
                                Optional.empty(),
                                title(lines.write(genes), sex),
                                "",
                                species,
                                GeneLineMarkup.of(genes),
                                ParentCard.strands(stated.parent()),
                                stated.parent(),
                                words));
            }
        };
    }

    /// The page shows the cautions themselves.
    private static List<String> sentences(List<Reading.Note> notes) {
        return notes.stream()
                .filter(note -> note.kind() != Reading.Note.NoteKind.CAUTION)
                .map(ReadingWords::of)
                .toList();
    }

    private static String title(String line, Sex sex) {
        if (line.isBlank()) {
            return "Normal";
        }
        return line.length() <= SHORT_LINE
                ? line
                : sex == Sex.FEMALE ? "a dam as typed" : "a sire as typed";
    }

    private Optional<ParentCard> faulty(String field, String sentence) {
        form = form.withFault(field, sentence);
        return Optional.empty();
    }

    private String commonName(String id) {
        return holding.findLines(id)
                .map(lines -> SpeciesWords.within(lines.catalogue().species()))
                .orElse(id);
    }
}
