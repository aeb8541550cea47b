package clutchwright.app.wording;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.PedigreeFault;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.reasons.Contradiction;
import clutchwright.engine.reasons.Repair;
import clutchwright.engine.reasons.Testimony;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/// Records that cannot all be true, as sentences.
///
/// @param tags the tag of an animal
public record ContradictionWords(Function<AnimalId, String> tags) {

    /// So many animals are named; the rest is counted.
    private static final int MOST_NAMED = 4;

    /// One paragraph: what does not fit, and what is likeliest to have happened.
    public String text(Contradiction found) {
        var said = found.conflict().stream().map(this::of).collect(Collectors.joining("; "));
        return "%s: %s.%s".formatted(headline(found), said, likeliest(found));
    }

    public String headline(Contradiction found) {
        return found.impossible()
                ? "These cannot all be true"
                : "Together these are very unlikely (%s)"
                        .formatted(Chances.percent(found.chance()));
    }

    /// The likeliest way in which it came about; blank if none is known.
    public String likeliest(Contradiction found) {
        return found.repairs().isEmpty()
                ? ""
                : " Likeliest (%s): %s"
                        .formatted(
                                Chances.percent(found.repairs().getFirst().chance()),
                                of(found.repairs().getFirst()));
    }

    public String of(Testimony said) {
        return switch (said) {
            case Testimony.Saw(var animal, var look) ->
                    "%s was seen to be %s".formatted(tag(animal), ReasonWords.words(look));
            case Testimony.Stated(var animal, var genotypes) ->
                    "%s is stated to be %s".formatted(tag(animal), words(genotypes));
            case Testimony.Tested(var animal, var test) ->
                    test.found()
                            ? "a laboratory found %s in %s"
                                    .formatted(test.allele().name(), tag(animal))
                            : "a laboratory found no %s in %s"
                                    .formatted(test.allele().name(), tag(animal));
            case Testimony.DamOf(var young, var dam) ->
                    "%s is the dam of %s".formatted(tag(dam), tags(young));
            case Testimony.SireOf(var young, var sires) ->
                    "%s is the sire of %s".formatted(either(sires), tags(young));
            case Testimony.TakenForWild(var animal) ->
                    "nothing says that %s carries anything here".formatted(tag(animal));
        };
    }

    /// What may have happened, as a sentence.
    public String of(Repair repair) {
        return switch (repair) {
            case Repair.Misread(var animal, var recorded, _) ->
                    "%s was misread: it is not %s."
                            .formatted(tag(animal), ReasonWords.words(recorded));
            case Repair.WrongClaim(var animal, var stated, _) ->
                    "What is stated of %s is wrong: it is not %s."
                            .formatted(tag(animal), words(stated));
            case Repair.OtherSire(var young, var recorded, var instead, _) ->
                    "%s, not %s, is the sire of %s."
                            .formatted(tag(instead), either(recorded), tags(young));
            case Repair.StrangeSire(var young, var recorded, _) ->
                    "A male that is not on record, not %s, is the sire of %s."
                            .formatted(either(recorded), tags(young));
            case Repair.OtherDam(var young, var recorded, var instead, _) ->
                    "%s, not %s, is the dam of %s."
                            .formatted(tag(instead), tag(recorded), tags(young));
            case Repair.StrangeDam(var young, var recorded, _) ->
                    "A female that is not on record, not %s, is the dam of %s."
                            .formatted(tag(recorded), tags(young));
            case Repair.HiddenCarriers(var animals, _) ->
                    "All of it is true, and %s %s it unseen."
                            .formatted(tags(animals), animals.size() == 1 ? "carries" : "carry");
        };
    }

    /// What to do about it.
    public String advice(Repair repair) {
        return switch (repair) {
            case Repair.Misread(var animal, _, _) -> "Look at %s again.".formatted(tag(animal));
            case Repair.WrongClaim(var animal, _, _) ->
                    "Ask whoever stated it of %s.".formatted(tag(animal));
            case Repair.OtherSire _, Repair.StrangeSire _ ->
                    "Look up who was with her that season and before.";
            case Repair.OtherDam _, Repair.StrangeDam _ -> "Look up which box these eggs lay in.";
            case Repair.HiddenCarriers _ -> "Another clutch of the two would show it again.";
        };
    }

    /// The animals that a statement speaks of, the one it is about first.
    public static List<AnimalId> animals(Testimony said) {
        return switch (said) {
            case Testimony.Saw(var animal, _) -> List.of(animal);
            case Testimony.Stated(var animal, _) -> List.of(animal);
            case Testimony.Tested(var animal, _) -> List.of(animal);
            case Testimony.DamOf(var young, var dam) -> joined(List.of(dam), young);
            case Testimony.SireOf(var young, var sires) -> joined(sires, young);
            case Testimony.TakenForWild(var animal) -> List.of(animal);
        };
    }

    /// The animals whose records a repair would change.
    public static List<AnimalId> animals(Repair repair) {
        return switch (repair) {
            case Repair.Misread(var animal, _, _) -> List.of(animal);
            case Repair.WrongClaim(var animal, _, _) -> List.of(animal);
            case Repair.OtherSire(var young, _, var instead, _) -> joined(List.of(instead), young);
            case Repair.StrangeSire(var young, _, _) -> young;
            case Repair.OtherDam(var young, _, var instead, _) -> joined(List.of(instead), young);
            case Repair.StrangeDam(var young, _, _) -> young;
            case Repair.HiddenCarriers(var animals, _) -> animals;
        };
    }

    /// Descent that cannot be.
    public String of(PedigreeFault fault) {
        return switch (fault) {
            case PedigreeFault.ListedTwice(var animal) ->
                    "%s stands there twice.".formatted(tag(animal));
            case PedigreeFault.UnknownParent(var animal, var parent) ->
                    "A parent of %s (%s) is not on record.".formatted(tag(animal), parent);
            case PedigreeFault.OwnAncestor(var animal, var circle) ->
                    "%s would be its own ancestor: %s."
                            .formatted(
                                    tag(animal),
                                    circle.stream().map(tags).collect(Collectors.joining(" ← ")));
            case PedigreeFault.WrongSex(var animal, var parent, _) ->
                    "%s has the wrong sex for a parent of %s.".formatted(tag(parent), tag(animal));
            case PedigreeFault.DamIsSire(var animal, var parent) ->
                    "%s is dam and sire of %s.".formatted(tag(parent), tag(animal));
            case PedigreeFault.HatchedBeforeParent(var animal, var parent) ->
                    "%s hatched before its parent %s.".formatted(tag(animal), tag(parent));
        };
    }

    private static String words(Distribution<Genotype> genotypes) {
        var parts = new ArrayList<String>();
        genotypes
                .chances()
                .forEach(
                        (genotype, chance) ->
                                parts.add(
                                        chance.isWhole()
                                                ? genotype.toString()
                                                : "%s (%s)"
                                                        .formatted(
                                                                genotype,
                                                                Chances.percent(chance.value()))));
        return String.join(" or ", parts);
    }

    private String tags(Collection<AnimalId> some) {
        var named = some.stream().limit(MOST_NAMED).map(tags).collect(Collectors.joining(", "));
        var more = some.size() - MOST_NAMED;
        return more > 0 ? "%s and %d more".formatted(named, more) : named;
    }

    private String either(List<AnimalId> some) {
        return some.stream().map(tags).collect(Collectors.joining(" or "));
    }

    private String tag(AnimalId animal) {
        return tags.apply(animal);
    }

    private static List<AnimalId> joined(List<AnimalId> some, List<AnimalId> others) {
        var all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }
}
