package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/// The ways in which a conflict may have come about, each with its chance given that it is one
/// of them. `docs/mathematics.md`, "Contradictions".
final class Repairs {

    private static final int MOST = 8;
    private static final double LEAST = 1e-3;

    private final PedigreeInference inference;
    private final PedigreeInference whole;
    private final ErrorRates rates;
    private final LocusChances chances;
    private final PhenotypeMap map;
    private final List<Testimony> conflict;
    private final Map<AnimalId, Predicate<Genotype>> right = new LinkedHashMap<>();
    private final List<Weighed> weighed = new ArrayList<>();

    private record Weighed(double weight, DoubleFunction<Repair> repair) {}

    /// @param inference under assumptions that leave every error a chance; of the collection, or
    ///     of the near kin of those the conflict speaks of
    /// @param whole of the collection: who else a parent may have been
    Repairs(
            PedigreeInference inference,
            PedigreeInference whole,
            LocusChances chances,
            ErrorRates rates,
            List<Testimony> conflict) {
        this.inference = inference;
        this.whole = whole;
        this.rates = rates;
        this.chances = chances;
        this.map = inference.records().model().theLocus(chances.locus());
        this.conflict = conflict;
    }

    List<Repair> ranked() {
        for (var said : conflict) {
            if (said instanceof Testimony.Saw(var animal, var look)) {
                right.put(animal, genotype -> look.contains(map.phenotypeOf(genotype)));
            }
        }
        for (var said : conflict) {
            switch (said) {
                case Testimony.Saw(var animal, var look) -> misread(animal, look);
                case Testimony.Stated(var animal, var genotypes) ->
                        weigh(
                                rates.wrongClaim() * withoutClaim(animal),
                                chance -> new Repair.WrongClaim(animal, genotypes, chance));
                case Testimony.SireOf(var young, var sires) -> otherSire(young, sires);
                case Testimony.DamOf(var young, var dam) -> otherDam(young, dam);
                case Testimony.TakenForWild _, Testimony.Tested _ -> {}
            }
        }
        hiddenCarriers();
        var sum = weighed.stream().mapToDouble(Weighed::weight).sum();
        return weighed.stream()
                .filter(one -> one.weight() / sum >= LEAST)
                .map(one -> one.repair().apply(one.weight() / sum))
                .sorted(Comparator.comparingDouble(Repair::chance).reversed())
                .limit(MOST)
                .toList();
    }

    private void weigh(double weight, DoubleFunction<Repair> repair) {
        if (weight > 0) {
            weighed.add(new Weighed(weight, repair));
        }
    }

    /// That this one was misread, and all others of the conflict were not.
    private void misread(AnimalId animal, Set<Phenotype> look) {
        var events = new LinkedHashMap<>(right);
        events.put(animal, genotype -> !look.contains(map.phenotypeOf(genotype)));
        weigh(share(events), chance -> new Repair.Misread(animal, look, chance));
    }

    private double share(Map<AnimalId, Predicate<Genotype>> events) {
        return chances.given(events)
                .map(given -> Math.exp(given.logLikelihood() - chances.logLikelihood()))
                .orElse(0.0);
    }

    private double withoutClaim(AnimalId animal) {
        var own = inference.records().of(animal).withoutClaim(chances.locus());
        return chances.with(Map.of(animal, own)) instanceof LocusAnswer.Settled(var less)
                ? less.given(right)
                        .map(given -> Math.exp(given.logLikelihood() - chances.logLikelihood()))
                        .orElse(0.0)
                : 0;
    }

    private void hiddenCarriers() {
        var taken =
                conflict.stream()
                        .filter(Testimony.TakenForWild.class::isInstance)
                        .map(Testimony.TakenForWild.class::cast)
                        .map(Testimony.TakenForWild::animal)
                        .toList();
        if (taken.isEmpty()) {
            return;
        }
        chances.given(right)
                .ifPresent(
                        given -> {
                            var likely =
                                    taken.stream()
                                            .filter(
                                                    one ->
                                                            given.chanceThat(
                                                                            one, Repairs::isNotWild)
                                                                    >= 0.5)
                                            .toList();
                            weigh(
                                    Math.exp(given.logLikelihood() - chances.logLikelihood()),
                                    chance ->
                                            new Repair.HiddenCarriers(
                                                    likely.isEmpty() ? taken : likely, chance));
                        });
    }

