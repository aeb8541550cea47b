package clutchwright.app.projects;

import clutchwright.app.parts.Strands;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Goal;
import clutchwright.engine.planning.Keeping;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.Stock;
import clutchwright.engine.probability.Distribution;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The two strands of what each step of a route keeps, at the loci of the goal: each step is
/// crossed from what its parents then hold. Steps are asked for in order.
final class RouteStrands {

    private final GeneticModel model;
    private final Goal goal;
    private final Map<Long, Stock.Own> stock = new HashMap<>();
    private final Map<Integer, ParentGenotype> kept = new HashMap<>();

    RouteStrands(GeneticModel model, Goal goal, Stock stock) {
        this.model = model;
        this.goal = goal;
        stock.animals().forEach(own -> this.stock.put(own.id().value(), own));
    }

    /// By the number of what is kept; what cannot be drawn is left out.
    Map<Integer, Strands> of(RouteStep step) {
        var drawn = new HashMap<Integer, Strands>();
        var dam = genotype(step.dam());
        var sire = genotype(step.sire());
        if (dam.isEmpty() || sire.isEmpty()) {
            return drawn;
        }
        var cross = Cross.of(model, dam.get(), sire.get());
        for (var keeping : step.keep()) {
            cross.findShowing(Set.copyOf(keeping.shows()))
                    .ifPresent(
                            outcome -> {
                                drawn.put(keeping.number(), Strands.of(outcome));
                                parent(outcome, keeping)
                                        .ifPresent(found -> kept.put(keeping.number(), found));
                            });
        }
        return drawn;
    }

    private Optional<ParentGenotype> genotype(RouteStep.Parent parent) {
        return switch (parent) {
            case RouteStep.Parent.Kept(var number) -> Optional.ofNullable(kept.get(number));
            case RouteStep.Parent.Own(var animals) ->
                    Optional.ofNullable(stock.get(animals.getFirst().value()))
                            .map(own -> ofGoal(own.genotype()));
        };
    }

    private ParentGenotype ofGoal(ParentGenotype whole) {
        var loci = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        whole.loci()
                .forEach(
                        (locus, genotypes) -> {
                            if (goal.loci().containsKey(locus)) {
                                loci.put(locus, genotypes);
                            }
                        });
        return new ParentGenotype(loci);
    }

    /// Of one sex, in its shape; empty where that sex cannot look so.
    private Optional<ParentGenotype> parent(Outcome outcome, Keeping keeping) {
        var loci = new LinkedHashMap<LocusId, Distribution<Genotype>>();
        for (var at : outcome.loci()) {
            if (model.theLocus(at.locus()).locus().isSexLinked()) {
                var phased = keeping.sex().orElse(Sex.FEMALE).equals(model.sexes().heterogametic());
                var shaped =
                        at.genotypes()
                                .given(genotype -> genotype instanceof Genotype.Phased == phased);
                if (shaped.isEmpty()) {
                    return Optional.empty();
                }
                loci.put(at.locus(), shaped.get());
            } else {
                loci.put(at.locus(), at.genotypes().map(Genotype::pair));
            }
        }
        return Optional.of(new ParentGenotype(loci));
    }
}
