package clutchwright.app.eggs;

import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Egg;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// What holding back several of a clutch is worth for one gene that each may carry unseen: they
/// are judged together, since clutch-mates are often het together or not at all.
///
/// @param gene that they may carry
/// @param hatchlings how many of them may
/// @param likeliest the chance of the one that is likeliest to carry it, in words
/// @param two that at least one of the two likeliest carries it
/// @param all that at least one of all of them does
public record HoldBack(String gene, int hatchlings, String likeliest, String two, String all) {

    private static final int FEWEST = 2;
    private static final int MOST_GENES = 4;

    /// Of each gene that two or more of the clutch may carry, the likeliest gene first.
    static List<HoldBack> of(Knowledge knowledge, Clutch clutch) {
        var hatchlings =
                clutch.eggs().stream()
                        .map(Egg::hatchlings)
                        .flatMap(Collection::stream)
                        .filter(one -> knowledge.find(one).isPresent())
                        .toList();
        return knowledge
                .posteriors(clutch.species())
                .map(worked -> of(worked, hatchlings.stream().filter(worked::knows).toList()))
                .orElseGet(List::of);
    }

    private static List<HoldBack> of(Posteriors worked, List<AnimalId> hatchlings) {
        var open = new LinkedHashMap<Allele, List<AnimalId>>();
        for (var one : hatchlings) {
            worked.of(one)
                    .loci()
                    .values()
                    .forEach(
                            at ->
                                    at.genotypes().outcomes().stream()
                                            .flatMap(genotype -> genotype.alleles().stream())
                                            .filter(allele -> !allele.isWild())
                                            .distinct()
                                            .filter(allele -> isOpen(worked, one, allele))
                                            .forEach(
                                                    allele ->
                                                            open.computeIfAbsent(
                                                                            allele,
                                                                            _ -> new ArrayList<>())
                                                                    .add(one)));
        }
        return open.entrySet().stream()
                .filter(entry -> entry.getValue().size() >= FEWEST)
                .limit(MOST_GENES)
                .flatMap(entry -> of(worked, entry.getKey(), entry.getValue()).stream())
                .toList();
    }

    private static boolean isOpen(Posteriors worked, AnimalId one, Allele allele) {
        var chance = worked.of(one).chanceOfCarrying(allele);
        return !chance.isNone() && !chance.isWhole();
    }

    private static Optional<HoldBack> of(Posteriors worked, Allele allele, List<AnimalId> some) {
        var byChance =
                some.stream()
                        .sorted(
                                Comparator.comparing(
                                                (AnimalId one) ->
                                                        worked.of(one).chanceOfCarrying(allele))
                                        .reversed())
                        .toList();
        var two = worked.atLeastOneCarries(allele, byChance.subList(0, FEWEST));
        var all = worked.atLeastOneCarries(allele, byChance);
        return two.flatMap(
                pair ->
                        all.map(
                                every ->
                                        new HoldBack(
                                                allele.name(),
                                                some.size(),
                                                Chances.percent(
                                                        worked.of(byChance.getFirst())
                                                                .chanceOfCarrying(allele)
                                                                .value()),
                                                Chances.percent(pair),
                                                Chances.percent(every))));
    }

    public boolean hasMore() {
        return hatchlings > FEWEST;
    }
}
