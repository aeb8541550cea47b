package clutchwright.engine.proof;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.BayesFactor;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// Whether an animal carries an allele: what the clutches say so far, and what would settle it.
///
/// To carry is to have at least one copy, unseen or not. Source of the formulas:
/// `docs/mathematics.md`, section "Proving out".
public final class CarrierTest {

    private final PedigreeInference inference;
    private final LocusChances chances;
    private final AnimalId animal;
    private final Allele allele;

    private CarrierTest(
            PedigreeInference inference, LocusChances chances, AnimalId animal, Allele allele) {
        this.inference = inference;
        this.chances = chances;
        this.animal = animal;
        this.allele = allele;
    }

    /// Empty if the records contradict each other at the allele's locus.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree, or the model does
    ///     not know the allele, or it is the wild type
    public static Optional<CarrierTest> of(
            PedigreeInference inference, AnimalId animal, Allele allele) {
        var locus = inference.records().model().theLocus(allele.locus()).locus();
        if (!locus.alleles().contains(allele) || allele.isWild()) {
            throw new IllegalArgumentException(allele + " is not an allele to prove at " + locus);
        }
        inference.records().pedigree().theMember(animal);
        return inference
                .chancesAt(allele.locus())
                .map(chances -> new CarrierTest(inference, chances, animal, allele));
    }

    public AnimalId animal() {
        return animal;
    }

    public Allele allele() {
        return allele;
    }

    /// The posterior chance that it carries the allele, given all records.
    public double chance() {
        return chances.chanceOfCarrying(animal, allele);
    }

    /// The chance that it does not, worked out for itself: near a certainty it is no difference.
    public double chanceOfNot() {
        return chances.chanceThat(animal, genotype -> !genotype.carries(allele));
    }

    /// How the chances were reached.
    public Method method() {
        return chances.method();
    }

    /// How far the chance may be off, absolute; 0 where it is exact.
    public double error() {
        return chances.errorOf(animal);
    }

    /// Whether who carries it looks like nobody who does not: then a look tells, and nothing is
    /// to be proven by breeding.
    public boolean showsAtSight() {
        var map = inference.records().model().theLocus(allele.locus());
        return map.phenotypes().stream()
                .map(map::showing)
                .allMatch(
                        pairs ->
                                pairs.stream().allMatch(pair -> pair.carries(allele))
                                        || pairs.stream().noneMatch(pair -> pair.carries(allele)));
    }

    /// The sex, as recorded or as its young prove it; without one no mating can be thought of.
    public Optional<Sex> sex() {
        return sexOf(animal);
    }

    /// What each recorded clutch of the animal says, in the order of hatching.
    public List<ClutchEvidence> evidence() {
        return Clutches.of(inference.records().pedigree(), animal).stream()
                .map(this::weighed)
                .toList();
    }

    private ClutchEvidence weighed(Clutches.Clutch clutch) {
        var less = chances.withoutSightOf(clutch.young());
        var chance = less.chanceOfCarrying(animal, allele);
        var not = less.chanceThat(animal, genotype -> !genotype.carries(allele));
        return new ClutchEvidence(
                clutch.dams(),
                clutch.sires(),
                clutch.hatched(),
                clutch.young(),
                clutch.looks(chances),
                chance,
                factor(chance, not));
    }

    /// Odds with the clutch over odds without; empty where the rest settles the question
    /// already.
    private Optional<BayesFactor> factor(double chanceWithout, double notWithout) {
        if (chanceWithout == 0 || notWithout == 0) {
            return Optional.empty();
        }
        var with = chance() / chanceOfNot();
        return Optional.of(new BayesFactor(with / (chanceWithout / notWithout)));
    }

    /// A test mating with that animal; empty if either's sex is not known, they are of one sex,
    /// or no young of theirs can live.
    ///
    /// @throws IllegalArgumentException if the mate is not in the pedigree
    public Optional<TestMating> with(AnimalId mate) {
        return withEach(List.of(mate)).stream().findFirst();
    }

    /// A test mating with each that is of the other sex: what settles soonest first.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public List<TestMating> withEach(Collection<AnimalId> mates) {
        var others = ofOtherSex(mates);
        return others.isEmpty() ? List.of() : matings(chances.togetherWithEach(animal, others));
    }

    /// The same as if the animal and its mates were independent of each other: quick, to choose
    /// by, and off where the two are related or have young together.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public List<TestMating> withEachApart(Collection<AnimalId> mates) {
        var own = chances.of(animal);
        var joints = new LinkedHashMap<AnimalId, SequencedMap<List<Genotype>, Double>>();
        for (var mate : ofOtherSex(mates)) {
            var joint = new LinkedHashMap<List<Genotype>, Double>();
            chances.of(mate)
                    .forEach(
                            (his, q) ->
                                    own.forEach((hers, p) -> joint.put(List.of(hers, his), p * q)));
            joints.put(mate, joint);
        }
        return matings(joints);
    }

    private List<AnimalId> ofOtherSex(Collection<AnimalId> mates) {
        var own = sex();
        return mates.stream()
                .distinct()
                .filter(mate -> !mate.equals(animal))
                .filter(mate -> own.map(Sex::opposite).equals(sexOf(mate)))
                .filter(mate -> own.isPresent())
                .toList();
    }

    private List<TestMating> matings(Map<AnimalId, SequencedMap<List<Genotype>, Double>> joints) {
        var matings = new ArrayList<TestMating>();
        sex().ifPresent(
                        own -> {
                            var hatchlings = new Hatchlings(inference, chances, own);
                            joints.forEach(
                                    (mate, joint) ->
                                            hatchlings
                                                    .mating(mate, allele, joint)
                                                    .ifPresent(matings::add));
                        });
        matings.sort(TestMating.SOONEST_SETTLED);
        return List.copyOf(matings);
    }

    private Optional<Sex> sexOf(AnimalId id) {
        var pedigree = inference.records().pedigree();
        return pedigree.theMember(id)
                .sex()
                .or(
                        () ->
                                pedigree.offspringOf(id).stream()
                                        .findFirst()
                                        .map(young -> pedigree.theMember(young).parentage())
                                        .map(
                                                found ->
                                                        found.dams().contains(id)
                                                                ? Sex.FEMALE
                                                                : Sex.MALE));
    }
}
