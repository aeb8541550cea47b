package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusAnswer;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// Some animals near one, and what is recorded of them at one locus, taken at its word: eyes do
/// not err, and whoever shows nothing, and of whom nothing is said, is wild type.
///
/// A statement that is left out says nothing: an animal that nobody looked at may look like
/// anything, one whose sire is left out may be of any male.
final class StrictWorld {

    /// Steps from the animal, and animals, within which a conflict is looked for.
    private static final int MOST_STEPS = 4;
    private static final int MOST_ANIMALS = 80;

    private static final Assumptions WORD_FOR_WORD =
            new Assumptions(0, 0, 0, 0, 1.0 / 3, false, /* onlyAllelesMet= */ true);

    private final CollectionRecords records;
    private final LocusId locus;
    private final LocusChances looks;
    private final Distribution<Genotype> anything;
    private final Phenotype normal;

    /// @param looks tells what was seen of an animal at the locus
    StrictWorld(CollectionRecords records, LocusChances looks) {
        this.records = records;
        this.locus = looks.locus();
        this.looks = looks;
        this.normal = Phenotype.normalOf(locus);
        this.anything = Distribution.uniform(pairsMet());
    }

    /// What explains all that was seen is among these: an allele that nobody has met explains
    /// nothing more.
    private List<Genotype> pairsMet() {
        var met = records.allelesMet(locus);
        return records.model().theLocus(locus).locus().allPairs().stream()
                .filter(pair -> met.containsAll(pair.alleles()))
                .<Genotype>map(pair -> pair)
                .toList();
    }

    /// The smallest conflict near an animal, its own record first; empty if what is near can all
    /// be true.
    List<Testimony> conflictAt(AnimalId animal) {
        for (var steps = 1; steps <= MOST_STEPS; steps++) {
            var near = Vicinity.near(records.pedigree(), animal, steps, MOST_ANIMALS);
            var all = testimony(near);
            var found = MinimalConflict.of(all, some -> isPossible(near, some));
            if (!found.isEmpty() || near.size() >= MOST_ANIMALS) {
                return found;
            }
        }
        return List.of();
    }

    /// A smallest set of statements that cannot all be true, and an animal of whom one of them
    /// speaks.
    record Conflict(AnimalId animal, List<Testimony> said) {}

    /// The first conflict near any animal, else one in the whole collection; empty if all can be
    /// true.
    Optional<Conflict> anyConflict() {
        var everybody = new LinkedHashSet<AnimalId>();
        for (var member : records.pedigree().members()) {
            everybody.add(member.id());
            if (looks.lookAt(member.id()).isPresent()) {
                var found = conflictAt(member.id());
                if (!found.isEmpty()) {
                    return Optional.of(new Conflict(member.id(), found));
                }
            }
        }
        var found = MinimalConflict.of(testimony(everybody), some -> isPossible(everybody, some));
        return found.stream()
                .flatMap(said -> about(said).stream())
                .findFirst()
                .map(animal -> new Conflict(animal, found));
    }

    private static Optional<AnimalId> about(Testimony said) {
        return switch (said) {
            case Testimony.Saw(var animal, _) -> Optional.of(animal);
            case Testimony.Stated(var animal, _) -> Optional.of(animal);
            case Testimony.Tested(var animal, _) -> Optional.of(animal);
            case Testimony.TakenForWild(var animal) -> Optional.of(animal);
            case Testimony.DamOf _, Testimony.SireOf _ -> Optional.empty();
        };
    }

    /// What is recorded of the animal, its parents, its young and its mates.
    List<Testimony> testimonyAround(AnimalId animal) {
        var around = Vicinity.near(records.pedigree(), animal, 1, MOST_ANIMALS);
        for (var young : records.pedigree().offspringOf(animal)) {
            if (around.size() < MOST_ANIMALS) {
                var parentage = records.pedigree().theMember(young).parentage();
                around.addAll(parentage.dams());
                around.addAll(parentage.sires());
            }
        }
        return testimony(around);
    }

    /// What is recorded of some animals, in their order.
    private List<Testimony> testimony(Set<AnimalId> near) {
        var all = new LinkedHashSet<Testimony>();
        for (var one : near) {
            looks.lookAt(one).ifPresent(look -> all.add(new Testimony.Saw(one, look)));
            var own = records.of(one);
            own.tests().stream()
                    .filter(test -> test.allele().locus().equals(locus))
                    .forEach(test -> all.add(new Testimony.Tested(one, test)));
            all.addAll(descent(one, near));
            if (records.pedigree().theMember(one).parentage() instanceof Parentage.Founder) {
                var claim = own.claims().get(locus);
                if (claim != null && !claim.shows()) {
                    all.add(new Testimony.Stated(one, claim.genotypes()));
                } else if (looks.lookAt(one).filter(look -> !look.contains(normal)).isEmpty()) {
                    all.add(new Testimony.TakenForWild(one));
                }
            }
        }
        return List.copyOf(all);
    }

    private List<Testimony> descent(AnimalId one, Set<AnimalId> near) {
        var descent = new ArrayList<Testimony>();
        var clutch = clutchOf(one);
        var parentage = records.pedigree().theMember(one).parentage();
        if (!parentage.dams().isEmpty() && near.containsAll(parentage.dams())) {
            descent.add(new Testimony.DamOf(clutch, parentage.dams().getFirst()));
        }
        if (!parentage.sires().isEmpty() && near.containsAll(parentage.sires())) {
            descent.add(new Testimony.SireOf(clutch, parentage.sires()));
        }
        return descent;
    }

