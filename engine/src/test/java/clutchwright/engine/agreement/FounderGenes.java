package clutchwright.engine.agreement;

import clutchwright.engine.agreement.GeneDrop.Way;
import clutchwright.engine.agreement.PedigreeEnumeration.Body;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.OwnRecords.Claim;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/// The genes of animals without recorded parents: two drawn from the population, among those
/// that live, or as a claim has them.
final class FounderGenes {

    private final PhenotypeMap map;
    private final Sex heterogametic;
    private final Assumptions assumptions;
    private final OwnEvidence evidence;
    private final Map<Body, List<Way>> drawn = new HashMap<>();

    FounderGenes(PedigreeEnumeration world, PhenotypeMap map) {
        this.map = map;
        heterogametic = world.records.model().sexes().heterogametic();
        assumptions = world.assumptions;
        evidence = new OwnEvidence(world.records.model(), map, assumptions.misread());
    }

    List<Way> of(Body body) {
        return drawn.computeIfAbsent(
                body,
                one -> GeneDrop.shares(drawn(one)).stream().filter(FounderGenes::may).toList());
    }

    private static boolean may(Way way) {
        return way.chance > 0;
    }

    private List<Way> drawn(Body body) {
        var claim = body.own().claims().get(map.locus().id());
        if (claim == null) {
            var acquired = assumptions.acquiredForLook();
            var look = evidence.look(body.own());
            if (acquired == 0 || look.isEmpty() || look.get().equals(evidence.normal())) {
                return population(body);
            }
            claim = new Claim(plainest(body.own()), true);
        }
        return claim.shows() ? asFarAsAcquired(body, claim) : stated(body, claim);
    }

    private List<Way> population(Body body) {
        return all(body, way -> frequency(way.fromDam) * frequency(way.fromSire) * lives(way));
    }

    private double frequency(Allele allele) {
        var f = assumptions.background();
        return allele.isWild() ? 1 - f * (map.locus().alleles().size() - 1) : f;
    }

    private double lives(Way way) {
        return map.viabilityOf(way.pair).counted().value();
    }

    /// Each sex alike; in each, what is stated, in every order of the genes that fits.
    private List<Way> stated(Body body, Claim claim) {
        var ways = new ArrayList<Way>();
        for (var sex : body.sexes()) {
            for (var said : claim.genotypes().chances().entrySet()) {
                var fitting =
                        everyOrder(sex).stream().filter(way -> fits(way, said.getKey())).toList();
                for (var way : fitting) {
                    var chance = said.getValue().value() / fitting.size();
                    ways.add(new Way(map.locus(), way.fromDam, way.fromSire, sex, chance));
                }
            }
        }
        return ways;
    }

    private boolean fits(Way way, Genotype said) {
        if (said instanceof Genotype.Phased phased && isPhased(way.sex)) {
            return phased.equals(phased(way));
        }
        return way.pair.equals(said.pair());
    }

    private boolean isPhased(Sex sex) {
        return map.locus().isSexLinked() && sex == heterogametic;
    }

    private Genotype.Phased phased(Way way) {
        return heterogametic == Sex.MALE
                ? new Genotype.Phased(way.fromDam, way.fromSire)
                : new Genotype.Phased(way.fromSire, way.fromDam);
    }

    /// Drawn for its look with that chance, else from the population, but in the stated phase.
    private List<Way> asFarAsAcquired(Body body, Claim claim) {
        var acquired = assumptions.acquiredForLook();
        var mixed = new ArrayList<Way>();
        for (var way : GeneDrop.shares(stated(body, claim))) {
            mixed.add(way.times(acquired));
        }
        var open = population(body).stream().filter(way -> !isOtherPhase(way, claim)).toList();
        for (var way : GeneDrop.shares(open)) {
            mixed.add(way.times(1 - acquired));
        }
        return mixed;
    }

    private boolean isOtherPhase(Way way, Claim claim) {
        if (!isPhased(way.sex)) {
            return false;
        }
        var own = phased(way);
        var turned = new Genotype.Phased(own.limited(), own.shared());
        var said = claim.genotypes().outcomes();
        return !own.equals(turned)
                && said.contains(turned)
                && !said.contains(own)
                && !said.contains(own.pair());
    }

    private Distribution<Genotype> plainest(OwnRecords own) {
        var look = evidence.look(own).orElseThrow();
        for (var mutant = 0; mutant <= 2; mutant++) {
            var fitting = new ArrayList<Genotype>();
            for (var pair : map.locus().allPairs()) {
                var wild = pair.copiesOf(map.locus().wildType());
                if (2 - wild == mutant && look.contains(map.phenotypeOf(pair))) {
                    fitting.add(pair);
                }
            }
            if (!fitting.isEmpty()) {
                return Distribution.uniform(fitting);
            }
        }
        throw new IllegalStateException("nothing looks like " + look);
    }

    private List<Way> all(Body body, ToDoubleFunction<Way> weight) {
        var ways = new ArrayList<Way>();
        for (var sex : body.sexes()) {
            for (var way : everyOrder(sex)) {
                ways.add(
                        new Way(
                                map.locus(),
                                way.fromDam,
                                way.fromSire,
                                sex,
                                weight.applyAsDouble(way)));
            }
        }
        return ways;
    }

    private List<Way> everyOrder(Sex sex) {
        var ways = new ArrayList<Way>();
        for (var one : map.locus().alleles()) {
            for (var other : map.locus().alleles()) {
                ways.add(new Way(map.locus(), one, other, sex, 1));
            }
        }
        return ways;
    }
}
