package clutchwright.app.season.plan;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.TestMating;
import clutchwright.records.Knowledge;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// What a clutch of a pair is expected to tell of what the two carry: the open questions of both,
/// in bits, the two taken to be independent of each other. One bit is what a question is worth
/// that stands at even chances.
final class PairQuestions {

    /// Between these a question is open.
    private static final double LEAST = 0.05;

    private static final double MOST = 0.95;

    private final Map<Couple, Double> bits = new HashMap<>();

    private record Couple(AnimalId one, AnimalId other) {}

    static PairQuestions of(
            Knowledge knowledge, String species, List<PlanAnimal> females, List<PlanAnimal> males) {
        var questions = new PairQuestions();
        knowledge
                .posteriors(species)
                .map(Posteriors::inference)
                .ifPresent(
                        inference -> {
                            for (var answer : inference.answers()) {
                                if (answer instanceof LocusAnswer.Settled(var chances)) {
                                    questions.at(inference, chances, females, males);
                                    questions.at(inference, chances, males, females);
                                }
                            }
                        });
        return questions;
    }

    private void at(
            PedigreeInference inference,
            LocusChances chances,
            List<PlanAnimal> animals,
            List<PlanAnimal> mates) {
        var pedigree = inference.records().pedigree();
        var others = mates.stream().map(PlanAnimal::id).filter(pedigree::contains).toList();
        var locus = inference.records().model().theLocus(chances.locus()).locus();
        for (var allele : locus.alleles()) {
            if (allele.isWild()) {
                continue;
            }
            for (var animal : animals) {
                if (pedigree.contains(animal.id())
                        && isOpen(chances.chanceOfCarrying(animal.id(), allele))) {
                    ask(inference, animal.id(), allele, others);
                }
            }
        }
    }

    private static boolean isOpen(double chance) {
        return chance > LEAST && chance < MOST;
    }

    private void ask(
            PedigreeInference inference, AnimalId animal, Allele allele, List<AnimalId> mates) {
        var test = CarrierTest.of(inference, animal, allele);
        if (test.isEmpty() || test.get().showsAtSight()) {
            return;
        }
        for (var mating : test.get().withEachApart(mates)) {
            var told = mating.bits(TestMating.USUAL_CLUTCH);
            if (told > 0) {
                bits.merge(new Couple(animal, mating.mate()), told, Double::sum);
            }
        }
    }

    /// Of both of them.
    double bits(AnimalId dam, AnimalId sire) {
        return bits.getOrDefault(new Couple(dam, sire), 0.0)
                + bits.getOrDefault(new Couple(sire, dam), 0.0);
    }
}
