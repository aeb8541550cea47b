package clutchwright.app.proofs;

import clutchwright.app.wording.Chances;
import clutchwright.app.wording.ContradictionWords;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.engine.reasons.Contradiction;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import clutchwright.records.SpeciesRecords;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/// Records that cannot all be true, as other programs read them: the document that `audit
/// --json` prints.
///
/// @param descent records of who descends from whom that cannot be
/// @param rates how often each kind of record was taken to be wrong before anything spoke
///     against it
record Audited(List<Finding> findings, List<String> descent, Rates rates) {

    Audited {
        findings = List.copyOf(findings);
        descent = List.copyOf(descent);
    }

    /// @param animal whose record showed it
    /// @param impossible whether it cannot be if eyes never err and nothing is hidden
    /// @param chance of the record given all others
    /// @param statements the smallest set that cannot all be true
    /// @param repairs likeliest first; each chance given that it is one of them
    record Finding(
            String animal,
            String locus,
            boolean impossible,
            double chance,
            String text,
            List<Said> statements,
            List<Mended> repairs) {

        Finding {
            statements = List.copyOf(statements);
            repairs = List.copyOf(repairs);
        }
    }

    record Said(String kind, String text, List<String> animals) {

        Said {
            animals = List.copyOf(animals);
        }
    }

    record Mended(String kind, String text, String advice, double chance, List<String> animals) {

        Mended {
            animals = List.copyOf(animals);
        }
    }

    record Rates(
            double background,
            double misread,
            double wrongSire,
            double wrongDam,
            double wrongClaim,
            double surprising) {}

    static Audited of(
            Collection<SpeciesRecords> species,
            Assumptions assumptions,
            List<PedigreeFault> faults,
            Function<AnimalId, String> tags) {
        var rates = ErrorRates.STANDARD;
        var words = new ContradictionWords(tags);
        var findings = new ArrayList<Finding>();
        for (var some : species) {
            Contradictions.of(
                            some.records(),
                            assumptions,
                            rates,
                            PedigreeInference.touched(some.records()))
                    .forEach(found -> findings.add(finding(found, words)));
        }
        return new Audited(
                findings,
                faults.stream().map(words::of).toList(),
                new Rates(
                        assumptions.background() > 0
                                ? assumptions.background()
                                : rates.background(),
                        assumptions.misread() > 0 ? assumptions.misread() : rates.misread(),
                        rates.wrongSire(),
                        rates.wrongDam(),
                        rates.wrongClaim(),
                        rates.surprising()));
    }

    private static Finding finding(Contradiction found, ContradictionWords words) {
        var tags = words.tags();
        return new Finding(
                tags.apply(found.animal()),
                found.locus().value(),
                found.impossible(),
                found.chance(),
                words.text(found),
                found.conflict().stream()
                        .map(
                                said ->
                                        new Said(
                                                said.getClass().getSimpleName(),
                                                words.of(said),
                                                ContradictionWords.animals(said).stream()
                                                        .map(tags)
                                                        .toList()))
                        .toList(),
                found.repairs().stream()
                        .map(
                                repair ->
                                        new Mended(
                                                repair.getClass().getSimpleName(),
                                                words.of(repair),
                                                words.advice(repair),
                                                repair.chance(),
                                                ContradictionWords.animals(repair).stream()
                                                        .map(tags)
                                                        .toList()))
                        .toList());
    }

    /// How many genes beside the wild type the richest locus of which anything is said has.
    static int mostGenes(CollectionRecords records) {
        return PedigreeInference.touched(records).stream()
                .mapToInt(id -> records.model().theLocus(id).locus().alleles().size() - 1)
                .max()
                .orElse(0);
    }

    boolean isClean() {
        return findings.isEmpty() && descent.isEmpty();
    }

    List<String> lines() {
        if (isClean()) {
            return List.of("Nothing was found: all that is recorded can be true together.");
        }
        var lines = new ArrayList<>(descent);
        for (var found : findings) {
            lines.add("%s, %s: %s".formatted(found.animal(), found.locus(), head(found)));
            found.statements().forEach(said -> lines.add("  - " + said.text()));
            lines.add("  What may have happened, given that it is one of these:");
            found.repairs()
                    .forEach(
                            repair ->
                                    lines.add(
                                            "  %s  %s %s"
                                                    .formatted(
                                                            Chances.percent(repair.chance()),
                                                            repair.text(),
                                                            repair.advice())));
            lines.add("");
        }
        return lines;
    }

    private static String head(Finding found) {
        return found.impossible()
                ? "these cannot all be true."
                : "together these are very unlikely (%s)."
                        .formatted(Chances.percent(found.chance()));
    }
}
