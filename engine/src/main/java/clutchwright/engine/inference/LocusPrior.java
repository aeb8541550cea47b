package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Held.Basis;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// One animal at one locus: its zygote from its parents, given what was seen and said of it.
final class LocusPrior {

    private final GeneticModel model;
    private final PhenotypeMap map;
    private final Optional<Sex> sex;

    LocusPrior(GeneticModel model, PhenotypeMap map, Optional<Sex> sex) {
        this.model = model;
        this.map = map;
        this.sex = sex;
    }

    Held.AtLocus given(Member member, OwnRecords own, Map<AnimalId, Held> held) {
        var looks = own.seen().flatMap(this::looks);
        var claim =
                Optional.ofNullable(own.claims().get(map.locus().id()))
                        .map(said -> asZygotes(said.genotypes()));
        if (member.parentage() instanceof Parentage.Founder) {
            return ownWord(claim, looks, Basis.CLAIM, Basis.SIGHTING);
        }
        var known = fromParents(member.parentage(), held, List.of(map.locus().wildType()));
        var fitting = known.flatMap(zygotes -> seen(zygotes, looks));
        var unknownParent =
                member.parentage().dams().isEmpty() || member.parentage().sires().isEmpty();
        if (unknownParent && (claim.isPresent() || fitting.isEmpty())) {
            // The parent that nobody knows may have given any allele.
            var anything = fromParents(member.parentage(), held, map.locus().alleles());
            var open = anything.flatMap(zygotes -> seen(zygotes, looks));
            var claimed = claim.flatMap(said -> open.flatMap(zygotes -> both(said, zygotes)));
            if (claimed.isPresent()) {
                return at(claimed.get(), Basis.CLAIM);
            }
            fitting = fitting.or(() -> open);
        }
        if (fitting.isEmpty()) {
            return ownWord(
                    claim, looks, Basis.CLAIM_AGAINST_PARENTS, Basis.SIGHTING_AGAINST_PARENTS);
        }
        if (claim.isPresent() && isWild(fitting.get()) && !isWild(claim.get())) {
            return ownWord(claim, looks, Basis.CLAIM_AGAINST_PARENTS, Basis.SIGHTING);
        }
        return at(fitting.get(), Basis.PARENTS);
    }

    /// What the animal's own records say, its parents left aside.
    private Held.AtLocus ownWord(
            Optional<Distribution<Zygote>> claim,
            Optional<Set<Phenotype>> looks,
            Basis claimed,
            Basis sighted) {
        var said = claim.flatMap(zygotes -> seen(zygotes, looks));
        if (said.isPresent()) {
            return at(said.get(), claimed);
        }
        return at(plainest(looks.orElse(Set.of())), sighted);
    }

    /// Of the pairs that look so, those with the fewest alleles that are not wild, each alike:
    /// one copy of a dominant allele is far more usual than two.
    private Distribution<Zygote> plainest(Set<Phenotype> looks) {
        var fitting =
                map.locus().allPairs().stream()
                        .filter(pair -> looks.isEmpty() || looks.contains(map.phenotypeOf(pair)))
                        .toList();
        var fewest = fitting.stream().mapToInt(LocusPrior::notWild).min().orElseThrow();
        var plain = fitting.stream().filter(pair -> notWild(pair) == fewest).toList();
        return asZygotes(Distribution.uniform(List.<Genotype>copyOf(plain)));
    }

    private static int notWild(Genotype genotype) {
        return (int) genotype.alleles().stream().filter(allele -> !allele.isWild()).count();
    }

    /// What may have been seen at the locus; empty where nothing could be read.
    private Optional<Set<Phenotype>> looks(OwnRecords.Seen seen) {
        var named = seen.looks().get(map.locus().id());
        if (named != null) {
            return Optional.of(named);
        }
        var hidden =
                seen.looks().entrySet().stream()
                        .anyMatch(
                                entry ->
                                        entry.getValue().stream()
                                                .anyMatch(
                                                        look ->
                                                                model.theLocus(entry.getKey())
                                                                        .maskingOf(look)
                                                                        .hides(map.locus().id())));
        return hidden
                ? Optional.empty()
                : Optional.of(Set.of(Phenotype.normalOf(map.locus().id())));
    }

    private Optional<Distribution<Zygote>> seen(
            Distribution<Zygote> zygotes, Optional<Set<Phenotype>> looks) {
        return looks.isEmpty()
                ? Optional.of(zygotes)
                : zygotes.given(zygote -> looks.get().contains(map.phenotypeOf(pair(zygote))));
    }

