package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Predicate;

/// How likely the records are if some young have another parent of one sex.
///
/// The parent is replaced by a stranger of whom every genotype is as likely; what the records
/// say of each is then weighed with what each animal of the collection may have, together.
/// `docs/mathematics.md`, "Contradictions".
final class OtherParent {

    private final CollectionRecords records;
    private final Assumptions assumptions;
    private final PedigreeInference whole;
    private final List<AnimalId> young;
    private final Sex sex;
    private final Strangers strangers;
    private final AnimalId stranger;
    private final Optional<Pedigree> changed;

    /// @param part the young and their kin
    /// @param whole the collection: its animals that are not in the part are taken to have nothing
    ///     to do with the young
    /// @param sex of the parent that is another
    OtherParent(PedigreeInference part, PedigreeInference whole, List<AnimalId> young, Sex sex) {
        this.records = part.records();
        this.assumptions = part.assumptions();
        this.whole = whole;
        this.young = young;
        this.sex = sex;
        this.strangers = new Strangers(records.pedigree());
        this.stranger = strangers.of("the other", sex);
        this.changed = changed();
    }

    /// Natural logarithms of the chance of the records of a locus.
    ///
    /// @param ofStranger if it is somebody who is not on record; empty if that cannot be
    /// @param ofEach if it is that animal of the collection; those that cannot be are left out
    record Likelihoods(OptionalDouble ofStranger, SequencedMap<AnimalId, Double> ofEach) {}

    /// The animals that were there and are not descendants: whoever else it may have been.
    List<AnimalId> candidates() {
        var never = new HashSet<>(descendants());
        for (var one : young) {
            var parentage = whole.records().pedigree().theMember(one).parentage();
            never.addAll(parentage.dams());
            never.addAll(parentage.sires());
        }
        return whole.records().pedigree().members().stream()
                .filter(one -> one.sex().filter(sex::equals).isPresent())
                .filter(one -> !never.contains(one.id()))
                .filter(this::wasThere)
                .map(Member::id)
                .toList();
    }

    /// @param events what the genotypes of some animals must be besides
    Likelihoods at(
            LocusId locus, List<AnimalId> candidates, Map<AnimalId, Predicate<Genotype>> events) {
        var found =
                changed.flatMap(
                                pedigree ->
                                        PedigreeInference.of(
                                                        world(pedigree, locus),
                                                        assumptions,
                                                        List.of(locus))
                                                .chancesAt(locus))
                        .flatMap(chances -> chances.given(events));
        return found.map(chances -> likelihoods(chances, candidates))
                .orElseGet(() -> new Likelihoods(OptionalDouble.empty(), new LinkedHashMap<>()));
    }

    private Likelihoods likelihoods(LocusChances chances, List<AnimalId> candidates) {
        var locus = chances.locus();
        var even = aloneBeingAnything(locus);
        var population = chances.ofAnybody(sex);
        var ofStranger = 0.0;
        for (var entry : chances.of(stranger).entrySet()) {
            ofStranger +=
                    entry.getValue()
                            / even.getOrDefault(entry.getKey(), 1.0)
                            * population.getOrDefault(entry.getKey(), 0.0);
        }
        var ofEach = new LinkedHashMap<AnimalId, Double>();
        var known = candidates.stream().filter(records.pedigree()::contains).toList();
        var together = chances.togetherWithEach(stranger, known);
        for (var one : candidates) {
            var same =
                    Optional.ofNullable(together.get(one))
                            .map(joint -> same(joint, even))
                            .orElseGet(() -> same(chances.of(stranger), locus, one, even));
            if (same > 0) {
                ofEach.put(one, chances.logLikelihood() + Math.log(same));
            }
        }
        return new Likelihoods(
                ofStranger > 0
                        ? OptionalDouble.of(chances.logLikelihood() + Math.log(ofStranger))
                        : OptionalDouble.empty(),
                ofEach);
    }

    /// How likely the stranger and the animal have the same genotype, each genotype of the
    /// stranger being as likely beforehand.
    private static double same(
            SequencedMap<List<Genotype>, Double> joint, Map<Genotype, Double> even) {
        var same = 0.0;
        for (var entry : joint.entrySet()) {
            var pair = entry.getKey();
            if (pair.getFirst().equals(pair.getLast())) {
                same += entry.getValue() / even.getOrDefault(pair.getFirst(), 1.0);
            }
        }
        return same;
    }

