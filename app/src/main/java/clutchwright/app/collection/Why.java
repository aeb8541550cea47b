package clutchwright.app.collection;

import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ReasonWords;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.reasons.Reason;
import clutchwright.engine.reasons.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// Why an animal is thought to carry a gene, as other programs read it.
///
/// @param prior the chance if nothing were recorded of any animal here
/// @param multiply whether the prior odds times the factors are the odds of the chance, to
///     within one percent; the sides of mates apart
record Why(String allele, double chance, double prior, boolean multiply, List<Line> reasons) {

    /// Chances below that are not worth an explanation unless one asks for the gene by its name.
    private static final double LEAST = 0.001;

    Why {
        reasons = List.copyOf(reasons);
    }

    /// @param kind a short word for the kind of record
    /// @param factor of the odds of carrying; null where it is beyond all bounds
    /// @param chanceWithout null where the other records could not be true without
    record Line(
            String kind,
            String text,
            @Nullable Double factor,
            String strength,
            boolean settles,
            @Nullable Double chanceWithout,
            List<Line> parts) {

        Line {
            parts = List.copyOf(parts);
        }

        static Line of(Reason reason, ReasonWords words) {
            var factor = reason.factor().value();
            return new Line(
                    reason.source().getClass().getSimpleName(),
                    words.of(reason.source()),
                    Double.isInfinite(factor) ? null : (Double) factor,
                    words.strength(reason),
                    reason.settles(),
                    orNull(reason.chanceWithout()),
                    reason.parts().stream().map(part -> of(part, words)).toList());
        }

        private static @Nullable Double orNull(OptionalDouble chance) {
            return chance.isPresent() ? (Double) chance.getAsDouble() : null;
        }
    }

    /// What was asked of the animal at the locus; empty if nothing was.
    static List<Why> all(
            Inferring.Done done,
            PedigreeInference inference,
            LocusChances chances,
            AnimalId animal) {
        var all = new ArrayList<Why>();
        var locus = inference.records().model().theLocus(chances.locus()).locus();
        for (var asked : done.asked()) {
            if (asked.animal().equals(animal)) {
                locus.alleles().stream()
                        .filter(allele -> !allele.isWild())
                        .filter(allele -> isAsked(asked, chances, allele))
                        .flatMap(allele -> Reasons.of(inference, animal, allele).stream())
                        .map(reasons -> of(reasons, inference, done.read()::tag))
                        .forEach(all::add);
            }
        }
        return all;
    }

    private static boolean isAsked(Inferring.Why asked, LocusChances chances, Allele allele) {
        return asked.gene()
                .map(gene -> gene.equalsIgnoreCase(allele.name()))
                .orElseGet(() -> chances.chanceOfCarrying(asked.animal(), allele) >= LEAST);
    }

    /// Of one gene; empty where the records contradict each other.
    static Optional<Why> of(
            PedigreeInference inference,
            AnimalId animal,
            Allele allele,
            Function<AnimalId, String> tags) {
        return Reasons.of(inference, animal, allele).map(reasons -> of(reasons, inference, tags));
    }

    private static Why of(
            Reasons reasons, PedigreeInference inference, Function<AnimalId, String> tags) {
        var sex = inference.records().pedigree().theMember(reasons.animal()).sex();
        var words = new ReasonWords(tags, reasons.allele(), sex);
        return new Why(
                reasons.allele().name(),
                reasons.chance(),
                reasons.prior(),
                reasons.multiply(),
                reasons.strongestFirst().stream().map(reason -> Line.of(reason, words)).toList());
    }

    /// For a person in the terminal.
    List<String> lines(String tag) {
        var lines = new ArrayList<String>();
        lines.add("");
        lines.add(
                "Why %s carries %s with a chance of %s (before any record: %s):"
                        .formatted(tag, allele, Chances.percent(chance), Chances.percent(prior)));
        for (var reason : reasons) {
            lines.add("- %s (%s)".formatted(reason.text(), reason.strength()));
            reason.parts()
                    .forEach(
                            part ->
                                    lines.add(
                                            "  - %s (%s)".formatted(part.text(), part.strength())));
        }
        if (!multiply) {
            lines.add("  These hang together: their factors do not simply multiply.");
        }
        return lines;
    }
}
