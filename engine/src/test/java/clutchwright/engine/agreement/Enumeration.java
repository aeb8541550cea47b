package clutchwright.engine.agreement;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/// The second, slow, obvious way to the outcome of a pairing: every egg by every sperm, over all
/// loci of the model at once, for everything that the parents may be.
final class Enumeration {

    /// One thing the parents may be together, and what they then give.
    private record World(Fraction weight, Map<List<Phenotype>, Fraction> shares, Fraction alive) {}

    /// A parent with the strands of each locus told apart.
    private record Strands(Fraction weight, List<Allele> one, List<Allele> other) {}

    private record Cell(List<Allele> alleles, Sex sex, Fraction chance) {}

    /// What is known of all hatchlings that show the same.
    static final class Tally {
        Fraction chance = Fraction.NONE;
        final Map<Sex, Fraction> sexes = new TreeMap<>();
        final Map<LocusId, Map<Genotype, Fraction>> genotypes = new LinkedHashMap<>();
        final Map<LocusId, Map<Allele, Fraction>> fromDam = new LinkedHashMap<>();
        final Map<LocusId, Map<Allele, Fraction>> fromSire = new LinkedHashMap<>();
        final Set<LocusId> readable = new HashSet<>();
    }

    final Map<List<Phenotype>, Tally> groups = new LinkedHashMap<>();
    final Set<Map<LocusId, Genotype>> conceived = new HashSet<>();
    Fraction alive = Fraction.NONE;

    private final GeneticModel model;
    private final List<LocusId> loci;
    private final List<World> worlds = new ArrayList<>();

    Enumeration(GeneticModel model, ParentGenotype dam, ParentGenotype sire) {
        this.model = model;
        loci = List.copyOf(model.loci().keySet());
        for (var mother : allStrands(dam, Sex.FEMALE)) {
            for (var father : allStrands(sire, Sex.MALE)) {
                cross(mother, father);
            }
        }
    }

    private void cross(Strands mother, Strands father) {
        var weight = mother.weight.times(father.weight);
        var shares = new LinkedHashMap<List<Phenotype>, Fraction>();
        var lives = Fraction.NONE;
        for (var egg : gametes(mother, Sex.FEMALE)) {
            for (var sperm : gametes(father, Sex.MALE)) {
                var sex = model.sexes().heterogametic() == Sex.FEMALE ? egg.sex : sperm.sex;
                var genotypes = new LinkedHashMap<LocusId, Genotype>();
                for (var i = 0; i < loci.size(); i++) {
                    genotypes.put(
                            loci.get(i),
                            join(loci.get(i), egg.alleles.get(i), sperm.alleles.get(i), sex));
                }
                conceived.add(genotypes);
                var chance = egg.chance.times(sperm.chance).times(viability(genotypes));
                if (chance.isNone()) {
                    continue;
                }
                var hidden = hidden(genotypes);
                var shows = shows(genotypes, hidden);
                shares.merge(shows, chance, Fraction::plus);
                lives = lives.plus(chance);
                tally(shows, hidden, genotypes, egg, sperm, sex, chance.times(weight));
            }
        }
        alive = alive.plus(lives.times(weight));
        worlds.add(new World(weight, shares, lives));
    }

    private void tally(
            List<Phenotype> shows,
            Set<LocusId> hidden,
            Map<LocusId, Genotype> genotypes,
            Cell egg,
            Cell sperm,
            Sex sex,
            Fraction chance) {
        var tally = groups.computeIfAbsent(shows, group -> new Tally());
        tally.chance = tally.chance.plus(chance);
        tally.sexes.merge(sex, chance, Fraction::plus);
        for (var i = 0; i < loci.size(); i++) {
            var locus = loci.get(i);
            var genotype = at(genotypes, locus);
            add(tally.genotypes, locus, genotype, chance);
            add(tally.fromDam, locus, egg.alleles.get(i), chance);
            add(tally.fromSire, locus, sperm.alleles.get(i), chance);
            if (!hidden.contains(locus)) {
                tally.readable.add(locus);
            }
        }
    }

    private static <T> void add(
            Map<LocusId, Map<T, Fraction>> sums, LocusId locus, T what, Fraction chance) {
        sums.computeIfAbsent(locus, id -> new LinkedHashMap<>())
                .merge(what, chance, Fraction::plus);
    }

    private Genotype join(LocusId locus, Allele fromDam, Allele fromSire, Sex sex) {
        if (!model.theLocus(locus).locus().isSexLinked() || sex != model.sexes().heterogametic()) {
            return new Genotype.Diploid(fromDam, fromSire);
        }
        return sex == Sex.MALE
                ? new Genotype.Phased(fromDam, fromSire)
                : new Genotype.Phased(fromSire, fromDam);
    }

