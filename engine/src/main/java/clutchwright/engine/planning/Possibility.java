package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/// What can be told of a goal before any route is looked for.
final class Possibility {

    private final GeneticModel model;
    private final Goal goal;
    private final Stock stock;
    private final RouteLimits limits;

    Possibility(GeneticModel model, Goal goal, Stock stock, RouteLimits limits) {
        this.model = model;
        this.goal = goal;
        this.stock = stock;
        this.limits = limits;
    }

    /// Why nothing can come of it; empty if something may.
    Optional<ImpossibleGoal> refused() {
        for (var entry : goal.loci().entrySet()) {
            var unable = refusedAt(entry.getKey(), entry.getValue());
            if (unable.isPresent()) {
                return unable;
            }
        }
        if (limits.clutchesPerSeason() == 0) {
            return Optional.of(new ImpossibleGoal.NoClutches());
        }
        var female = earliest(Sex.FEMALE);
        var male = earliest(Sex.MALE);
        if (female.isEmpty()) {
            return Optional.of(new ImpossibleGoal.NoFemale());
        }
        if (male.isEmpty()) {
            return Optional.of(new ImpossibleGoal.NoMale());
        }
        var first = Math.max(female.getAsInt(), male.getAsInt());
        return first > limits.seasons()
                ? Optional.of(new ImpossibleGoal.AllTooYoung(first))
                : Optional.empty();
    }

    private Optional<ImpossibleGoal> refusedAt(LocusId locus, List<Genotype.Diploid> pairs) {
        var map = model.theLocus(locus);
        var lives =
                map.locus().allPairs().stream()
                        .filter(goal::isMetBy)
                        .anyMatch(pair -> !map.viabilityOf(pair).counted().isNone());
        if (!lives) {
            return Optional.of(new ImpossibleGoal.DoesNotLive());
        }
        if (pairs.stream().anyMatch(pair -> pair.alleles().stream().allMatch(this::isHeld))) {
            return Optional.empty();
        }
        var first = pairs.getFirst();
        return Optional.of(
                pairs.size() == 1 || first.isHomozygous()
                        ? new ImpossibleGoal.NobodyCarries(
                                first.alleles().stream()
                                        .filter(allele -> !isHeld(allele))
                                        .findFirst()
                                        .orElseThrow())
                        : new ImpossibleGoal.NobodyCarriesAny(locus));
    }

    private boolean isHeld(Allele allele) {
        return allele.isWild() || GenePool.isHeld(stock, allele);
    }

    private OptionalInt earliest(Sex sex) {
        return stock.animals().stream()
                .filter(own -> own.sex() == sex)
                .mapToInt(Stock.Own::firstSeason)
                .min();
    }
}
