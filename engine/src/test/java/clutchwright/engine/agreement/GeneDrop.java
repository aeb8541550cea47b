package clutchwright.engine.agreement;

import clutchwright.engine.agreement.PedigreeEnumeration.Body;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One locus with every sire decided: all ways in which the genes can have come down, one after
/// the other.
///
/// An animal has a gene from its dam and one from its sire, in this order, and a sex: a [Way].
/// Nothing is summed out cleverly and nothing is shared with the engine's inference.
final class GeneDrop {

    private final PhenotypeMap map;
    private final Sex heterogametic;
    private final double secondDivision;
    private final List<Body> bodies;
    private final List<List<Way>> founders = new ArrayList<>();
    private final List<double[]> evidence = new ArrayList<>();
    private final Map<Integer, List<Way>> families = new HashMap<>();
    private final int[] pair;
    private final Way[] drawn;

    final double total;
    private final List<Map<Way, Sum>> single = new ArrayList<>();
    private final Map<Way, Map<Way, Sum>> paired = new HashMap<>();

    GeneDrop(PedigreeEnumeration world, PhenotypeMap map, List<Body> bodies, AnimalId... pair) {
        this.map = map;
        this.bodies = bodies;
        heterogametic = world.records.model().sexes().heterogametic();
        secondDivision = world.assumptions.secondDivision();
        this.pair = places(bodies, pair);
        drawn = new Way[bodies.size()];
        var genes = new FounderGenes(world, map);
        var own = new OwnEvidence(world.records.model(), map, world.assumptions.misread());
        for (var body : bodies) {
            founders.add(body.dam() == Body.NONE ? weighed(genes.of(body), own, body) : List.of());
            evidence.add(likelihoods(own, body));
            single.add(new HashMap<>());
        }
        total = descend(0, 1);
    }

    private double[] likelihoods(OwnEvidence own, Body body) {
        var likelihoods = new double[64];
        for (var one : map.locus().alleles()) {
            for (var other : map.locus().alleles()) {
                var way = new Way(map.locus(), one, other, Sex.FEMALE, 1);
                likelihoods[way.genes] = own.of(body.own(), way.pair);
            }
        }
        return likelihoods;
    }

    private static int[] places(List<Body> bodies, AnimalId... animals) {
        var places = new int[animals.length];
        for (var i = 0; i < bodies.size(); i++) {
            for (var j = 0; j < animals.length; j++) {
                if (bodies.get(i).animal().isPresent()
                        && bodies.get(i).animal().get().equals(animals[j])) {
                    places[j] = i;
                }
            }
        }
        return places;
    }

    private static List<Way> weighed(List<Way> ways, OwnEvidence own, Body body) {
        return ways.stream().map(way -> way.times(own.of(body.own(), way.pair))).toList();
    }

    /// The sum over all ways for this body and those after it, given those before.
    private double descend(int i, double weight) {
        if (i == bodies.size()) {
            return weight;
        }
        var body = bodies.get(i);
        var isFounder = body.dam() == Body.NONE;
        var sum = 0.0;
        for (var way : isFounder ? founders.get(i) : family(body)) {
            var more = weight * way.chance * (isFounder ? 1 : evidence.get(i)[way.genes]);
            if (more > 0) {
                drawn[i] = way;
                var mass = descend(i + 1, more);
                sum += mass;
                single.get(i).computeIfAbsent(way, _ -> new Sum()).value += mass;
                if (pair.length == 2 && i == pair[1]) {
                    paired.computeIfAbsent(drawn[pair[0]], _ -> new HashMap<>())
                                    .computeIfAbsent(way, _ -> new Sum())
                                    .value +=
                            mass;
                }
            }
        }
        return sum;
    }

    private static final class Sum {
        private double value;
    }

    /// A gene from each parent and a sex, with a chance. Compared as itself: each is made once.
    static final class Way {
        final Allele fromDam;
        final Allele fromSire;
        final Sex sex;
        final double chance;
        final Genotype.Diploid pair;

        /// A number for the two genes, from 0 to 63: no series here has more than eight alleles.
        private final int genes;
        private final Locus locus;

        Way(Locus locus, Allele fromDam, Allele fromSire, Sex sex, double chance) {
            this.locus = locus;
            genes = 8 * locus.alleles().indexOf(fromDam) + locus.alleles().indexOf(fromSire);
            this.fromDam = fromDam;
            this.fromSire = fromSire;
            this.sex = sex;
            this.chance = chance;
            pair = new Genotype.Diploid(fromDam, fromSire);
        }

