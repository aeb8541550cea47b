package clutchwright.app.collection;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Pointing;
import clutchwright.app.cli.Terminal;
import clutchwright.app.cli.TextTable;
import clutchwright.app.holding.PackageInHand;
import clutchwright.app.wording.KinshipWords;
import clutchwright.records.exchange.PackageCollection;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints how inbred the animals of a collection are, and how closely pairs are related.
@Command(
        name = "kinship",
        description = "Say how inbred animals are, and how closely pairs of them are related.",
        footer = {"", "Example: clutchwright kinship animals.csv --pairs D-30:E-11,D-30:E-12"})
public final class KinshipCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "PACKAGE", description = "A folder, a .zip or a table of animals.")
    private Path file = Path.of("");

    @Option(
            names = "--pairs",
            paramLabel = "A:B,C:D",
            description = "Pairs of tags; put \\ before a colon or a comma that is part of a tag.")
    private Optional<String> pairs = Optional.empty();

    @Option(
            names = "--species",
            paramLabel = "ID",
            description = "Of rows that do not say theirs; default ${DEFAULT-VALUE}.")
    private String species = "python-regius";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public KinshipCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        var asked = pairs.map(this::pairs).orElse(Optional.of(List.of()));
        // Both are read before either is refused, so that all faults are named at once.
        var collection =
                PackageInHand.read(file, species, terminal::say).map(PackageInHand::collection);
        if (asked.isEmpty() || collection.isEmpty() || !areKnown(asked.get(), collection.get())) {
            return Exit.BAD_INPUT.status();
        }
        var report = KinshipReport.of(collection.get(), asked.get());
        if (json) {
            terminal.json(report);
        } else {
            print(report);
        }
        return Exit.DONE.status();
    }

    private Optional<List<PairsText.Pair>> pairs(String text) {
        return switch (PairsText.read(text)) {
            case PairsText.Result.Pairs(var found) -> Optional.of(found);
            case PairsText.Result.NoPair(var start, var end) -> {
                point(start, end, "two tags with a colon between them were expected, as in A:B.");
                yield Optional.empty();
            }
        };
    }

    private boolean areKnown(List<PairsText.Pair> asked, PackageCollection collection) {
        boolean known = true;
        for (var pair : asked) {
            for (var tag : List.of(pair.one(), pair.other())) {
                if (collection.find(tag).isEmpty()) {
                    var near = collection.tagsNear(tag);
                    point(
                            pair.start(),
                            pair.end(),
                            "no animal of the collection has the tag “%s”%s."
                                    .formatted(
                                            tag,
                                            near.isEmpty()
                                                    ? ""
                                                    : "; near to it are "
                                                            + String.join(", ", near)));
                    known = false;
                }
            }
        }
        return known;
    }

    private void point(int start, int end, String sentence) {
        terminal.say("--pairs, character %d: %s".formatted(start + 1, sentence));
        Pointing.at(pairs.orElse(""), start, end).forEach(terminal::say);
    }

    private void print(KinshipReport report) {
        var inbred = report.inbreeding().stream().filter(one -> one.f() > 0).toList();
        if (!report.kinship().isEmpty()) {
            table(
                    List.of("pair", "kinship", "young as close as"),
                    report.kinship().stream()
                            .map(
                                    pair ->
                                            List.of(
                                                    pair.a() + " × " + pair.b(),
                                                    KinshipWords.figure(pair.phi()),
                                                    KinshipWords.asCloseAs(pair.phi())))
                            .toList());
            terminal.print("");
        }
        if (inbred.isEmpty()) {
            terminal.print("None of %d animals is inbred.".formatted(report.inbreeding().size()));
        } else {
            table(
                    List.of("animal", "inbreeding", "as close as"),
                    inbred.stream()
                            .map(
                                    one ->
                                            List.of(
                                                    one.tag(),
                                                    KinshipWords.figure(one.f()),
                                                    KinshipWords.asCloseAs(one.f())))
                            .toList());
            int others = report.inbreeding().size() - inbred.size();
            terminal.print("Of %d more animals no inbreeding is on record.".formatted(others));
        }
        terminal.print(KinshipWords.method(report.sireQuestions()));
    }

    private void table(List<String> heads, List<List<String>> rows) {
        new TextTable(heads, List.of(false, true, false), new ArrayList<>(rows))
                .lines()
                .forEach(terminal::print);
    }
}
