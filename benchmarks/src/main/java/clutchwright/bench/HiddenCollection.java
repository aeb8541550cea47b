package clutchwright.bench;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SequencedMap;
import java.util.Set;

/// A small collection whose truth is known: drawn from the very assumptions that the inference
/// makes, then looked at as a keeper would, with mistakes. Drawn gene by gene, without the
/// engine's inference.
///
/// Eight founders, of whom some are sold as possible hets, and six clutches, two of which may be
/// of either of two males; back-crosses and sibling matings come about by chance.
final class HiddenCollection {

    static final Assumptions ASSUMPTIONS = new Assumptions(0.1, 0.02);
    private static final GeneticModel MODEL = HiddenGenes.model();
    private static final int FOUNDERS = 8;
    private static final int CLUTCHES = 6;

    private final Random random;
    private final List<Member> members = new ArrayList<>();
    private final List<Sex> sexes = new ArrayList<>();
    private final List<Map<LocusId, Pair>> carried = new ArrayList<>();
    private final Map<AnimalId, OwnRecords> own = new HashMap<>();
    private final Map<String, AnimalId> trueSires = new LinkedHashMap<>();

    private record Pair(Allele fromDam, Allele fromSire) {}

    HiddenCollection(Random random) {
        this.random = random;
        for (var i = 0; i < FOUNDERS; i++) {
            found(i % 2 == 0 ? Sex.FEMALE : Sex.MALE);
        }
        for (var clutch = 0; clutch < CLUTCHES; clutch++) {
            lay(clutch);
        }
    }

    CollectionRecords records() {
        return switch (Pedigree.of(members)) {
            case Pedigree.Result.Sound(var pedigree) -> new CollectionRecords(MODEL, pedigree, own);
            case Pedigree.Result.Faulty(var faults) ->
                    throw new IllegalStateException("not sound: " + faults);
        };
    }

    boolean carries(AnimalId animal, Allele allele) {
        var pair = carried.get((int) animal.value()).get(allele.locus());
        return pair != null && (pair.fromDam.equals(allele) || pair.fromSire.equals(allele));
    }

    boolean isSire(String question, AnimalId male) {
        return male.equals(trueSires.get(question));
    }

    private void found(Sex sex) {
        var pairs = new LinkedHashMap<LocusId, Pair>();
        var claims = new LinkedHashMap<LocusId, OwnRecords.Claim>();
        for (var map : MODEL.loci().values()) {
            if (map.locus().isSexLinked() || random.nextInt(4) > 0) {
                pairs.put(map.locus().id(), fromPopulation(map));
            } else {
                var sold = random.nextBoolean() ? Fraction.of(2, 3) : Fraction.HALF;
                claims.put(map.locus().id(), possibleHet(map, sold));
                var mutant = map.locus().alleles().get(1);
                var wild = map.locus().wildType();
                var isHet = random.nextDouble() < sold.value();
                pairs.put(map.locus().id(), new Pair(isHet ? mutant : wild, wild));
            }
        }
        add(sex, new Parentage.Founder(), pairs, claims);
    }

    private static OwnRecords.Claim possibleHet(PhenotypeMap map, Fraction chance) {
        var wild = map.locus().wildType();
        var said = new LinkedHashMap<Genotype, Fraction>();
        said.put(new Genotype.Diploid(map.locus().alleles().get(1), wild), chance);
        said.put(new Genotype.Diploid(wild, wild), chance.complement());
        return new OwnRecords.Claim(new Distribution<>(said), false);
    }

    /// Two alleles of the population, until the animal lives.
    private Pair fromPopulation(PhenotypeMap map) {
        while (true) {
            var pair = new Pair(anyAllele(map), anyAllele(map));
            if (lives(map, pair)) {
                return pair;
            }
        }
    }

    private Allele anyAllele(PhenotypeMap map) {
        var mutants = map.locus().alleles().size() - 1;
        var at = random.nextDouble() / ASSUMPTIONS.background();
        return at < mutants ? map.locus().alleles().get(1 + (int) at) : map.locus().wildType();
    }

