package clutchwright.app.season;

import clutchwright.app.cli.TextTable;
import clutchwright.app.wording.Chances;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// A prediction as a person reads it in the terminal: cautions first, then the groups.
record PredictionTable(Prediction prediction, int eggs) {

    List<String> lines() {
        var lines = new ArrayList<String>();
        for (var care : prediction.cautions()) {
            lines.add("Care: %s (%s; %s)".formatted(care.words(), care.standing(), care.source()));
        }
        if (!prediction.cautions().isEmpty()) {
            lines.add("Ask a veterinarian before you breed an animal that is not well.");
            lines.add("");
        }
        if (prediction.dying().value() > 0) {
            lines.add(
                    "Of all embryos %s do not live because of their genotype; the chances below are"
                            .formatted(chance(prediction.dying())));
            lines.add("among those that live.");
            lines.add("");
        }
        lines.addAll(groups().lines());
        lines.add("");
        lines.add(footer());
        return lines;
    }

    private TextTable groups() {
        return new TextTable(
                List.of("What hatches", "Per egg", "", "In " + eggs, "Carries"),
                List.of(false, true, true, true, false),
                prediction.outcomes().stream().map(PredictionTable::row).toList());
    }

    private static List<String> row(Prediction.Group group) {
        return List.of(
                group.name(),
                group.chance().fraction(),
                Chances.percent(group.chance().value()),
                Chances.percent(group.atLeastOne()),
                carries(group));
    }

    private static String carries(Prediction.Group group) {
        var unseen = new ArrayList<String>();
        group.carries().forEach(held -> unseen.add(held.allele() + " " + chance(held.chance())));
        group.twoCopies()
                .forEach(held -> unseen.add("two " + held.allele() + " " + chance(held.chance())));
        return unseen.stream().collect(Collectors.joining(", "));
    }

    private static String chance(Prediction.Chance chance) {
        return chance.value() == 1 ? "certain" : chance.fraction();
    }

    private String footer() {
        var kinds =
                prediction.outcomeCount()
                        + (prediction.outcomeCount().bitLength() == 1 ? " kind" : " kinds")
                        + " of hatchling can be told apart";
        var left =
                prediction.outcomeCount().equals(BigInteger.valueOf(prediction.listed()))
                        ? "."
                        : "; the %d likeliest are listed.".formatted(prediction.listed());
        return kinds
                + left
                + " “In %d” is the chance of at least one if %d eggs all hatch."
                        .formatted(eggs, eggs);
    }
}
