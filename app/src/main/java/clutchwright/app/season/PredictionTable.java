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
        var bySex = prediction.outcomes().stream().anyMatch(PredictionTable::favoursOneSex);
        var heads = new ArrayList<>(List.of("What hatches", "Per egg", "", "In " + eggs));
        var right = new ArrayList<>(List.of(false, true, true, true));
        if (bySex) {
            heads.add("Males");
            right.add(true);
        }
        heads.add("Carries");
        right.add(false);
        return new TextTable(
                heads,
                right,
                prediction.outcomes().stream().map(group -> row(group, bySex)).toList());
    }

    private static boolean favoursOneSex(Prediction.Group group) {
        return group.sexes().values().stream().distinct().count() > 1;
    }

    private static List<String> row(Prediction.Group group, boolean bySex) {
        var row = new ArrayList<String>();
        row.add(group.name());
        row.add(group.chance().fraction());
        row.add(Chances.percent(group.chance().value()));
        row.add(Chances.percent(group.atLeastOne()));
        if (bySex) {
            var males = group.sexes().get("male");
            row.add(males == null ? "0/1" : males.fraction());
        }
        row.add(carries(group));
        return row;
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