    private Fraction viability(Map<LocusId, Genotype> genotypes) {
        var viability = Fraction.WHOLE;
        for (var entry : genotypes.entrySet()) {
            viability =
                    viability.times(
                            model.theLocus(entry.getKey()).viabilityOf(entry.getValue()).counted());
        }
        for (var combination : model.combinations()) {
            if (has(genotypes, combination.parts())) {
                viability = viability.times(combination.viability().counted());
            }
        }
        return viability;
    }

    private static <K, V> V at(Map<K, V> map, K key) {
        return Objects.requireNonNull(map.get(key));
    }

    static boolean has(Map<LocusId, Genotype> genotypes, List<Caution.Part> parts) {
        return parts.stream().allMatch(part -> part.holdsFor(at(genotypes, part.allele().locus())));
    }

    private Set<LocusId> hidden(Map<LocusId, Genotype> genotypes) {
        var hidden = new HashSet<LocusId>();
        for (var locus : loci) {
            var map = model.theLocus(locus);
            var look = map.phenotypeOf(at(genotypes, locus));
            if (!hidden.contains(locus) && look.visible()) {
                for (var other : loci) {
                    if (!other.equals(locus) && map.maskingOf(look).hides(other)) {
                        hidden.add(other);
                    }
                }
            }
        }
        return hidden;
    }

    private List<Phenotype> shows(Map<LocusId, Genotype> genotypes, Set<LocusId> hidden) {
        return loci.stream()
                .filter(locus -> !hidden.contains(locus))
                .map(locus -> model.theLocus(locus).phenotypeOf(at(genotypes, locus)))
                .filter(Phenotype::visible)
                .toList();
    }

    /// Every order of the two alleles at every locus of a linkage group; elsewhere order is idle.
    private List<Strands> allStrands(ParentGenotype parent, Sex sex) {
        List<Strands> all = List.of(new Strands(Fraction.WHOLE, List.of(), List.of()));
        for (var locus : loci) {
            var held =
                    parent.loci()
                            .getOrDefault(locus, Distribution.certain(model.wildType(locus, sex)));
            var next = new ArrayList<Strands>();
            for (var strands : all) {
                held.chances()
                        .forEach(
                                (genotype, chance) -> {
                                    var first = genotype.alleles().getFirst();
                                    var second = genotype.alleles().getLast();
                                    var weight = strands.weight.times(chance);
                                    if (isLinked(locus)) {
                                        var half = weight.times(Fraction.HALF);
                                        next.add(longer(strands, half, first, second));
                                        next.add(longer(strands, half, second, first));
                                    } else {
                                        next.add(longer(strands, weight, first, second));
                                    }
                                });
            }
            all = next;
        }
        return withStatedPhase(all, parent);
    }

    /// Among the orders of one genotype those that disagree fall away; the others share its weight.
    private List<Strands> withStatedPhase(List<Strands> all, ParentGenotype parent) {
        var before = new LinkedHashMap<List<Genotype.Diploid>, Fraction>();
        var after = new LinkedHashMap<List<Genotype.Diploid>, Fraction>();
        all.forEach(strands -> before.merge(pairs(strands), strands.weight, Fraction::plus));
        var kept = all.stream().filter(strands -> agrees(strands, parent)).toList();
        kept.forEach(strands -> after.merge(pairs(strands), strands.weight, Fraction::plus));
        return kept.stream()
                .map(
                        strands ->
                                new Strands(
                                        strands.weight
                                                .times(
                                                        before.getOrDefault(
                                                                pairs(strands), Fraction.NONE))
                                                .dividedBy(
                                                        after.getOrDefault(
                                                                pairs(strands), Fraction.NONE)),
                                        strands.one,
                                        strands.other))
                .toList();
    }

    private boolean agrees(Strands strands, ParentGenotype parent) {
        return parent.haplotypes().stream()
                .allMatch(
                        haplotype -> {
                            var alleles = haplotype.alleles().values();
                            var every = new ArrayList<>(strands.one);
                            every.addAll(strands.other);
                            return !every.containsAll(alleles)
                                    || strands.one.containsAll(alleles)
                                    || strands.other.containsAll(alleles);
                        });
    }

    private List<Genotype.Diploid> pairs(Strands strands) {
        var pairs = new ArrayList<Genotype.Diploid>();
        for (var i = 0; i < loci.size(); i++) {
            pairs.add(new Genotype.Diploid(strands.one.get(i), strands.other.get(i)));
        }
        return pairs;
    }

    private static Strands longer(Strands strands, Fraction weight, Allele one, Allele other) {
        var ones = new ArrayList<>(strands.one);
        ones.add(one);
        var others = new ArrayList<>(strands.other);
        others.add(other);
        return new Strands(weight, ones, others);
    }

    private boolean isLinked(LocusId locus) {
        return model.linkage().groups().stream().anyMatch(group -> group.loci().contains(locus));
    }

