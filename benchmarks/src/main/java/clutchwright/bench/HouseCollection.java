package clutchwright.bench;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import java.util.SplittableRandom;

/// A collection like a real one, from a seed: a house that starts with bought-in animals, buys
/// a few each season, pairs within its one pool (sometimes daughters with their sires and
/// siblings with each other), keeps the hatchlings that show most, and records what nearly all
/// of them show.
///
/// Each allele was brought in by one to thirty animals, of which the seller says so: visual,
/// het or possible het. Nobody else has it, though inference does not know that.
final class HouseCollection {

    private static final int SEASONS = 14;
    private static final int FIRST = 150;
    private static final int BOUGHT_A_SEASON = 8;
    private static final double LOOKED_AT = 0.95;

    final CollectionRecords records;

    private final SplittableRandom random;
    private final GeneticModel model;
    private final List<Member> members = new ArrayList<>();
    private final List<Animal> animals = new ArrayList<>();
    private final Map<AnimalId, OwnRecords> own = new HashMap<>();

    private static final class Animal {
        private final int number;
        private final Sex sex;
        private final int season;
        private final int dam;
        private final int sire;
        private final byte[][] genes;

        Animal(int number, Sex sex, int season, int dam, int sire, byte[]... genes) {
            this.number = number;
            this.sex = sex;
            this.season = season;
            this.dam = dam;
            this.sire = sire;
            this.genes = genes;
        }
    }

    private HouseCollection(int size, int loci, long seed) {
        random = new SplittableRandom(seed);
        model = HouseGenes.of(loci);
        var founders = founders();
        breed(size, founders);
        var sound = (Pedigree.Result.Sound) Pedigree.of(members);
        records = new CollectionRecords(model, sound.pedigree(), own);
    }

    static HouseCollection of(int size, int loci, long seed) {
        return new HouseCollection(size, loci, seed);
    }

    /// All that will ever be bought, with their genes; the first are there from the start.
    private List<Founder> founders() {
        var all = new ArrayList<Founder>();
        for (var i = 0; i < FIRST + BOUGHT_A_SEASON * SEASONS; i++) {
            all.add(new Founder(new byte[model.loci().size()][2]));
        }
        var l = 0;
        for (var map : model.loci().values()) {
            for (var allele = 1; allele < map.locus().alleles().size(); allele++) {
                var carriers = 1 + random.nextInt(30);
                for (var c = 0; c < carriers; c++) {
                    bring(all.get(random.nextInt(all.size())), l, map.locus().alleles(), allele);
                }
            }
            l++;
        }
        return all;
    }

    private void bring(Founder founder, int locus, List<Allele> alleles, int allele) {
        var wild = alleles.getFirst();
        var het = new Genotype.Diploid(wild, alleles.get(allele));
        var u = random.nextDouble();
        var genes = founder.genes[locus];
        if (u < 0.3) {
            genes[0] = (byte) allele;
            genes[1] = (byte) allele;
            founder.claims.put(
                    wild.locus(),
                    new OwnRecords.Claim(
                            Distribution.certain(
                                    new Genotype.Diploid(alleles.get(allele), alleles.get(allele))),
                            false));
            return;
        }
        var chance = u < 0.6 ? Fraction.WHOLE : u < 0.8 ? Fraction.of(2, 3) : Fraction.HALF;
        genes[0] = random.nextDouble() < chance.value() ? (byte) allele : 0;
        genes[1] = 0;
        var said = new LinkedHashMap<Genotype, Fraction>();
        said.put(het, chance);
        if (!chance.isWhole()) {
            said.put(new Genotype.Diploid(wild, wild), chance.complement());
        }
        founder.claims.put(
                wild.locus(), new OwnRecords.Claim(new Distribution<Genotype>(said), false));
    }

    private static final class Founder {
        private final byte[][] genes;
        private final SequencedMap<LocusId, OwnRecords.Claim> claims = new LinkedHashMap<>();

        Founder(byte[]... genes) {
            this.genes = genes;
        }
    }

