package clutchwright.app.season;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.Chances;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Viability;
import java.util.ArrayList;
import java.util.List;

/// Why some embryos of a pairing do not live, as far as the catalogue says so.
///
/// @param counted statements that the figures are computed with, one sentence each
/// @param disputed statements that they are not computed with
public record Losses(List<String> counted, List<String> disputed) {

    public Losses {
        counted = List.copyOf(counted);
        disputed = List.copyOf(disputed);
    }

    static Losses of(Catalogue catalogue, AtStake stake) {
        var counted = new ArrayList<String>();
        var disputed = new ArrayList<String>();
        for (var locus : stake.loci()) {
            var map = catalogue.model().theLocus(locus);
            for (var pair : stake.pairs(locus)) {
                var viability = map.viabilityOf(pair);
                if (!viability.chance().isWhole()) {
                    var entry = catalogue.species().findLocus(locus);
                    var what =
                            "%s (%s)".formatted(map.phenotypeOf(pair).name(), pair)
                                    + entry.map(found -> note(found, pair)).orElse("");
                    sort(viability, what, counted, disputed);
                }
            }
        }
        for (var combination : catalogue.model().combinations()) {
            if (!combination.viability().chance().isWhole() && stake.mayGive(combination.parts())) {
                sort(
                        combination.viability(),
                        CautionWords.parts(combination.parts()) + " together",
                        counted,
                        disputed);
            }
        }
        return new Losses(counted, disputed);
    }

    private static void sort(
            Viability viability, String what, List<String> counted, List<String> disputed) {
        var sentence =
                "%s: %s hatch; %s."
                        .formatted(
                                what,
                                viability.chance().isNone()
                                        ? "none"
                                        : Chances.percent(viability.chance().value()),
                                CautionWords.standing(viability.standing()));
        (viability.standing().counts() ? counted : disputed).add(sentence);
    }

    private static String note(LocusEntry entry, Genotype.Diploid pair) {
        return entry.forms().stream()
                .filter(form -> form.pairs().contains(pair) && !form.note().isBlank())
                .findFirst()
                .map(form -> ". " + form.note().replaceAll("\\.$", ""))
                .orElse("");
    }
}
