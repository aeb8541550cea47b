package clutchwright.app.wording;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.BayesFactor;
import clutchwright.engine.reasons.Reason;
import clutchwright.engine.reasons.Source;
import clutchwright.engine.reasons.Tally;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/// Why an animal is thought to carry a gene, as sentences.
///
/// @param tags the tag of an animal
/// @param gene in question
/// @param sex of the animal in question, if it is known
public record ReasonWords(Function<AnimalId, String> tags, Allele gene, Optional<Sex> sex) {

    /// Farther from a whole number than that, a chance is written in percent.
    private static final double NEARLY_WHOLE = 0.02;

    private static final double ROUNDING = 1e-9;

    /// What was said, seen or hatched, and how likely that was.
    public String of(Source source) {
        return switch (source) {
            case Source.OwnClaim(var genotypes) ->
                    "It is stated to carry %s: %s."
                            .formatted(
                                    gene.name(),
                                    Chances.percent(
                                            genotypes
                                                    .chanceThat(one -> one.carries(gene))
                                                    .value()));
            case Source.OwnSighting(var look) -> "It was seen to be %s.".formatted(words(look));
            case Source.OwnTests(var tests) ->
                    tests.stream().map(ReasonWords::of).collect(Collectors.joining(" "));
            case Source.Young(var mates, var tally, var chanceIf, var chanceIfNot) ->
                    counted(tally.young().size(), "hatchling")
                            + with(mates)
                            + ": "
                            + of(tally)
                            + likelihoods(tally, chanceIf, chanceIfNot)
                            + ".";
            case Source.MatesSide(var mates, var animals) ->
                    "What is recorded%s and kin (%s), which tells what the young mean."
                            .formatted(
                                    mates.isEmpty() ? " of the mate" : " of " + either(mates),
                                    counted(animals, "animal"));
            case Source.ParentsSide(var animals) ->
                    "What is recorded of %s parents and their kin (%s)."
                            .formatted(its(), counted(animals, "animal"));
            case Source.Ancestor(var animal, var generations) ->
                    "What is recorded of %s %s %s."
                            .formatted(its(), ancestor(generations), tags.apply(animal));
            case Source.Siblings siblings ->
                    "%s: %s."
                            .formatted(
                                    counted(
                                            siblings.tally().young().size(),
                                            siblings.full() ? "full sibling" : "half-sibling"),
                                    of(siblings.tally()));
            case Source.Relatives(var animals) ->
                    "What is recorded of %s further off.".formatted(counted(animals, "relative"));
        };
    }

    /// How strongly it speaks. The scale is that of Kass and Raftery (1995).
    public String strength(Reason reason) {
        if (reason.settles()) {
            return "settles it alone";
        }
        if (reason.chanceWithout().isEmpty()) {
            return "the other records could not be true without it";
        }
        return strength(reason.factor());
    }

    private static String strength(BayesFactor factor) {
        if (factor.value() == 0) {
            return "rules it out";
        }
        if (Double.isInfinite(factor.value())) {
            return "proves it";
        }
        if (factor.weight() < 1.005) {
            return "says nothing";
        }
        var side = factor.favours() ? "for it" : "against it";
        return switch (factor.strength()) {
            case BARE_MENTION -> "hardly worth mentioning, " + side;
            case POSITIVE -> "positive evidence " + side;
            case STRONG -> "strong evidence " + side;
            case VERY_STRONG -> "very strong evidence " + side;
        };
    }

    /// `x 2.5`, `1/64`.
    public static String factor(BayesFactor factor) {
        return factor.favours() && Double.isFinite(factor.value())
                ? "x " + ProofWords.factor(factor.value())
                : Double.isInfinite(factor.value()) ? "all" : ProofWords.factor(factor.value());
    }

    private static String of(AlleleTest test) {
        return "A laboratory %s %s."
                .formatted(test.found() ? "found" : "did not find", test.allele().name());
    }

    private static String of(Tally tally) {
        var parts = new ArrayList<String>();
        tally.looks().forEach((look, count) -> parts.add(count + " " + words(look)));
        if (tally.unseen() > 0) {
            parts.add(tally.unseen() + " not looked at");
        }
        if (tally.further() > 0) {
            parts.add(counted(tally.further(), "descendant") + " of theirs");
        }
        return String.join(", ", parts);
    }

    private String likelihoods(Tally tally, OptionalDouble chanceIf, OptionalDouble chanceIfNot) {
        if (tally.looks().isEmpty() || (chanceIf.isEmpty() && chanceIfNot.isEmpty())) {
            return "";
        }
        var said = new ArrayList<String>();
        chanceIf.ifPresent(
                chance -> said.add("%s if %s carries it".formatted(odds(chance), pronoun())));
        chanceIfNot.ifPresent(
                chance -> said.add("%s if %s does not".formatted(odds(chance), pronoun())));
        return "; likely at " + String.join(", at ", said);
    }

    /// `1 in 64` where that is right to two in a hundred, else percent.
    private static String odds(double chance) {
        var in = 1 / chance;
        if (chance > 1 - ROUNDING) {
            return "100 %";
        }
        return chance > 0
                        && chance <= 0.5
                        && in < 1e6
                        && Math.abs(in - Math.rint(in)) < NEARLY_WHOLE * in
                ? String.format(Locale.ROOT, "1 in %,.0f", in)
                : Chances.percent(chance);
    }

    private String with(List<AnimalId> mates) {
        return mates.isEmpty() ? " with an unknown mate" : " with " + either(mates);
    }

    private String either(List<AnimalId> some) {
        return some.stream().map(tags).collect(Collectors.joining(" or "));
    }

    static String words(Set<Phenotype> look) {
        return look.stream().map(Phenotype::name).sorted().collect(Collectors.joining(" or "));
    }

    private String pronoun() {
        return sex.map(known -> known == Sex.FEMALE ? "she" : "he").orElse("it");
    }

    private String its() {
        return sex.map(known -> known == Sex.FEMALE ? "her" : "his").orElse("its");
    }

    private static String ancestor(int generations) {
        return switch (generations) {
            case 1 -> "parent";
            case 2 -> "grandparent";
            default -> "ancestor, %d generations back,".formatted(generations);
        };
    }

    static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