    /// The claim's weights over the genotypes that the zygotes leave possible, laid on their
    /// strands.
    private Optional<Distribution<Zygote>> both(
            Distribution<Zygote> said, Distribution<Zygote> possible) {
        var pairs = said.map(LocusPrior::pair);
        var open = possible.map(LocusPrior::pair);
        var weights = new LinkedHashMap<Zygote, Fraction>();
        possible.chances()
                .forEach(
                        (zygote, chance) ->
                                weights.put(
                                        zygote,
                                        pairs.chanceOf(pair(zygote))
                                                .times(chance)
                                                .dividedBy(open.chanceOf(pair(zygote)))));
        return Distribution.proportionalTo(weights);
    }

    private Optional<Distribution<Zygote>> fromParents(
            Parentage parentage, Map<AnimalId, Held> held, List<Allele> unknown) {
        var sexes = sex.map(List::of).orElse(List.of(Sex.FEMALE, Sex.MALE));
        var zygotes =
                Distribution.uniform(sexes)
                        .then(
                                young ->
                                        fromDam(parentage, held, young, unknown)
                                                .combine(
                                                        fromSire(parentage, held, young, unknown),
                                                        Zygote::new));
        var living = new LinkedHashMap<Zygote, Fraction>();
        zygotes.chances()
                .forEach(
                        (zygote, chance) ->
                                living.put(
                                        zygote,
                                        chance.times(map.viabilityOf(pair(zygote)).counted())));
        return Distribution.proportionalTo(living);
    }

    private Distribution<Allele> fromDam(
            Parentage parentage, Map<AnimalId, Held> held, Sex young, List<Allele> unknown) {
        return parentage.dams().stream()
                .findFirst()
                .map(dam -> gamete(held.getOrDefault(dam, Held.WILD), Sex.FEMALE, young))
                .orElseGet(() -> Distribution.uniform(unknown));
    }

    private Distribution<Allele> fromSire(
            Parentage parentage, Map<AnimalId, Held> held, Sex young, List<Allele> unknown) {
        return switch (parentage) {
            case Parentage.Biparental(_, Parentage.Sire.Known(var sire)) ->
                    gamete(held.getOrDefault(sire, Held.WILD), Sex.MALE, young);
            case Parentage.Biparental(_, Parentage.Sire.InDoubt(var question)) ->
                    question.candidates()
                            .then(
                                    sire ->
                                            gamete(
                                                    held.getOrDefault(sire, Held.WILD),
                                                    Sex.MALE,
                                                    young));
            case Parentage.Biparental(_, Parentage.Sire.Unknown()) -> Distribution.uniform(unknown);
            case Parentage.Parthenogenetic _, Parentage.Founder() ->
                    throw new IllegalArgumentException("no sire to inherit from: " + parentage);
        };
    }

    private Distribution<Allele> gamete(Held parent, Sex parentSex, Sex young) {
        var at = parent.loci().get(map.locus().id());
        return at == null
                ? Distribution.certain(map.locus().wildType())
                : at.genotypes().then(genotype -> gamete(genotype, parentSex, young));
    }

    private Distribution<Allele> gamete(Genotype genotype, Sex parentSex, Sex young) {
        if (genotype instanceof Genotype.Phased(var shared, var limited)
                && map.locus().inheritance() instanceof Inheritance.SexLinked(var recombination)
                && !shared.equals(limited)) {
            var travels = young == parentSex ? limited : shared;
            var crosses = young == parentSex ? shared : limited;
            var chances = new LinkedHashMap<Allele, Fraction>();
            chances.put(travels, recombination.complement());
            chances.put(crosses, recombination);
            return Distribution.proportionalTo(chances).orElseThrow();
        }
        return Distribution.uniform(genotype.alleles());
    }

    private Distribution<Zygote> asZygotes(Distribution<Genotype> genotypes) {
        return genotypes.map(genotype -> Zygote.of(genotype, model.sexes()));
    }

    private static Genotype.Diploid pair(Zygote zygote) {
        return new Genotype.Diploid(zygote.fromDam(), zygote.fromSire());
    }

    private static boolean isWild(Distribution<Zygote> zygotes) {
        return zygotes.outcomes().stream().allMatch(zygote -> notWild(pair(zygote)) == 0);
    }

    private Held.AtLocus at(Distribution<Zygote> zygotes, Basis basis) {
        return new Held.AtLocus(
                zygotes.map(zygote -> zygote.genotype(map.locus(), model.sexes(), sex)),
                zygotes.map(Zygote::fromDam),
                zygotes.map(Zygote::fromSire),
                basis);
    }
}
