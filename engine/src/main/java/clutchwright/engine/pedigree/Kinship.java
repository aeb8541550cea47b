package clutchwright.engine.pedigree;

import clutchwright.engine.pedigree.Parentage.SireQuestion;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedMap;
import java.util.concurrent.atomic.AtomicReference;

/// How closely animals are related: coefficients of kinship and inbreeding.
///
/// The kinship of two animals is the chance that a gene copy drawn from the one and a gene copy
/// drawn from the other, at the same autosomal locus, are copies of one copy of an ancestor. The
/// inbreeding of an animal is the kinship of its parents. Founders, and parents that are not on
/// record, are taken to be unrelated to each other and not inbred.
///
/// Where a sire is in doubt each figure is the exact expectation over the answers: young of one
/// question share theirs, questions are independent of each other. Source:
/// `docs/mathematics.md`, section "Kinship".
public final class Kinship {

    private final Pedigree pedigree;
    private final KinshipAssumptions assumptions;
    private final NumberedPedigree numbered;
    private final Inbreeding inbreeding;
    private final AtomicReference<AncestorWalk> idleWalk = new AtomicReference<>();

    private Kinship(Pedigree pedigree, KinshipAssumptions assumptions, NumberedPedigree numbered) {
        this.pedigree = pedigree;
        this.assumptions = assumptions;
        this.numbered = numbered;
        this.inbreeding = Inbreeding.of(numbered.descent(), assumptions.secondDivision());
    }

    public static Kinship of(Pedigree pedigree) {
        return of(pedigree, KinshipAssumptions.STANDARD);
    }

    /// @throws IllegalArgumentException if a chance is given of an animal that is no candidate of
    ///     the question
    public static Kinship of(Pedigree pedigree, KinshipAssumptions assumptions) {
        return new Kinship(pedigree, assumptions, Numbering.autosomal(pedigree, assumptions));
    }

    /// The chance that the animal's two gene copies at a locus are copies of one ancestor's.
    ///
    /// @throws IllegalArgumentException if it is not in the pedigree
    public double inbreeding(AnimalId animal) {
        return inbreeding.of(numbered.theNode(animal));
    }

    /// Every animal's inbreeding, parents before their young.
    public SequencedMap<AnimalId, Double> allInbreeding() {
        var all = new LinkedHashMap<AnimalId, Double>();
        pedigree.members().forEach(member -> all.put(member.id(), inbreeding(member.id())));
        return all;
    }

    /// Unordered. Of a female and a male it is what their young's inbreeding would be; of an animal
    /// with itself, half of one more than its own inbreeding.
    ///
    /// @throws IllegalArgumentException if one of them is not in the pedigree
    public double between(AnimalId one, AnimalId other) {
        int a = numbered.theNode(one);
        int b = numbered.theNode(other);
        if (a == b) {
            return (1 + inbreeding.of(a)) / 2;
        }
        var idle = idleWalk.getAndSet(null);
        var walk = idle == null ? inbreeding.walk() : idle;
        double kinship = walk.relationship(a, b) / 2;
        idleWalk.set(walk);
        return kinship;
    }

    /// The animal's kinship with every animal, itself included, parents before their young.
    public SequencedMap<AnimalId, Double> withAll(AnimalId animal) {
        var chosen = new double[numbered.descent().size()];
        chosen[numbered.theNode(animal)] = 1;
        var sums = new KinshipSums(numbered.descent(), inbreeding).of(chosen);
        var all = new LinkedHashMap<AnimalId, Double>();
        for (var member : pedigree.members()) {
            all.put(member.id(), sums[numbered.theNode(member.id())]);
        }
        return all;
    }

    /// How closely each animal is related to a group.
    ///
    /// @param group at least one; an animal that is named twice counts once
    public MeanKinship amongst(Collection<AnimalId> group) {
        var once = List.copyOf(new LinkedHashSet<>(group));
        if (once.isEmpty()) {
            throw new IllegalArgumentException("mean kinship with nobody");
        }
        var chosen = new double[numbered.descent().size()];
        for (var animal : once) {
            chosen[numbered.theNode(animal)] = 1.0 / once.size();
        }
        var sums = new KinshipSums(numbered.descent(), inbreeding).of(chosen);
        return new MeanKinship(once, numbered, sums);
    }

    /// Through whom two animals are related, the largest share first; none if they are not.
    public List<CommonAncestor> commonAncestors(AnimalId one, AnimalId other) {
        var shares =
                new MeetingPoints(numbered.descent())
                        .of(numbered.theNode(one), numbered.theNode(other));
        var found = new ArrayList<CommonAncestor>();
        shares.forEach(
                (node, chance) ->
                        found.add(
                                new CommonAncestor(
                                        numbered.theAnimal(node),
                                        chance * (1 + inbreeding.of(node)) / 2)));
        found.sort(
                Comparator.comparingDouble(CommonAncestor::share)
                        .reversed()
                        .thenComparing(CommonAncestor::animal));
        return Collections.unmodifiableList(found);
    }

    /// From which founders the animal's genes are.
    public FounderShares founderShares(AnimalId animal) {
        return numbered.founderShares(numbered.theNode(animal));
    }

    /// On what the figures of some animals rest.
    public KinshipBasis basisOf(AnimalId... animals) {
        return KinshipBasis.of(pedigree, assumptions, List.of(animals));
    }

    /// The questions of sires whose answers the pedigree leaves open.
    public List<SireQuestion> openQuestions() {
        return numbered.questions();
    }
}
