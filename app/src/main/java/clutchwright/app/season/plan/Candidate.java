package clutchwright.app.season.plan;

import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.ClutchKinds;
import clutchwright.engine.probability.Distribution;
import clutchwright.records.plans.SavedPlan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;

/// A female and a male that may be put together this season, and what that may bring.
///
/// @param together their genotypes where what one carries says something of the other
/// @param kinds what their young sell as
/// @param dying share of embryos that do not live because of their genotype
/// @param hatchlings expected, all that may go wrong counted in
/// @param kinship of the two
/// @param cautions of what the pairing may give
/// @param bits expected to be learnt about open questions of genes, if she lays
/// @param steps of projects that it is
/// @param worth beyond what its hatchlings sell for by their looks
record Candidate(
        PlanAnimal dam,
        PlanAnimal sire,
        SequencedMap<LocusId, Distribution<ParentPair>> together,
        ClutchKinds kinds,
        double dying,
        double hatchlings,
        double kinship,
        List<Caution> cautions,
        double bits,
        List<ProjectStep> steps,
        Worth worth) {

    Candidate {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /// What a pairing is worth beyond what its hatchlings sell for by their looks; the female's
    /// chance of laying is counted in.
    record Worth(double hets, double projects, double questions) {

        double sum() {
            return hets + projects + questions;
        }
    }

    SavedPlan.Pair pair() {
        return new SavedPlan.Pair(dam.id(), sire.id());
    }

    AnimalId damId() {
        return dam.id();
    }

    AnimalId sireId() {
        return sire.id();
    }

    /// Hatchlings expected of each kind that has a price.
    SequencedMap<String, Double> priced() {
        return expected(kinds.priced());
    }

    /// Hatchlings expected of each kind that has none.
    SequencedMap<String, Double> unpriced() {
        return expected(kinds.unpriced());
    }

    private SequencedMap<String, Double> expected(SequencedMap<String, Double> chances) {
        var expected = new LinkedHashMap<String, Double>();
        chances.forEach((kind, chance) -> expected.put(kind, hatchlings * chance));
        return expected;
    }

    /// What it would be worth by itself, each of its hatchlings sold as the first of its kind.
    double alone() {
        return hatchlings * (kinds.firstWorth() - kinds.hetWorth()) + worth.sum();
    }

    /// Whether anything is to be overruled in writing before it may be made.
    boolean isHindered() {
        return !cautions.isEmpty() || !dam.against().isEmpty() || !sire.against().isEmpty();
    }
}