        Way times(double by) {
            return new Way(locus, fromDam, fromSire, sex, chance * by);
        }

        private Allele gene(int which) {
            return which == 0 ? fromDam : fromSire;
        }
    }

    /// Every zygote that these parents make, as often as it is found alive among all their
    /// living of the sexes that the young one may be.
    private List<Way> family(Body body) {
        var dam = drawn[body.dam()];
        var sexes = sexes(body);
        var key = 3 * dam.genes + (sexes.size() == 2 ? 2 : sexes.getFirst().ordinal());
        if (body.sire() == Body.NONE) {
            return families.computeIfAbsent(key, _ -> halfClones(dam, sexes));
        }
        var sire = drawn[body.sire()];
        return families.computeIfAbsent(
                key + 192 * (1 + sire.genes), _ -> zygotes(dam, sire, sexes));
    }

    private List<Way> zygotes(Way dam, Way sire, List<Sex> sexes) {
        var zygotes = new ArrayList<Way>();
        for (var born : sexes) {
            for (var maternal = 0; maternal < 2; maternal++) {
                for (var paternal = 0; paternal < 2; paternal++) {
                    zygotes.add(
                            new Way(
                                    map.locus(),
                                    dam.gene(maternal),
                                    sire.gene(paternal),
                                    born,
                                    passes(Sex.FEMALE, maternal, born)
                                            * passes(Sex.MALE, paternal, born)));
                }
            }
        }
        return living(zygotes);
    }

    /// The egg and its second polar body are sisters: alike, unless the locus came apart at the
    /// second division. Both have the chromosome that the dam has twice.
    private List<Way> halfClones(Way dam, List<Sex> sexes) {
        var clones = new ArrayList<Way>();
        for (var born : sexes) {
            if (born != heterogametic) {
                clones.add(new Way(map.locus(), dam.fromDam, dam.fromSire, born, secondDivision));
                clones.add(
                        new Way(
                                map.locus(),
                                dam.fromDam,
                                dam.fromDam,
                                born,
                                (1 - secondDivision) / 2));
                clones.add(
                        new Way(
                                map.locus(),
                                dam.fromSire,
                                dam.fromSire,
                                born,
                                (1 - secondDivision) / 2));
            }
        }
        return living(clones);
    }

    private List<Way> living(List<Way> zygotes) {
        return shares(
                zygotes.stream()
                        .map(way -> way.times(map.viabilityOf(way.pair).counted().value()))
                        .toList());
    }

    static List<Way> shares(List<Way> ways) {
        var sum = ways.stream().mapToDouble(way -> way.chance).sum();
        return sum == 0 ? List.of() : ways.stream().map(way -> way.times(1 / sum)).toList();
    }

    /// The chance that a parent of the sex passes that one of its genes to young of the sex.
    private double passes(Sex parent, int which, Sex born) {
        if (parent != heterogametic
                || !(map.locus().inheritance() instanceof Inheritance.SexLinked(var r))) {
            return 0.5;
        }
        // A father has his Y from his own father, a mother her W from her own mother.
        var isLimited = which == (heterogametic == Sex.MALE ? 1 : 0);
        var staysWithItsChromosome = isLimited == (born == heterogametic);
        return staysWithItsChromosome ? 1 - r.value() : r.value();
    }

    /// At a locus that does not mind the sex, one stands for both.
    private List<Sex> sexes(Body body) {
        return map.locus().isSexLinked() || body.sexes().size() == 1
                ? body.sexes()
                : List.of(heterogametic.opposite());
    }

    /// The weight of each genotype of an animal, all others summed over.
    Map<Genotype, Double> of(AnimalId animal) {
        var sums = new HashMap<Genotype, Double>();
        single.get(places(bodies, animal)[0])
                .forEach((way, sum) -> sums.merge(genotype(way), sum.value, Double::sum));
        return sums;
    }

    Map<List<Genotype>, Double> together() {
        var sums = new LinkedHashMap<List<Genotype>, Double>();
        paired.forEach(
                (one, others) ->
                        others.forEach(
                                (other, sum) ->
                                        sums.merge(
                                                List.of(genotype(one), genotype(other)),
                                                sum.value,
                                                Double::sum)));
        return sums;
    }

    private Genotype genotype(Way way) {
        if (!map.locus().isSexLinked() || way.sex != heterogametic) {
            return way.pair;
        }
        return heterogametic == Sex.MALE
                ? new Genotype.Phased(way.fromDam, way.fromSire)
                : new Genotype.Phased(way.fromSire, way.fromDam);
    }
}