    private static boolean isNotWild(Genotype genotype) {
        return genotype.alleles().stream().anyMatch(allele -> !allele.isWild());
    }

    private void otherSire(List<AnimalId> young, List<AnimalId> recorded) {
        var other = new OtherParent(inference, whole, young, Sex.MALE);
        var candidates = other.candidates();
        var found = ratios(other, young, candidates);
        var half = rates.wrongSire() / 2;
        weigh(
                (candidates.isEmpty() ? rates.wrongSire() : half) * found.ofStranger().orElse(0),
                chance -> new Repair.StrangeSire(young, recorded, chance));
        found.ofEach()
                .forEach(
                        (male, ratio) ->
                                weigh(
                                        half / candidates.size() * ratio,
                                        chance ->
                                                new Repair.OtherSire(
                                                        young, recorded, male, chance)));
    }

    private void otherDam(List<AnimalId> young, AnimalId recorded) {
        var other = new OtherParent(inference, whole, young, Sex.FEMALE);
        var candidates = other.candidates();
        var found = ratios(other, young, candidates);
        var half = rates.wrongDam() / 2;
        weigh(
                (candidates.isEmpty() ? rates.wrongDam() : half) * found.ofStranger().orElse(0),
                chance -> new Repair.StrangeDam(young, recorded, chance));
        found.ofEach()
                .forEach(
                        (female, ratio) ->
                                weigh(
                                        half / candidates.size() * ratio,
                                        chance ->
                                                new Repair.OtherDam(
                                                        young, recorded, female, chance)));
    }

    /// By how much likelier all records are with another parent, at every locus where the young
    /// say something of their parents; the records of the conflict are then right.
    private OtherParent.Likelihoods ratios(
            OtherParent other, List<AnimalId> young, List<AnimalId> candidates) {
        var logs = new LinkedHashMap<AnimalId, Double>();
        candidates.forEach(one -> logs.put(one, 0.0));
        var stranger = OptionalDouble.of(0);
        for (var locus : bearing(young)) {
            var here = locus.equals(chances.locus());
            var before = here ? chances : inference.chancesAt(locus).orElse(chances);
            if (!here && before == chances) {
                continue;
            }
            var found = other.at(locus, candidates, here ? right : Map.of());
            stranger =
                    stranger.isPresent() && found.ofStranger().isPresent()
                            ? OptionalDouble.of(
                                    stranger.getAsDouble()
                                            + found.ofStranger().getAsDouble()
                                            - before.logLikelihood())
                            : OptionalDouble.empty();
            logs.keySet().retainAll(found.ofEach().keySet());
            logs.replaceAll(
                    (one, log) ->
                            log + found.ofEach().getOrDefault(one, 0.0) - before.logLikelihood());
        }
        logs.replaceAll((_, log) -> Math.exp(log));
        return new OtherParent.Likelihoods(
                stranger.isPresent()
                        ? OptionalDouble.of(Math.exp(stranger.getAsDouble()))
                        : stranger,
                logs);
    }

    /// The conflict's locus, and those where the young or their parents show or are said to have
    /// anything: elsewhere another parent would be as plain as the recorded one.
    private Set<LocusId> bearing(List<AnimalId> young) {
        var some = new LinkedHashSet<>(young);
        for (var one : young) {
            var parentage = inference.records().pedigree().theMember(one).parentage();
            some.addAll(parentage.dams());
            some.addAll(parentage.sires());
        }
        var loci = new LinkedHashSet<LocusId>();
        loci.add(chances.locus());
        for (var one : some) {
            var own = inference.records().of(one);
            loci.addAll(own.claims().keySet());
            own.seen().ifPresent(seen -> loci.addAll(seen.looks().keySet()));
        }
        return loci;
    }
}
