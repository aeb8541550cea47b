package clutchwright.app.season;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Markup;
import clutchwright.app.parts.Strands;
import clutchwright.app.wording.Chances;
import clutchwright.engine.catalogue.Species;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.Set;
import java.util.stream.Collectors;

/// Hatchlings that look alike, as a row of the table.
///
/// @param tradeName what the trade calls exactly this combination; empty where it has no name
/// @param carries what they may hold unseen, in type
/// @param twoCopies what shows and may be there twice, in words; empty where nothing is
/// @param sexes the split where it is not even, in words; else empty
public record KindRow(
        String name,
        String tradeName,
        Markup strands,
        Markup carries,
        String twoCopies,
        Odds odds,
        String sexes) {

    static KindRow of(Outcome outcome, Cross cross, Species species, int eggs) {
        return new KindRow(
                outcome.name(),
                tradeName(outcome, species),
                Strands.of(outcome).small(),
                GeneLineMarkup.of(outcome).carried(),
                outcome.homozygous().stream()
                        .map(
                                held ->
                                        held.chance().isWhole()
                                                ? "two copies of " + held.allele().name()
                                                : "two copies of %s %s"
                                                        .formatted(
                                                                held.allele().name(),
                                                                Chances.fraction(held.chance())))
                        .collect(Collectors.joining(", ")),
                new Odds(outcome.chance(), cross.atLeastOne(outcome, eggs)),
                sexes(outcome));
    }

    /// Whether there may be anything in them that does not show.
    public boolean holdsMore() {
        return !carries.toString().isEmpty() || !twoCopies.isEmpty();
    }

    private static String tradeName(Outcome outcome, Species species) {
        var shows = Set.copyOf(outcome.shows());
        return species.combinations().stream()
                .filter(combination -> Set.copyOf(combination.phenotypes()).equals(shows))
                .map(combination -> combination.name())
                .findFirst()
                .orElse("");
    }

    private static String sexes(Outcome outcome) {
        var males = outcome.sexes().getOrDefault(Sex.MALE, Fraction.NONE);
        if (males.equals(Fraction.HALF)) {
            return "";
        }
        if (males.isNone()) {
            return "females only";
        }
        return males.isWhole()
                ? "males only"
                : "males %s, females %s"
                        .formatted(
                                Chances.percent(males.value()),
                                Chances.percent(males.complement().value()));
    }
}
