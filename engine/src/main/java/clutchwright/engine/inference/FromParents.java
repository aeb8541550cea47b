package clutchwright.engine.inference;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// What follows for every animal from its own records and its parents': ancestors count,
/// offspring and siblings do not yet.
///
/// Parents before offspring, one locus at a time: Mendel's law from the parents, given what was
/// seen of the animal. Loci are independent, parents too. A claim stands where no parents are
/// recorded or one of them is unknown, and is else only kept where the parents leave it no
/// room. Source of the formulas: `docs/mathematics.md`, section "From parents".
public final class FromParents {

    private final Map<AnimalId, Held> held;

    private FromParents(Map<AnimalId, Held> held) {
        this.held = held;
    }

    /// @param records of the animals that have any
    public static FromParents of(
            GeneticModel model, Pedigree pedigree, Map<AnimalId, OwnRecords> records) {
        var held = new HashMap<AnimalId, Held>();
        for (var member : pedigree.members()) {
            var own = records.getOrDefault(member.id(), OwnRecords.NONE);
            held.put(member.id(), heldOf(model, pedigree, member, own, held));
        }
        return new FromParents(held);
    }

    /// @throws IllegalArgumentException if the animal is not in the pedigree
    public Held of(AnimalId animal) {
        var found = held.get(animal);
        if (found == null) {
            throw new IllegalArgumentException("animal " + animal + " is not in the pedigree");
        }
        return found;
    }

    private static Held heldOf(
            GeneticModel model,
            Pedigree pedigree,
            Member member,
            OwnRecords own,
            Map<AnimalId, Held> held) {
        var sex = sexOf(pedigree, member);
        var touched = new HashSet<LocusId>(own.claims().keySet());
        own.seen().ifPresent(seen -> touched.addAll(seen.looks().keySet()));
        parents(member)
                .forEach(
                        parent ->
                                touched.addAll(
                                        held.getOrDefault(parent, Held.WILD).loci().keySet()));
        var loci = new LinkedHashMap<LocusId, Held.AtLocus>();
        for (var entry : model.loci().entrySet()) {
            if (touched.contains(entry.getKey())) {
                var at = new LocusPrior(model, entry.getValue(), sex).given(member, own, held);
                if (!isSurelyWild(at.genotypes())) {
                    loci.put(entry.getKey(), at);
                }
            }
        }
        return new Held(loci);
    }

    private static boolean isSurelyWild(Distribution<Genotype> genotypes) {
        return genotypes.outcomes().stream()
                .allMatch(
                        genotype ->
                                genotype.alleles().stream().allMatch(allele -> allele.isWild()));
    }

    /// The recorded sex, or the one that having young as dam or sire proves.
    private static Optional<Sex> sexOf(Pedigree pedigree, Member member) {
        if (member.sex().isPresent()) {
            return member.sex();
        }
        for (var young : pedigree.offspringOf(member.id())) {
            var parentage = pedigree.theMember(young).parentage();
            return Optional.of(parentage.dams().contains(member.id()) ? Sex.FEMALE : Sex.MALE);
        }
        return Optional.empty();
    }

    private static Set<AnimalId> parents(Member member) {
        var parents = new HashSet<AnimalId>();
        Parentage parentage = member.parentage();
        for (var some : List.of(parentage.dams(), parentage.sires())) {
            parents.addAll(some);
        }
        return parents;
    }
}
