package clutchwright.app.proofs;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.proof.TestMating;
import clutchwright.records.animals.Animal;
import java.util.Comparator;
import java.util.Optional;

/// Whether a kept animal carries an allele, where that is neither as good as certain nor as good
/// as ruled out.
///
/// @param chance that it carries it
/// @param claimed whether something is stated of it at the locus
/// @param parents how many of its parents are on record, none to two
/// @param looked how many of its young were looked at
/// @param best the mating of this season that settles it soonest; empty where there is none
/// @param apart whether the two are taken to be independent of each other: a first estimate
/// @param tooYoung whether the animal itself is not to be bred yet
record OpenQuestion(
        Animal animal,
        Allele allele,
        double chance,
        boolean claimed,
        int parents,
        int looked,
        boolean tooYoung,
        Optional<TestMating> best,
        boolean apart) {

    /// What this season can settle first; then animals that breed; then what is most in doubt.
    static final Comparator<OpenQuestion> MOST_TO_SETTLE =
            Comparator.comparingDouble(OpenQuestion::bitsThisSeason)
                    .thenComparingInt(OpenQuestion::looked)
                    .reversed()
                    .thenComparingDouble(question -> Math.abs(question.chance - 0.5))
                    .thenComparing(question -> question.animal.tag().value())
                    .thenComparing(question -> question.allele.name());

    /// What one usual clutch of this season is expected to tell.
    double bitsThisSeason() {
        return best.map(mating -> mating.bits(TestMating.USUAL_CLUTCH)).orElse(0.0);
    }

    /// The same with a mating that was worked out in full.
    OpenQuestion settledBy(Optional<TestMating> exact) {
        return new OpenQuestion(
                animal, allele, chance, claimed, parents, looked, tooYoung, exact, false);
    }

    /// As an address names it.
    String gene() {
        return geneOf(allele);
    }

    static String geneOf(Allele allele) {
        return allele.locus() + "/" + allele.name();
    }
}
