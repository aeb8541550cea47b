package clutchwright.app.collection;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Markup;
import clutchwright.app.parts.Strands;
import clutchwright.app.wording.BasisWords;
import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import java.util.ArrayList;
import java.util.List;

/// What the animal shows and carries, and what each figure rests on.
///
/// @param strands empty where nothing but wild type is held of it
public record GenesPart(Markup line, Markup strands, List<Why> why) {

    public GenesPart {
        why = List.copyOf(why);
    }

    /// What one figure rests on.
    ///
    /// @param figure the chance, or `shows`
    /// @param doubtful whether records contradict each other there
    public record Why(String figure, String gene, String sentence, boolean doubtful) {}

    /// @param lookedAt whether anything was said or seen of the animal itself
    static GenesPart of(GeneticModel model, Knowledge knowledge, Animal animal, boolean lookedAt) {
        var held = knowledge.of(animal.id());
        var why = new ArrayList<Why>();
        held.loci()
                .forEach(
                        (locus, at) -> {
                            var map = model.theLocus(locus);
                            at.genotypes()
                                    .map(map::phenotypeOf)
                                    .chances()
                                    .forEach(
                                            (look, chance) -> {
                                                if (look.visible() && chance.isWhole()) {
                                                    why.add(whyShown(look, at, lookedAt));
                                                } else if (look.visible()) {
                                                    why.add(
                                                            why(
                                                                    Chances.both(chance),
                                                                    "shows " + look.name(),
                                                                    at,
                                                                    ""));
                                                }
                                            });
                            for (var allele : map.locus().alleles()) {
                                var chance =
                                        GeneLineMarkup.carriedUnseen(map, at.genotypes(), allele);
                                if (!allele.isWild() && !chance.isNone()) {
                                    why.add(
                                            why(
                                                    Chances.both(chance),
                                                    "het " + allele.name(),
                                                    at,
                                                    parents(knowledge, animal, allele)));
                                }
                            }
                        });
        return new GenesPart(
                GeneLineMarkup.of(model, held).line(),
                Strands.of(knowledge.strands(animal.id())).large(),
                why);
    }

    private static Why whyShown(Phenotype look, Held.AtLocus at, boolean lookedAt) {
        return new Why(
                "shows",
                look.name(),
                at.basis() == Basis.ALL_RECORDS && lookedAt
                        ? "It was seen, and all records together bear it out."
                        : BasisWords.of(at),
                BasisWords.isContradicted(at.basis()));
    }

    private static Why why(String figure, String gene, Held.AtLocus at, String parents) {
        return new Why(
                figure,
                gene,
                BasisWords.of(at) + (at.basis() == Basis.ALL_RECORDS ? parents : ""),
                BasisWords.isContradicted(at.basis()));
    }

    /// What the parents have of the allele, so that the figure can be followed.
    private static String parents(Knowledge knowledge, Animal animal, Allele allele) {
        var words = new ArrayList<String>();
        animal.parentage()
                .dams()
                .forEach(dam -> words.add("the dam " + has(knowledge, dam, allele)));
        animal.parentage()
                .sires()
                .forEach(sire -> words.add("the sire " + has(knowledge, sire, allele)));
        return words.isEmpty() ? "" : " Of the parents " + String.join(", ", words) + ".";
    }

    private static String has(Knowledge knowledge, AnimalId parent, Allele allele) {
        var chance = knowledge.of(parent).chanceOfCarrying(allele);
        var tag = knowledge.find(parent).map(found -> found.tag().value()).orElse("");
        if (chance.isNone()) {
            return tag + " has none";
        }
        return chance.isWhole()
                ? tag + " has it for certain"
                : tag + " has it at " + Chances.fraction(chance);
    }
}
