package clutchwright.engine.agreement;

import clutchwright.engine.agreement.PedigreeEnumeration.Body;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.pedigree.AnimalId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/// One locus with every sire decided: all ways in which the genes can have come down, one after
/// the other.
///
/// An animal has a gene from its dam and one from its sire, in this order, and a sex. Nothing is
/// summed out cleverly and nothing is shared with the engine's inference.
final class GeneDrop {

    private final PhenotypeMap map;
    private final Sex heterogametic;
    private final Assumptions assumptions;
    private final List<Body> bodies;
    private final AnimalId[] pair;
    private final List<Allele> alleles;
    private final FounderGenes founders;
    private final OwnEvidence evidence;

    private final Allele[] fromDam;
    private final Allele[] fromSire;
    private final Sex[] sex;

    final double total;
    final Map<AnimalId, Map<Genotype, Double>> single = new HashMap<>();
    final Map<List<Genotype>, Double> paired = new LinkedHashMap<>();

    GeneDrop(PedigreeEnumeration world, PhenotypeMap map, List<Body> bodies, AnimalId... pair) {
        this.map = map;
        this.heterogametic = world.records.model().sexes().heterogametic();
        this.assumptions = world.assumptions;
        this.bodies = bodies;
        this.pair = pair.clone();
        alleles = map.locus().alleles();
        founders = new FounderGenes(world, map);
        evidence = new OwnEvidence(world.records.model(), map, assumptions.misread());
        fromDam = new Allele[bodies.size()];
        fromSire = new Allele[bodies.size()];
        sex = new Sex[bodies.size()];
        total = descend(0, 1);
    }

    /// The sum over all ways for this body and those after it, given those before.
    private double descend(int i, double weight) {
        if (i == bodies.size()) {
            return weight;
        }
        var body = bodies.get(i);
        var sum = 0.0;
        for (var way : body.dam() == Body.NONE ? founders.of(body) : born(body)) {
            fromDam[i] = way.fromDam;
            fromSire[i] = way.fromSire;
            sex[i] = way.sex;
            var more = weight * way.chance * evidence.of(body.own(), way.pair());
            if (more > 0) {
                var mass = descend(i + 1, more);
                tally(i, mass);
                sum += mass;
            }
        }
        return sum;
    }

    /// A gene from each parent and a sex, with a chance.
    record Way(Allele fromDam, Allele fromSire, Sex sex, double chance) {

        Genotype.Diploid pair() {
            return new Genotype.Diploid(fromDam, fromSire);
        }
    }

    /// Every zygote that these parents make, as often as it is found alive among all their
    /// living of the sexes that the young one may be.
    private List<Way> born(Body body) {
        var zygotes = new ArrayList<Way>();
        for (var born : sexes(body)) {
            BiConsumer<Way, Double> add =
                    (way, chance) ->
                            zygotes.add(
                                    new Way(
                                            way.fromDam,
                                            way.fromSire,
                                            way.sex,
                                            chance * viability(way.pair())));
            if (body.sire() == Body.NONE) {
                halfClones(body.dam(), born, add);
            } else {
                meioses(body.dam(), body.sire(), born, add);
            }
        }
        return shares(zygotes);
    }

    static List<Way> shares(List<Way> ways) {
        var sum = ways.stream().mapToDouble(Way::chance).sum();
        return sum == 0
                ? List.of()
                : ways.stream()
                        .map(way -> new Way(way.fromDam, way.fromSire, way.sex, way.chance / sum))
                        .toList();
    }

    private void meioses(int dam, int sire, Sex born, BiConsumer<Way, Double> add) {
        for (var maternal = 0; maternal < 2; maternal++) {
            for (var paternal = 0; paternal < 2; paternal++) {
                add.accept(
                        new Way(gene(dam, maternal), gene(sire, paternal), born, 0),
                        passes(Sex.FEMALE, maternal, born) * passes(Sex.MALE, paternal, born));
            }
        }
    }

    /// The egg and its second polar body are sisters: alike, unless the locus came apart at the
    /// second division. Both have the chromosome that the dam has twice.
    private void halfClones(int dam, Sex born, BiConsumer<Way, Double> add) {
        if (born == heterogametic) {
            return;
        }
        var apart = assumptions.secondDivision();
        var one = gene(dam, 0);
        var other = gene(dam, 1);
        add.accept(new Way(one, other, born, 0), apart);
        add.accept(new Way(one, one, born, 0), (1 - apart) / 2);
        add.accept(new Way(other, other, born, 0), (1 - apart) / 2);
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

    private Allele gene(int body, int which) {
        return which == 0 ? fromDam[body] : fromSire[body];
    }

    private double viability(Genotype.Diploid genotype) {
        return map.viabilityOf(genotype).counted().value();
    }

    /// At a locus that does not mind the sex, one stands for both.
    private List<Sex> sexes(Body body) {
        return map.locus().isSexLinked() || body.sexes().size() == 1
                ? body.sexes()
                : List.of(heterogametic.opposite());
    }

    private void tally(int i, double mass) {
        var animal = bodies.get(i).animal();
        if (animal.isEmpty()) {
            return;
        }
        single.computeIfAbsent(animal.get(), _ -> new HashMap<>())
                .merge(genotype(i), mass, Double::sum);
        var other = pair.length == 2 && animal.get().equals(pair[1]) ? pair[0] : null;
        for (var j = 0; j < i && other != null; j++) {
            if (bodies.get(j).animal().filter(other::equals).isPresent()) {
                paired.merge(List.of(genotype(j), genotype(i)), mass, Double::sum);
            }
        }
    }

    private Genotype genotype(int i) {
        if (!map.locus().isSexLinked() || sex[i] != heterogametic) {
            return new Genotype.Diploid(fromDam[i], fromSire[i]);
        }
        return heterogametic == Sex.MALE
                ? new Genotype.Phased(fromDam[i], fromSire[i])
                : new Genotype.Phased(fromSire[i], fromDam[i]);
    }
}
