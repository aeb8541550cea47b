package clutchwright.app.season;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Pointing;
import clutchwright.app.cli.Terminal;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/// Prints what a pairing of two gene lines gives.
@Command(
        name = "predict",
        description = "Say what a pairing gives: two gene lines in, every kind of hatchling out.",
        footer = {"", "Example: clutchwright predict --dam \"Pastel het Clown\" --sire \"Clown\""})
public final class PredictCommand implements Callable<Integer> {

    private static final int MOST_EGGS = 1000;

    private final Terminal terminal;

    @Option(
            names = "--dam",
            required = true,
            paramLabel = "LINE",
            description = "Her genes, as breeders write them.")
    private String dam = "";

    @Option(
            names = "--sire",
            required = true,
            paramLabel = "LINE",
            description = "His genes, as breeders write them.")
    private String sire = "";

    @Option(
            names = "--eggs",
            paramLabel = "N",
            description = "Eggs of the clutch, all of which hatch; default ${DEFAULT-VALUE}.")
    private int eggs = 6;

    @Option(
            names = "--limit",
            paramLabel = "K",
            description = "List so many of the likeliest kinds; default ${DEFAULT-VALUE}.")
    private int limit = 10_000;

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Whose genes; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public PredictCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (!argumentsMakeSense()) {
            return Exit.BAD_INPUT.status();
        }
        var lines = GeneLine.of(Catalogue.shipped(species));
        // Both are read before either is refused, so that all faults are named at once.
        var mother = read(lines, "--dam", dam, Sex.FEMALE);
        var father = read(lines, "--sire", sire, Sex.MALE);
        if (mother.isEmpty() || father.isEmpty()) {
            return Exit.BAD_INPUT.status();
        }
        var cross = Cross.of(lines.catalogue().model(), mother.get(), father.get());
        var prediction = Prediction.of(cross, eggs, limit);
        if (json) {
            terminal.json(prediction);
        } else {
            new PredictionTable(prediction, eggs).lines().forEach(terminal::print);
        }
        return Exit.DONE.status();
    }

    private boolean argumentsMakeSense() {
        if (!Catalogue.shippedSpecies().contains(species)) {
            terminal.say(
                    "--species: no catalogue of “%s”; there are %s."
                            .formatted(species, String.join(", ", Catalogue.shippedSpecies())));
            return false;
        }
        if (eggs < 1 || eggs > MOST_EGGS) {
            terminal.say("--eggs: write a number from 1 to %d, not %d.".formatted(MOST_EGGS, eggs));
            return false;
        }
        if (limit < 1) {
            terminal.say("--limit: write a number of at least 1, not %d.".formatted(limit));
            return false;
        }
        return true;
    }

    private Optional<ParentGenotype> read(GeneLine lines, String option, String line, Sex sex) {
        return switch (lines.read(line)) {
            case Reading.Unclear(var faults, var parts) -> {
                faults.forEach(
                        fault ->
                                point(
                                        option,
                                        ReadingWords.of(fault),
                                        line,
                                        fault.start(),
                                        fault.end()));
                yield Optional.empty();
            }
            case Reading.Understood(var genes, var parts, var notes) -> {
                if (genes.sex().filter(sex.opposite()::equals).isPresent()) {
                    point(
                            option,
                            "The line speaks of a "
                                    + word(sex.opposite())
                                    + ", and this is the place of a "
                                    + word(sex)
                                    + ".",
                            line,
                            0,
                            line.length());
                    yield Optional.empty();
                }
                notes.stream()
                        .filter(note -> note.kind() != Reading.Note.NoteKind.CAUTION)
                        .forEach(
                                note ->
                                        point(
                                                option,
                                                ReadingWords.of(note),
                                                line,
                                                note.start(),
                                                note.end()));
                var stated = lines.asParent(genes, sex);
                stated.open().forEach(question -> sayOpen(option, question));
                yield Optional.of(stated.parent());
            }
        };
    }

    private void sayOpen(String option, GeneLine.OpenQuestion question) {
        terminal.say(
                "%s: “%s” may be %s: each is taken to be equally likely."
                        .formatted(
                                option,
                                question.written(),
                                String.join(" or ", question.choices())));
    }

    private void point(String option, String sentence, String line, int start, int end) {
        terminal.say("%s, character %d: %s".formatted(option, start + 1, sentence));
        Pointing.at(line, start, end).forEach(terminal::say);
    }

    private static String word(Sex sex) {
        return sex.name().toLowerCase(Locale.ROOT);
    }
}
