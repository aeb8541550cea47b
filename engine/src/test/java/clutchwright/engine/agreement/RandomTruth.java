package clutchwright.engine.agreement;

import clutchwright.engine.agreement.RandomCollection.Draws;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.OwnRecords.AlleleTest;
import clutchwright.engine.inference.OwnRecords.Claim;
import clutchwright.engine.inference.OwnRecords.Seen;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// What the animals really carry, roughly dropped down the pedigree, and records that mostly
/// tell it: so that worlds are mostly possible, and now and then are not.
final class RandomTruth {

    private static final Masking NOTHING = new Masking.Nothing();

    private final Draws draws;
    private final RandomGenes genes;
    private final List<Member> members;
    private final List<Sex> sexes;
    private final Assumptions assumptions;
    private final List<Map<LocusId, List<Allele>>> carried = new ArrayList<>();

    RandomTruth(
            Draws draws,
            RandomGenes genes,
            List<Member> members,
            List<Sex> sexes,
            Assumptions assumptions) {
        this.draws = draws;
        this.genes = genes;
        this.members = members;
        this.sexes = sexes;
        this.assumptions = assumptions;
        for (var member : members) {
            var all = new HashMap<LocusId, List<Allele>>();
            for (var map : genes.model.loci().values()) {
                all.put(map.locus().id(), living(map, member));
            }
            carried.add(all);
        }
    }

    private List<Allele> living(PhenotypeMap map, Member member) {
        var pair = drawn(map, member);
        for (var i = 0; i < 20; i++) {
            var lives = map.viabilityOf(new Genotype.Diploid(pair.getFirst(), pair.getLast()));
            if (draws.with(lives.counted().value())) {
                break;
            }
            pair = drawn(map, member);
        }
        return pair;
    }

    private List<Allele> drawn(PhenotypeMap map, Member member) {
        var parentage = member.parentage();
        if (parentage instanceof Parentage.Parthenogenetic(var dam)) {
            var one = gene(map, (int) dam.value());
            return List.of(one, one);
        }
        var fromDam =
                parentage.dams().isEmpty()
                        ? any(map)
                        : gene(map, (int) parentage.dams().getFirst().value());
        var fromSire =
                parentage.sires().isEmpty()
                        ? any(map)
                        : gene(map, (int) parentage.sires().getFirst().value());
        return List.of(fromDam, fromSire);
    }

    private Allele any(PhenotypeMap map) {
        var series = map.locus().alleles();
        return draws.oneIn(2) ? series.getFirst() : draws.pick(series);
    }

    private Allele gene(PhenotypeMap map, int parent) {
        return draws.pick(carried.get(parent).get(map.locus().id()));
    }

    OwnRecords recordsOf(int animal) {
        var claims = new LinkedHashMap<LocusId, Claim>();
        var tests = new ArrayList<AlleleTest>();
        for (var map : genes.model.loci().values()) {
            var isFounder = members.get(animal).parentage() instanceof Parentage.Founder;
            if (draws.oneIn(isFounder ? 2 : 8)) {
                claims.put(map.locus().id(), claim(map, animal));
            }
            if (draws.oneIn(8)) {
                tests.add(test(map, animal));
            }
        }
        var seen = draws.oneIn(4) ? Optional.<Seen>empty() : Optional.of(seen(animal));
        return new OwnRecords(claims, seen, tests);
    }

    private Claim claim(PhenotypeMap map, int animal) {
        var weights = new LinkedHashMap<Genotype, Fraction>();
        weights.put(
                genotype(map, animal, carried.get(animal).get(map.locus().id())), Fraction.WHOLE);
        if (draws.oneIn(2)) {
            var other = List.of(any(map), draws.pick(map.locus().alleles()));
            weights.putIfAbsent(genotype(map, animal, other), Fraction.of(1 + draws.below(3), 2));
        }
        return new Claim(Distribution.proportionalTo(weights).orElseThrow(), draws.oneIn(4));
    }

    private Genotype genotype(PhenotypeMap map, int animal, List<Allele> pair) {
        var phased =
                map.locus().isSexLinked()
                        && members.get(animal).sex().isPresent()
                        && sexes.get(animal) == genes.model.sexes().heterogametic();
        return phased && draws.oneIn(2)
                ? new Genotype.Phased(pair.getFirst(), pair.getLast())
                : new Genotype.Diploid(pair.getFirst(), pair.getLast());
    }

    private AlleleTest test(PhenotypeMap map, int animal) {
        var allele = draws.pick(map.locus().alleles());
        var has = carried.get(animal).get(map.locus().id()).contains(allele);
        var sensitivity = draws.pick(List.of(1.0, 0.9));
        var specificity = draws.pick(List.of(1.0, 0.95));
        return new AlleleTest(allele, draws.oneIn(15) != has, sensitivity, specificity);
    }

    private Seen seen(int animal) {
        var looks = new LinkedHashMap<LocusId, Set<Phenotype>>();
        var unread = new HashSet<LocusId>();
        for (var map : genes.model.loci().values()) {
            var look = new HashSet<Phenotype>();
            look.add(shows(map, animal));
            if (draws.oneIn(10)) {
                look.add(draws.pick(List.copyOf(map.phenotypes())));
            }
            // A plain look is mostly not named.
            if (!look.equals(Set.of(Phenotype.normalOf(map.locus().id()))) || draws.oneIn(4)) {
                looks.put(map.locus().id(), look);
            }
            if (draws.oneIn(10)) {
                unread.add(map.locus().id());
            }
            var hides = look.stream().anyMatch(form -> !map.maskingOf(form).equals(NOTHING));
            if (hides && !draws.oneIn(4)) {
                looks.keySet().removeIf(other -> !other.equals(map.locus().id()));
                break;
            }
        }
        return new Seen(looks, unread);
    }

    private Phenotype shows(PhenotypeMap map, int animal) {
        var pair = carried.get(animal).get(map.locus().id());
        var mistake = assumptions.misread() > 0 ? draws.oneIn(10) : draws.oneIn(60);
        return mistake
                ? draws.pick(List.copyOf(map.phenotypes()))
                : map.phenotypeOf(new Genotype.Diploid(pair.getFirst(), pair.getLast()));
    }
}