    private double same(
            Map<Genotype, Double> ofStranger,
            LocusId locus,
            AnimalId one,
            Map<Genotype, Double> even) {
        var his = whole.chancesAt(locus).map(chances -> chances.of(one));
        var same = 0.0;
        for (var entry : ofStranger.entrySet()) {
            same +=
                    entry.getValue()
                            / even.getOrDefault(entry.getKey(), 1.0)
                            * his.map(chances -> chances.getOrDefault(entry.getKey(), 0.0))
                                    .orElse(0.0);
        }
        return same;
    }

    /// The chances of a lone animal of the sex, of which anything alike is said.
    private SequencedMap<Genotype, Double> aloneBeingAnything(LocusId locus) {
        var lone =
                new Member(stranger, Optional.of(sex), Optional.empty(), new Parentage.Founder());
        if (Pedigree.of(List.of(lone)) instanceof Pedigree.Result.Sound(var pedigree)) {
            return PedigreeInference.of(
                            new CollectionRecords(
                                    records.model(), pedigree, Map.of(stranger, anything(locus))),
                            assumptions,
                            List.of(locus))
                    .chancesAt(locus)
                    .orElseThrow()
                    .of(stranger);
        }
        throw new IllegalStateException("a lone animal is no sound pedigree");
    }

    private CollectionRecords world(Pedigree pedigree, LocusId locus) {
        var own = new HashMap<>(records.own());
        own.put(stranger, anything(locus));
        return new CollectionRecords(records.model(), pedigree, own);
    }

    /// Of the alleles that are reckoned with at all.
    private OwnRecords anything(LocusId locus) {
        var all = records.model().theLocus(locus).locus();
        var alleles =
                assumptions.onlyAllelesMet() ? whole.records().allelesMet(locus) : all.alleles();
        var pairs =
                all.allPairs().stream()
                        .filter(pair -> alleles.containsAll(pair.alleles()))
                        .<Genotype>map(pair -> pair)
                        .toList();
        return OwnRecords.NONE.withClaim(
                locus, new OwnRecords.Claim(Distribution.uniform(pairs), false));
    }

    /// Empty if the descent is then not sound.
    private Optional<Pedigree> changed() {
        var members = new ArrayList<Member>();
        for (var member : records.pedigree().members()) {
            members.add(young.contains(member.id()) ? replaced(member) : member);
        }
        members.addAll(strangers.members());
        return Pedigree.of(members) instanceof Pedigree.Result.Sound(var pedigree)
                ? Optional.of(pedigree)
                : Optional.empty();
    }

    private Member replaced(Member member) {
        var parentage =
                switch (member.parentage()) {
                    case Parentage.Founder() -> new Parentage.Founder();
                    case Parentage.Parthenogenetic(var dam) ->
                            sex == Sex.MALE
                                    ? new Parentage.Biparental(
                                            new Dam.Known(dam), new Sire.Known(stranger))
                                    : new Parentage.Parthenogenetic(stranger);
                    case Parentage.Biparental(var dam, var sire) ->
                            sex == Sex.MALE
                                    ? new Parentage.Biparental(dam, new Sire.Known(stranger))
                                    : new Parentage.Biparental(new Dam.Known(stranger), sire);
                };
        return new Member(member.id(), member.sex(), member.hatched(), parentage);
    }

    private boolean wasThere(Member one) {
        return one.hatched().isEmpty()
                || young.stream()
                        .flatMap(id -> whole.records().pedigree().theMember(id).hatched().stream())
                        .allMatch(
                                hatched ->
                                        one.hatched().get().earliest().isBefore(hatched.latest()));
    }

    private Set<AnimalId> descendants() {
        var all = new HashSet<>(young);
        var waiting = new ArrayDeque<>(young);
        while (!waiting.isEmpty()) {
            for (var one : whole.records().pedigree().offspringOf(waiting.remove())) {
                if (all.add(one)) {
                    waiting.add(one);
                }
            }
        }
        return all;
    }
}
