package clutchwright.app.proofs;

import clutchwright.app.cli.TextTable;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ProofWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/// What is known of whether an animal carries an allele, as a person reads it in the terminal.
final class ProvedText {

    private static final int MOST_MATES = 12;

    private ProvedText() {}

    static List<String> lines(Proved proved) {
        var lines = new ArrayList<String>();
        lines.add(
                "%s carries %s at a chance of %s.%s"
                        .formatted(
                                proved.animal(),
                                proved.allele(),
                                Chances.percent(proved.chance()),
                                proved.error() > 0
                                        ? " The figure may be off by %s."
                                                .formatted(Chances.percent(proved.error()))
                                        : ""));
        lines.add("");
        if (proved.evidence().isEmpty()) {
            lines.add("No clutch of it is on record.");
        } else {
            lines.addAll(evidence(proved));
        }
        lines.add("");
        if (proved.why().isPresent()) {
            lines.add(ProofWords.noMating(proved.why().get(), proved.animal(), proved.allele()));
        }
        if (!proved.mates().isEmpty() && !proved.atSight()) {
            lines.addAll(mates(proved));
            lines.add("");
            lines.add(ProofWords.HOW_TO_READ.formatted(proved.eggs()));
            lines.add(ProofWords.BEFORE_YOU_PAIR);
        }
        return lines;
    }

    private static List<String> evidence(Proved proved) {
        var rows =
                proved.evidence().stream()
                        .map(
                                clutch ->
                                        List.of(
                                                clutch.clutch(),
                                                ProofWords.looks(clutch.looks()),
                                                factor(clutch)))
                        .toList();
        return new TextTable(
                        List.of("Clutch", "Seen", "Odds times"), List.of(false, false, true), rows)
                .lines();
    }

    private static String factor(Proved.Clutch clutch) {
        if (clutch.settles()) {
            return "settles it";
        }
        return clutch.bayesFactor().map(ProofWords::factor).orElse("settled without it");
    }

    private static List<String> mates(Proved proved) {
        var rows =
                proved.mates().stream()
                        .limit(MOST_MATES)
                        .map(
                                mate ->
                                        List.of(
                                                mate.tag(),
                                                Chances.percent(mate.chance()),
                                                needed(mate, "0.05"),
                                                needed(mate, "0.01"),
                                                needed(mate, "0.001"),
                                                Chances.percent(mate.atLeastOne()),
                                                String.format(Locale.ROOT, "%.2f", mate.bits())))
                        .toList();
        var lines =
                new ArrayList<>(
                        new TextTable(
                                        List.of(
                                                "Mate",
                                                "Carries",
                                                "To 5 %",
                                                "To 1 %",
                                                "To 0.1 %",
                                                "Shows one",
                                                "Bits"),
                                        List.of(false, true, true, true, true, true, true),
                                        rows)
                                .lines());
        if (proved.mates().size() > MOST_MATES) {
            lines.add("and %d more".formatted(proved.mates().size() - MOST_MATES));
        }
        return lines;
    }

    private static String needed(Proved.Mating mate, String chance) {
        return ProofWords.needed(mate.needed().getOrDefault(chance, OptionalInt.empty()));
    }
}
