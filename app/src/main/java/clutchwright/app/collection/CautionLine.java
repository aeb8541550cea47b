package clutchwright.app.collection;

import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Held;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/// A welfare caution that concerns the animal.
///
/// @param chance that it does; blank where that is certain
/// @param settled whether the trade is at one about it
public record CautionLine(String words, String chance, String source, boolean settled) {

    /// The cautions that the animal's genotype meets or may meet.
    static List<CautionLine> of(GeneticModel model, Held held) {
        var lines = new ArrayList<CautionLine>();
        for (var caution : model.cautions()) {
            var chance = chance(held, caution);
            if (!chance.isNone()) {
                lines.add(
                        new CautionLine(
                                caution.words(),
                                chance.isWhole() ? "" : Chances.fraction(chance),
                                caution.source(),
                                caution.standing().counts()));
            }
        }
        return lines.stream().distinct().toList();
    }

    /// Loci are held independently, so the chances of their parts multiply.
    private static Fraction chance(Held held, Caution caution) {
        var byLocus = new LinkedHashMap<LocusId, List<Caution.Part>>();
        caution.parts()
                .forEach(
                        part ->
                                byLocus.computeIfAbsent(
                                                part.allele().locus(), _ -> new ArrayList<>())
                                        .add(part));
        var chance = Fraction.WHOLE;
        for (var parts : byLocus.entrySet()) {
            var at = held.loci().get(parts.getKey());
            chance =
                    chance.times(
                            at == null
                                    ? ofWildType(parts.getValue())
                                    : ofHeld(at.genotypes(), parts.getValue()));
        }
        return chance;
    }

    private static Fraction ofWildType(List<Caution.Part> parts) {
        return parts.stream().allMatch(part -> part.allele().isWild())
                ? Fraction.WHOLE
                : Fraction.NONE;
    }

    private static Fraction ofHeld(Distribution<Genotype> genotypes, List<Caution.Part> parts) {
        return genotypes.chanceThat(
                genotype -> parts.stream().allMatch(part -> part.holdsFor(genotype)));
    }
}