    private boolean lives(PhenotypeMap map, Pair pair) {
        return random.nextDouble() < map.viabilityOf(unordered(pair)).counted().value();
    }

    private static Genotype.Diploid unordered(Pair pair) {
        return new Genotype.Diploid(pair.fromDam, pair.fromSire);
    }

    private void lay(int clutch) {
        var dam = anyOf(Sex.FEMALE);
        var males = new ArrayList<AnimalId>();
        males.add(anyOf(Sex.MALE));
        var other = anyOf(Sex.MALE);
        Parentage.Sire sire = new Parentage.Sire.Known(males.getFirst());
        if (clutch % 3 == 0 && !males.contains(other)) {
            males.add(other);
            var key = "sire of clutch " + clutch;
            sire =
                    new Parentage.Sire.InDoubt(
                            new Parentage.SireQuestion(key, Distribution.uniform(males)));
            trueSires.put(key, males.get(random.nextInt(2)));
        }
        var father = trueSires.getOrDefault("sire of clutch " + clutch, males.getFirst());
        var young = 3 + random.nextInt(4);
        for (var i = 0; i < young; i++) {
            hatch(dam, father, new Parentage.Biparental(new Parentage.Dam.Known(dam), sire));
        }
    }

    private AnimalId anyOf(Sex sex) {
        while (true) {
            var i = random.nextInt(members.size());
            if (sexes.get(i) == sex) {
                return new AnimalId(i);
            }
        }
    }

    /// An embryo of that sex at a time, at each locus until it lives.
    private void hatch(AnimalId dam, AnimalId sire, Parentage parentage) {
        var sex = random.nextBoolean() ? Sex.FEMALE : Sex.MALE;
        var pairs = new LinkedHashMap<LocusId, Pair>();
        for (var map : MODEL.loci().values()) {
            Pair pair;
            do {
                pair = new Pair(gene(dam, map, sex), gene(sire, map, sex));
            } while (!lives(map, pair));
            pairs.put(map.locus().id(), pair);
        }
        add(sex, parentage, pairs, new LinkedHashMap<>());
    }

    private Allele gene(AnimalId parent, PhenotypeMap map, Sex young) {
        var pair = carried.get((int) parent.value()).get(map.locus().id());
        if (pair == null) {
            throw new IllegalStateException("no genes of " + parent);
        }
        if (map.locus().inheritance() instanceof Inheritance.SexLinked(var r)
                && sexes.get((int) parent.value()) == Sex.MALE) {
            // His X is from his dam, his Y from his sire.
            var stays = random.nextDouble() >= r.value();
            return (young == Sex.FEMALE) == stays ? pair.fromDam : pair.fromSire;
        }
        return random.nextBoolean() ? pair.fromDam : pair.fromSire;
    }

    private void add(
            Sex sex,
            Parentage parentage,
            Map<LocusId, Pair> pairs,
            SequencedMap<LocusId, OwnRecords.Claim> claims) {
        var id = new AnimalId(members.size());
        members.add(new Member(id, Optional.of(sex), Optional.empty(), parentage));
        sexes.add(sex);
        carried.add(pairs);
        var looked = random.nextInt(5) > 0;
        own.put(id, new OwnRecords(claims, looked ? Optional.of(seen(pairs)) : Optional.empty()));
    }

    private OwnRecords.Seen seen(Map<LocusId, Pair> pairs) {
        var looks = new LinkedHashMap<LocusId, Set<Phenotype>>();
        pairs.forEach(
                (locus, pair) -> {
                    var map = MODEL.theLocus(locus);
                    var truly = map.phenotypeOf(unordered(pair));
                    var others = new ArrayList<>(map.phenotypes());
                    others.remove(truly);
                    var misread = random.nextDouble() < ASSUMPTIONS.misread();
                    looks.put(
                            locus,
                            Set.of(misread ? others.get(random.nextInt(others.size())) : truly));
                });
        return new OwnRecords.Seen(looks);
    }
}