    private void breed(int size, List<Founder> founders) {
        var males = new ArrayList<Animal>();
        var females = new ArrayList<Animal>();
        var bought = 0;
        while (bought < FIRST) {
            buy(founders.get(bought++), 0, males, females);
        }
        var clutches = (int) Math.round((size - founders.size()) / 6.5 / SEASONS);
        for (var season = 1; season <= SEASONS && animals.size() < size; season++) {
            var kept = new ArrayList<Animal>();
            var now = season;
            var ready =
                    females.stream()
                            .filter(f -> now - f.season >= 3 || f.dam < 0)
                            .filter(f -> now - f.season <= 10)
                            .toList();
            var able =
                    males.stream()
                            .filter(m -> now - m.season >= 1)
                            .filter(m -> now - m.season <= 8)
                            .toList();
            var order = new ArrayList<>(ready);
            for (var i = order.size() - 1; i > 0; i--) {
                Collections.swap(order, i, random.nextInt(i + 1));
            }
            for (var i = 0; i < Math.min(clutches * 2, order.size()); i++) {
                clutch(order.get(i), mateOf(order.get(i), able), season, size, kept);
            }
            for (var b = 0; b < BOUGHT_A_SEASON && animals.size() < size; b++) {
                if (bought < founders.size()) {
                    buy(founders.get(bought++), season, males, females);
                }
            }
            kept.forEach(animal -> (animal.sex == Sex.MALE ? males : females).add(animal));
        }
    }

    private Animal mateOf(Animal female, List<Animal> males) {
        var u = random.nextDouble();
        if (u < 0.06 && female.sire >= 0) {
            return animals.get(female.sire);
        }
        if (u < 0.12 && female.dam >= 0) {
            for (var male : males) {
                if (male.dam == female.dam && male.sire == female.sire) {
                    return male;
                }
            }
        }
        // A few males get most of the females.
        return males.get((int) (males.size() * Math.pow(random.nextDouble(), 1.7)));
    }

    private void clutch(Animal dam, Animal sire, int season, int size, List<Animal> kept) {
        var eggs = 3 + random.nextInt(8);
        for (var egg = 0; egg < eggs && animals.size() < size; egg++) {
            var genes = new byte[model.loci().size()][2];
            for (var l = 0; l < genes.length; l++) {
                genes[l][0] = dam.genes[l][random.nextInt(2)];
                genes[l][1] = sire.genes[l][random.nextInt(2)];
            }
            var young = add(season, dam.number, sire.number, genes, new LinkedHashMap<>());
            var shows =
                    own.getOrDefault(id(young), OwnRecords.NONE)
                            .seen()
                            .map(seen -> seen.looks().size())
                            .orElse(0);
            if (random.nextDouble() < 0.04 + 0.05 * shows) {
                kept.add(young);
            }
        }
    }

    private void buy(Founder founder, int season, List<Animal> males, List<Animal> females) {
        var animal = add(season, -1, -1, founder.genes, founder.claims);
        (animal.sex == Sex.MALE ? males : females).add(animal);
    }

    private Animal add(
            int season,
            int dam,
            int sire,
            byte[][] genes,
            SequencedMap<LocusId, OwnRecords.Claim> claims) {
        var sex =
                dam < 0
                        ? random.nextInt(4) == 0 ? Sex.MALE : Sex.FEMALE
                        : random.nextBoolean() ? Sex.MALE : Sex.FEMALE;
        var animal = new Animal(animals.size(), sex, season, dam, sire, genes);
        animals.add(animal);
        var parentage =
                dam < 0
                        ? new Parentage.Founder()
                        : new Parentage.Biparental(
                                new Parentage.Dam.Known(new AnimalId(dam)),
                                new Parentage.Sire.Known(new AnimalId(sire)));
        members.add(new Member(id(animal), Optional.of(sex), Optional.empty(), parentage));
        if (dam < 0 || random.nextDouble() < LOOKED_AT) {
            own.put(id(animal), new OwnRecords(claims, Optional.of(look(genes))));
        }
        return animal;
    }

    private OwnRecords.Seen look(byte[][] genes) {
        var looks = new LinkedHashMap<LocusId, Set<Phenotype>>();
        var l = 0;
        for (var map : model.loci().values()) {
            var alleles = map.locus().alleles();
            var look =
                    map.phenotypeOf(
                            new Genotype.Diploid(
                                    alleles.get(genes[l][0]), alleles.get(genes[l][1])));
            if (look.visible()) {
                looks.put(map.locus().id(), Set.of(look));
            }
            l++;
        }
        return new OwnRecords.Seen(looks);
    }

    private static AnimalId id(Animal animal) {
        return new AnimalId(animal.number);
    }
}
