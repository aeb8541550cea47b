package clutchwright.app.season;

import clutchwright.app.cli.Exit;
import clutchwright.app.cli.Terminal;
import clutchwright.app.solver.BranchAndCut;
import clutchwright.engine.planning.IntegerProgramme.Answer;
import clutchwright.engine.planning.IntegerProgramme.Effort;
import clutchwright.engine.planning.ProposedPairing;
import clutchwright.engine.planning.SeasonPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/// Prints which pairings of a season are worth most together.
@Command(
        name = "plan",
        description = {
            "Choose a season's pairings: what each may bring and the limits of the house in, the"
                    + " pairings that are worth most together out.",
            "docs/plan-file.md says what the file holds."
        },
        footer = {"", "Example: clutchwright plan season.json --json"})
public final class PlanCommand implements Callable<Integer> {

    /// So close to the bound it is called the best.
    private static final double PROVEN = 1e-6;

    private final Terminal terminal;

    @Parameters(paramLabel = "FILE", description = "The pairings to choose from, as JSON.")
    private Path file = Path.of("");

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "How long to look at most; default ${DEFAULT-VALUE}.")
    private double seconds = 60;

    @Option(
            names = "--gap",
            paramLabel = "SHARE",
            description =
                    "So close to the bound is near enough, 0 to below 1; default ${DEFAULT-VALUE}.")
    private double gap;

    @Option(
            names = "--instead",
            paramLabel = "DAM:SIRE",
            description = "What it costs to make this pair in any case.")
    private String instead = "";

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    public PlanCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /// As it is printed.
    ///
    /// @param status `best`, `within gap`, `impossible` or `out of time`
    record Printed(
            String status,
            double value,
            double bound,
            double gap,
            List<Pair> pairings,
            List<Kind> hatchlings,
            Optional<Instead> instead) {

        record Pair(String dam, String sire, double worth, double kinship) {}

        record Kind(String kind, double expected) {}

        /// @param loss of the plan's value; nothing where the limits do not allow it
        record Instead(String dam, String sire, Optional<Double> loss) {}
    }

    @Override
    public Integer call() {
        if (!(seconds > 0 && seconds <= 86_400) || !(gap >= 0 && gap < 1)) {
            return refused(
                    List.of(
                            "--seconds, --gap: expected seconds above 0 and a share from 0 to below 1."));
        }
        String text;
        try {
            text = Files.readString(file);
        } catch (IOException e) {
            return refused(List.of("%s: cannot be read as UTF-8 text.".formatted(file)));
        }
        return switch (PlanFile.read(text)) {
            case PlanFile.Refused(var faults) ->
                    refused(faults.stream().map(fault -> file + ": " + fault).toList());
            case PlanFile.Understood(var plan) -> solve(plan);
        };
    }

    private int solve(SeasonPlan plan) {
        var other = pair(plan);
        if (!instead.isEmpty() && other.isEmpty()) {
            return refused(
                    List.of(
                            "--instead: expected DAM:SIRE of a pair of the file that may be made, not %s."
                                    .formatted(instead)));
        }
        return switch (new BranchAndCut().solve(plan.programme(), new Effort(seconds, gap))) {
            case Answer.Impossible() ->
                    nothing(
                            "impossible",
                            "No set of these pairings keeps all limits: look at what is pinned, and at what projects ask for at least.");
            case Answer.OutOfTime() ->
                    nothing("out of time", "No plan was found in %s seconds.".formatted(seconds));
            case Answer.Found found -> print(plan, found, other);
        };
    }

    private Optional<ProposedPairing> pair(SeasonPlan plan) {
        return plan.admissible().stream()
                .filter(pair -> instead.equals(pair.dam() + ":" + pair.sire()))
                .findFirst();
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private int print(SeasonPlan plan, Answer.Found found, Optional<ProposedPairing> other) {
        var chosen = plan.chosen(found);
        var value = plan.worth(chosen);
        var printed =
                new Printed(
                        found.gap() <= PROVEN ? "best" : "within gap",
                        value,
                        found.bound(),
                        found.gap(),
                        chosen.stream()
                                .map(
                                        pair ->
                                                new Printed.Pair(
                                                        pair.dam(),
                                                        pair.sire(),
                                                        pair.worth(),
                                                        pair.kinship()))
                                .toList(),
                        plan.hatchlings(chosen).entrySet().stream()
                                .map(each -> new Printed.Kind(each.getKey(), each.getValue()))
                                .toList(),
                        other.map(pair -> instead(plan, pair, value)));
        if (json) {
            terminal.json(printed);
        } else {
            lines(printed).forEach(terminal::print);
        }
        return Exit.DONE.status();
    }

    private Printed.Instead instead(SeasonPlan plan, ProposedPairing pair, double value) {
        var with = plan.pinning(pair);
        var loss =
                new BranchAndCut().solve(with.programme(), new Effort(seconds, gap))
                                instanceof Answer.Found found
                        ? Optional.of(value - with.worth(with.chosen(found)))
                        : Optional.<Double>empty();
        return new Printed.Instead(pair.dam(), pair.sire(), loss);
    }

    private static List<String> lines(Printed printed) {
        var lines = new java.util.ArrayList<String>();
        for (var pair : printed.pairings()) {
            lines.add("%s x %s".formatted(pair.dam(), pair.sire()));
        }
        lines.add("");
        lines.add(
                String.format(
                        Locale.ENGLISH,
                        "%d %s, worth %.2f together: %s; no plan is worth more than %.2f.",
                        printed.pairings().size(),
                        printed.pairings().size() == 1 ? "pairing" : "pairings",
                        printed.value(),
                        printed.status(),
                        printed.bound()));
        for (var kind : printed.hatchlings()) {
            lines.add(
                    String.format(
                            Locale.ENGLISH,
                            "%s: %.2f hatchlings expected.",
                            kind.kind(),
                            kind.expected()));
        }
        printed.instead()
                .ifPresent(
                        other ->
                                lines.add(
                                        other.loss()
                                                .map(
                                                        loss ->
                                                                String.format(
                                                                        Locale.ENGLISH,
                                                                        "%s x %s in any case costs %.2f.",
                                                                        other.dam(),
                                                                        other.sire(),
                                                                        loss))
                                                .orElse(
                                                        "%s x %s cannot be made under these limits."
                                                                .formatted(
                                                                        other.dam(),
                                                                        other.sire()))));
        return lines;
    }

    private int nothing(String status, String words) {
        if (json) {
            terminal.json(new Nothing(status));
        } else {
            terminal.print(words);
        }
        return Exit.FINDING.status();
    }

    record Nothing(String status) {}

    private int refused(List<String> faults) {
        faults.forEach(terminal::say);
        return Exit.BAD_INPUT.status();
    }
}