    /// The animal and those of its parents' young that hatched with it, or of whom no day says
    /// otherwise.
    List<AnimalId> clutchOf(AnimalId animal) {
        var member = records.pedigree().theMember(animal);
        var parents = new ArrayList<>(member.parentage().dams());
        parents.addAll(member.parentage().sires());
        if (parents.isEmpty()) {
            return List.of(animal);
        }
        return records.pedigree().offspringOf(parents.getFirst()).stream()
                .filter(
                        one ->
                                records.pedigree()
                                        .theMember(one)
                                        .parentage()
                                        .equals(member.parentage()))
                .filter(one -> together(member, records.pedigree().theMember(one)))
                .toList();
    }

    private static boolean together(Member one, Member other) {
        return one.hatched().isEmpty()
                || other.hatched().isEmpty()
                || !(one.hatched().get().earliest().isAfter(latest(other))
                        || other.hatched().get().earliest().isAfter(latest(one)));
    }

    /// Eggs of one clutch pip within days; a female's next clutch is months away.
    private static LocalDate latest(Member member) {
        return member.hatched().orElseThrow().latest().plusDays(45);
    }

    private boolean isPossible(Set<AnimalId> near, List<Testimony> kept) {
        return PedigreeInference.of(world(near, new HashSet<>(kept)), WORD_FOR_WORD, List.of(locus))
                        .at(locus)
                instanceof LocusAnswer.Settled;
    }

    private CollectionRecords world(Set<AnimalId> near, Set<Testimony> kept) {
        var members = new ArrayList<Member>();
        var own = new HashMap<AnimalId, OwnRecords>();
        var dams = new HashMap<AnimalId, AnimalId>();
        var sired = new HashSet<AnimalId>();
        for (var said : kept) {
            switch (said) {
                case Testimony.DamOf(var young, var dam) ->
                        young.forEach(one -> dams.put(one, dam));
                case Testimony.SireOf(var young, _) -> sired.addAll(young);
                case Testimony.Saw _,
                        Testimony.Stated _,
                        Testimony.Tested _,
                        Testimony.TakenForWild _ -> {}
            }
        }
        var strangers = new Strangers(records.pedigree());
        for (var one : near) {
            var member = records.pedigree().theMember(one);
            var parentage = parentage(member, dams, sired, strangers);
            members.add(new Member(one, sexOf(member), member.hatched(), parentage));
            own.put(one, own(one, parentage instanceof Parentage.Founder, kept));
        }
        members.addAll(strangers.members());
        strangers.members().forEach(one -> own.put(one.id(), free()));
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) ->
                    new CollectionRecords(records.model(), pedigree, own);
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalStateException("fewer records of descent, and " + faults);
        };
    }

    /// As recorded, with a stranger for each parent that is left out, where the other stays.
    private Parentage parentage(
            Member member, Map<AnimalId, AnimalId> dams, Set<AnimalId> sired, Strangers strangers) {
        var dam = Optional.ofNullable(dams.get(member.id()));
        var isSired = sired.contains(member.id());
        if (dam.isEmpty() && !isSired) {
            return new Parentage.Founder();
        }
        return switch (member.parentage()) {
            case Parentage.Founder() -> new Parentage.Founder();
            case Parentage.Parthenogenetic _ -> member.parentage();
            case Parentage.Biparental(var her, var him) -> {
                var key = member.parentage() + "/" + clutchOf(member.id()).getFirst();
                Dam mother =
                        dam.isPresent()
                                ? her
                                : new Dam.Known(strangers.of("dam " + key, Sex.FEMALE));
                Sire father = isSired ? him : new Sire.Known(strangers.of("sire " + key, Sex.MALE));
                yield new Parentage.Biparental(mother, father);
            }
        };
    }

    private Optional<Sex> sexOf(Member member) {
        return member.sex()
                .or(
                        () ->
                                records.pedigree().offspringOf(member.id()).stream()
                                        .findFirst()
                                        .map(young -> records.pedigree().theMember(young))
                                        .map(
                                                young ->
                                                        young.parentage()
                                                                        .dams()
                                                                        .contains(member.id())
                                                                ? Sex.FEMALE
                                                                : Sex.MALE));
    }

    private OwnRecords own(AnimalId one, boolean isFounder, Set<Testimony> kept) {
        var own = isFounder ? free() : OwnRecords.NONE;
        for (var said : kept) {
            own =
                    switch (said) {
                        case Testimony.Saw(var animal, var look) when animal.equals(one) ->
                                own.withLook(locus, look);
                        case Testimony.Stated(var animal, var genotypes) when animal.equals(one) ->
                                own.withClaim(locus, new OwnRecords.Claim(genotypes, false));
                        case Testimony.Tested(var animal, var test) when animal.equals(one) ->
                                own.withTest(test);
                        case Testimony.TakenForWild(var animal) when animal.equals(one) ->
                                own.withoutClaim(locus);
                        case Testimony.Saw _,
                                Testimony.Stated _,
                                Testimony.Tested _,
                                Testimony.TakenForWild _,
                                Testimony.DamOf _,
                                Testimony.SireOf _ ->
                                own;
                    };
        }
        return own;
    }

    /// May have any genotype, each pair of alleles alike.
    private OwnRecords free() {
        return OwnRecords.NONE.withClaim(locus, new OwnRecords.Claim(anything, false));
    }
}
