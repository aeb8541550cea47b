package clutchwright.app.proofs;

import clutchwright.app.wording.ProofWords;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.BayesFactor;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.ClutchEvidence;
import clutchwright.engine.proof.NoTestMating;
import clutchwright.engine.proof.TestMating;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SequencedMap;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/// What is known of whether an animal carries an allele, as other programs read it.
///
/// @param method `exact`, `bounded`, `estimated` or `sampled`
/// @param error how far the chance may be off, absolute; 0 where it is exact
/// @param atSight whether who carries the allele can be told by looking
/// @param bestMate empty where no mating is proposed; `why` then says the reason
/// @param mates every animal of the other sex that is kept, soonest settled first
record Proved(
        String animal,
        String allele,
        String locus,
        double chance,
        String method,
        double error,
        boolean atSight,
        List<Clutch> evidence,
        Optional<Mating> bestMate,
        Optional<NoTestMating> why,
        List<Mating> mates,
        int eggs) {

    Proved {
        evidence = List.copyOf(evidence);
        mates = List.copyOf(mates);
    }

    /// One clutch on record and what it says.
    ///
    /// @param clutch dam x sire, and when it hatched
    /// @param looks how many young were seen to look so
    /// @param bayesFactor empty where it is infinite or nothing was left to weigh
    /// @param settles whether this clutch alone settles that it carries the allele
    record Clutch(
            String clutch,
            List<String> dams,
            List<String> sires,
            Optional<String> hatched,
            List<String> young,
            SequencedMap<String, Integer> looks,
            Optional<Double> bayesFactor,
            Optional<String> strength,
            boolean settles,
            double chanceWithout) {}

    /// A test mating.
    ///
    /// @param chance that the mate itself carries the allele
    /// @param telling the looks of hatchlings that speak for the allele
    /// @param needed hatchlings without such a look that bring the chance to at most the key;
    ///     empty where no number does
    /// @param limit the chance after ever more of them
    /// @param atLeastOne the chance that a clutch shows one
    /// @param detection the chance that it does if the animal carries the allele
    /// @param bits what the clutch is expected to tell
    record Mating(
            String tag,
            double chance,
            List<String> telling,
            SequencedMap<String, OptionalInt> needed,
            double limit,
            double atLeastOne,
            OptionalDouble detection,
            SequencedMap<String, OptionalInt> neededToDetect,
            double bits) {}

    /// @param mates that may be thought of, of whichever sex
    static Proved of(
            Function<AnimalId, String> tags,
            PedigreeInference inference,
            CarrierTest test,
            Collection<AnimalId> mates,
            int eggs) {
        var found = test.withEach(mates);
        var reason = NoTestMating.among(test, found);
        var matings =
                found.stream().map(mating -> mating(tags, inference, test, mating, eggs)).toList();
        return new Proved(
                tags.apply(test.animal()),
                test.allele().name(),
                test.allele().locus().value(),
                test.chance(),
                method(test.method()),
                test.error(),
                test.showsAtSight(),
                test.evidence().stream().map(clutch -> clutch(tags, clutch)).toList(),
                reason.isPresent() ? Optional.empty() : matings.stream().findFirst(),
                reason,
                matings,
                eggs);
    }

    private static String method(Method method) {
        return switch (method) {
            case Method.Exact() -> "exact";
            case Method.Bounded _ -> "bounded";
            case Method.Estimated _ -> "estimated";
            case Method.Sampled _ -> "sampled";
        };
    }

    private static Clutch clutch(Function<AnimalId, String> tags, ClutchEvidence clutch) {
        var dams = clutch.dams().stream().map(tags).toList();
        var sires = clutch.sires().stream().map(tags).toList();
        var looks = new LinkedHashMap<String, Integer>();
        clutch.looks()
                .forEach(
                        (look, count) ->
                                looks.put(
                                        look.stream()
                                                .map(Phenotype::name)
                                                .sorted()
                                                .collect(Collectors.joining(" or ")),
                                        count));
        var hatched = clutch.hatched().map(ProofWords::hatched);
        return new Clutch(
                ProofWords.couple(dams, sires) + hatched.map(day -> ", " + day).orElse(""),
                dams,
                sires,
                hatched,
                clutch.young().stream().map(tags).toList(),
                Collections.unmodifiableSequencedMap(looks),
                clutch.factor().map(BayesFactor::value).filter(Double::isFinite),
                clutch.factor().map(factor -> factor.strength().name().toLowerCase(Locale.ROOT)),
                clutch.factor().filter(factor -> Double.isInfinite(factor.value())).isPresent(),
                clutch.chanceWithout());
    }

    private static Mating mating(
            Function<AnimalId, String> tags,
            PedigreeInference inference,
            CarrierTest test,
            TestMating mating,
            int eggs) {
        return new Mating(
                tags.apply(mating.mate()),
                inference
                        .chancesAt(test.allele().locus())
                        .orElseThrow()
                        .chanceOfCarrying(mating.mate(), test.allele()),
                mating.telling().stream().map(Phenotype::name).toList(),
                by(mating::needed, TestMating.DOUBTFUL, TestMating.UNLIKELY, TestMating.RULED_OUT),
                mating.limit(),
                mating.chanceOfTrait(eggs),
                mating.detection(eggs),
                by(mating::neededToDetect, 0.95, 0.99, 0.999),
                mating.bits(eggs));
    }

    private static SequencedMap<String, OptionalInt> by(
            DoubleFunction<OptionalInt> numbers, double... chances) {
        var all = new LinkedHashMap<String, OptionalInt>();
        for (var chance : chances) {
            all.put(Double.toString(chance), numbers.apply(chance));
        }
        return Collections.unmodifiableSequencedMap(all);
    }
}