    /// Every choice of a strand at every locus, and of the sex where this parent decides it.
    private List<Cell> gametes(Strands parent, Sex sex) {
        var cells = new LinkedHashMap<List<Object>, Cell>();
        for (var choice = 0; choice < 1 << loci.size(); choice++) {
            for (var decides : Sex.values()) {
                var chance = chanceOf(choice, decides, sex);
                if (chance.isNone()) {
                    continue;
                }
                var alleles = new ArrayList<Allele>();
                for (var i = 0; i < loci.size(); i++) {
                    alleles.add((choice >> i & 1) == 0 ? parent.one.get(i) : parent.other.get(i));
                }
                cells.merge(
                        List.of(alleles, decides),
                        new Cell(alleles, decides, chance),
                        (a, b) -> new Cell(a.alleles, a.sex, a.chance.plus(b.chance)));
            }
        }
        return List.copyOf(cells.values());
    }

    private Fraction chanceOf(int choice, Sex decides, Sex parent) {
        var deciding = parent == model.sexes().heterogametic();
        // The other parent decides nothing: its cells are all of one kind.
        var chance =
                deciding ? Fraction.HALF : decides == Sex.FEMALE ? Fraction.WHOLE : Fraction.NONE;
        for (var i = 0; i < loci.size(); i++) {
            var first = (choice >> i & 1) == 0;
            if (deciding
                    && model.theLocus(loci.get(i)).locus().inheritance()
                            instanceof Inheritance.SexLinked(var r)) {
                var homogametic = decides != model.sexes().heterogametic();
                chance = chance.times(first == homogametic ? r.complement() : r);
            } else if (!isLinked(loci.get(i))) {
                chance = chance.times(Fraction.HALF);
            }
        }
        for (var group : model.linkage().groups()) {
            chance = chance.times(Fraction.HALF);
            for (var k = 1; k < group.loci().size(); k++) {
                var left = choice >> loci.indexOf(group.loci().get(k - 1)) & 1;
                var right = choice >> loci.indexOf(group.loci().get(k)) & 1;
                var r = group.gaps().get(k - 1);
                chance = chance.times(left == right ? r.complement() : r);
            }
        }
        return chance;
    }

    static String nameOf(List<Phenotype> shows) {
        return shows.isEmpty()
                ? "Normal"
                : String.join(" ", shows.stream().map(Phenotype::name).toList());
    }

    /// Groups as a list would show them.
    List<List<Phenotype>> ranking() {
        return groups.keySet().stream()
                .sorted(
                        Comparator.comparing(
                                        (List<Phenotype> shows) -> at(groups, shows).chance,
                                        Comparator.reverseOrder())
                                .thenComparing(
                                        shows -> nameOf(shows).codePoints().boxed().toList(),
                                        Enumeration::compareLists))
                .toList();
    }

    private static int compareLists(List<Integer> a, List<Integer> b) {
        for (var i = 0; i < Math.min(a.size(), b.size()); i++) {
            if (!a.get(i).equals(b.get(i))) {
                return a.get(i).compareTo(b.get(i));
            }
        }
        return Integer.compare(a.size(), b.size());
    }

    Fraction chanceOf(Predicate<List<Phenotype>> wanted) {
        return groups.entrySet().stream()
                .filter(entry -> wanted.test(entry.getKey()))
                .map(entry -> entry.getValue().chance)
                .reduce(Fraction.NONE, Fraction::plus)
                .dividedBy(alive);
    }

    Fraction atLeastOne(Predicate<List<Phenotype>> wanted, int eggs) {
        var none = Fraction.NONE;
        var all = Fraction.NONE;
        for (var world : worlds) {
            var share = Fraction.NONE;
            for (var entry : world.shares.entrySet()) {
                if (!wanted.test(entry.getKey())) {
                    share = share.plus(entry.getValue());
                }
            }
            none = none.plus(world.weight.times(share.power(eggs)));
            all = all.plus(world.weight.times(world.alive.power(eggs)));
        }
        return none.dividedBy(all).complement();
    }

    Fraction clutchChance(Map<List<Phenotype>, Integer> found) {
        var eggs = found.values().stream().mapToInt(Integer::intValue).sum();
        var so = Fraction.NONE;
        var all = Fraction.NONE;
        for (var world : worlds) {
            var product = world.weight;
            for (var entry : found.entrySet()) {
                product =
                        product.times(
                                world.shares
                                        .getOrDefault(entry.getKey(), Fraction.NONE)
                                        .power(entry.getValue()));
            }
            so = so.plus(product);
            all = all.plus(world.weight.times(world.alive.power(eggs)));
        }
        var orders = factorial(eggs);
        for (var count : found.values()) {
            orders = orders.divide(factorial(count));
        }
        return so.times(Fraction.of(orders, BigInteger.ONE)).dividedBy(all);
    }

    private static BigInteger factorial(int n) {
        var product = BigInteger.ONE;
        for (var i = 2; i <= n; i++) {
            product = product.multiply(BigInteger.valueOf(i));
        }
        return product;
    }
}
