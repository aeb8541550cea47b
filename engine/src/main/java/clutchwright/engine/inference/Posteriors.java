package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.inference.Held.AtLocus;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.probability.Distribution;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.ConcurrentHashMap;

/// What is held of every animal of a collection, as it is told to its keeper.
///
/// All records count, of all animals. Two things set what is told apart from the bare chances of
/// [LocusChances]. The animal is given to look as it was recorded, so that a plain hatchling of
/// two hets is one at two in three whatever the chance that somebody misread it. And a genotype
/// is left out, and the rest taken for the whole, that is no likelier than twice what it is in
/// any animal of unknown origin that looks so, and not above one in twenty: else every animal
/// might carry everything. `docs/mathematics.md`, "What is told of an animal".
public final class Posteriors {

    private final PedigreeInference inference;
    private final SequencedMap<LocusId, Telling> tellings = new LinkedHashMap<>();
    private final Map<AnimalId, Held> held = new ConcurrentHashMap<>();
    private final Map<List<AnimalId>, SequencedMap<LocusId, Distribution<ParentPair>>> couples =
            new ConcurrentHashMap<>();

    private final Map<Any, Optional<Double>> anyCarries = new ConcurrentHashMap<>();

    private record Any(Allele allele, List<AnimalId> of) {}

    public Posteriors(PedigreeInference inference) {
        this.inference = inference;
        for (var answer : inference.answers()) {
            if (answer instanceof LocusAnswer.Settled(var chances)) {
                tellings.put(chances.locus(), new Telling(chances.network()));
            }
        }
    }

    public PedigreeInference inference() {
        return inference;
    }

    /// Whether the animal was on record when this was worked out.
    public boolean knows(AnimalId animal) {
        return inference.kin().numbers.containsKey(animal);
    }

    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public Held of(AnimalId animal) {
        return held.computeIfAbsent(animal, this::work);
    }

    /// The two strands at each locus that is held of the animal.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public SequencedMap<LocusId, Held.Strands> strands(AnimalId animal) {
        var strands = new LinkedHashMap<LocusId, Held.Strands>();
        of(animal)
                .loci()
                .forEach(
                        (locus, at) ->
                                strands.put(locus, new StrandReading(this, locus).of(animal, at)));
        return Collections.unmodifiableSequencedMap(strands);
    }

    /// The genotypes of a dam and a sire together, at each locus where that differs from what is
    /// held of each by itself: mates that have young, siblings, and other kin.
    ///
    /// @throws IllegalArgumentException if one is not in the pedigree
    public SequencedMap<LocusId, Distribution<ParentPair>> together(AnimalId dam, AnimalId sire) {
        return couples.computeIfAbsent(
                List.of(dam, sire),
                _ -> new Judged(inference).couple(dam, of(dam), sire, of(sire)));
    }

    /// The chance that at least one of some animals carries an allele, judged together; empty
    /// where what is recorded of the locus cannot all be true.
    ///
    /// @param animals each once
    /// @throws IllegalArgumentException if one is not in the pedigree
    public Optional<Double> atLeastOneCarries(Allele allele, Collection<AnimalId> animals) {
        return anyCarries.computeIfAbsent(
                new Any(allele, List.copyOf(animals)),
                any ->
                        new Judged(inference)
                                .atLeastOne(
                                        allele.locus(),
                                        any.of(),
                                        genotype -> genotype.carries(allele)));
    }

    private Held work(AnimalId animal) {
        var kin = inference.kin();
        var number = kin.numberOf(animal);
        var own = inference.records().of(animal);
        var alone = new OwnWord(inference.records(), inference.assumptions());
        var loci = new LinkedHashMap<LocusId, AtLocus>();
        for (var answer : inference.answers()) {
            var at =
                    switch (answer) {
                        case LocusAnswer.Settled(var chances) ->
                                telling(answer.locus())
                                        .of(
                                                kin.builds[number],
                                                own,
                                                chances.of(animal),
                                                basis(animal, answer.locus()),
                                                chances.errorOf(animal));
                        case LocusAnswer.Contradicted(var locus) ->
                                alone.at(locus, kin.builds[number], own, Basis.CONTRADICTED);
                        case LocusAnswer.Stopped(var locus) ->
                                alone.at(locus, kin.builds[number], own, Basis.FOR_NOW);
                    };
            at.ifPresent(found -> loci.put(answer.locus(), found));
        }
        return new Held(loci);
    }

    private Telling telling(LocusId locus) {
        var telling = tellings.get(locus);
        if (telling == null) {
            throw new IllegalStateException("nothing was worked out at " + locus);
        }
        return telling;
    }

    /// An animal without recorded kin has only its own records.
    private Basis basis(AnimalId animal, LocusId locus) {
        var member = inference.records().pedigree().theMember(animal);
        if (!inference.records().pedigree().offspringOf(animal).isEmpty()) {
            return Basis.ALL_RECORDS;
        }
        var claim = inference.records().of(animal).claims().get(locus);
        var stands = claim != null && !claim.shows();
        if (member.parentage() instanceof Parentage.Founder) {
            return stands ? Basis.CLAIM : Basis.SIGHTING;
        }
        var oneParent = member.parentage().dams().isEmpty() || member.parentage().sires().isEmpty();
        return stands && oneParent && inference.assumptions().claimOfHalfKnown()
                ? Basis.CLAIM
                : Basis.ALL_RECORDS;
    }
}
