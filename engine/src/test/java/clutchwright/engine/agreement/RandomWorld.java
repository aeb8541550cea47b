package clutchwright.engine.agreement;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Combination;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Haplotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Random;

/// A small species and two parents of it, drawn from a seed: anything that a model can say.
final class RandomWorld {

    /// Words that begin with each other, that sort around the space, and beyond the basic plane.
    private static final List<String> WORDS =
            List.of(
                    "A",
                    "A B",
                    "A B C",
                    "AB",
                    "A-",
                    "B",
                    "B C",
                    "C",
                    "D",
                    "Da",
                    "Normalish",
                    "Z",
                    "Ä",
                    "\uD83D\uDC0D",
                    "\uFF21",
                    "A\u0001",
                    "M",
                    "N",
                    "O",
                    "Omega");

    private static final List<Fraction> VIABILITIES =
            List.of(Fraction.NONE, Fraction.HALF, Fraction.of(3, 4), Fraction.of(2, 3));

    private static final List<Fraction> RECOMBINATIONS =
            List.of(Fraction.NONE, Fraction.of(1, 20), Fraction.of(1, 7), Fraction.HALF);

    final GeneticModel model;
    final ParentGenotype dam;
    final ParentGenotype sire;

    private final Random random;

    RandomWorld(Random random) {
        this.random = random;
        model = drawModel();
        dam = drawParent(Sex.FEMALE);
        sire = drawParent(Sex.MALE);
    }

    private GeneticModel drawModel() {
        var count = 1 + random.nextInt(4);
        var words = new ArrayList<>(WORDS);
        Collections.shuffle(words, random);
        var loci = new LinkedHashMap<LocusId, PhenotypeMap>();
        for (var i = 0; i < count; i++) {
            var map = drawLocus(new LocusId("l" + i), words, count);
            loci.put(map.locus().id(), map);
        }
        return new GeneticModel(
                pick(List.of(SexDetermination.values())),
                loci,
                drawLinkage(loci),
                drawCombinations(loci),
                drawCautions(loci));
    }

    private PhenotypeMap drawLocus(LocusId id, List<String> words, int loci) {
        Inheritance inheritance =
                oneIn(4)
                        ? new Inheritance.SexLinked(pick(RECOMBINATIONS))
                        : new Inheritance.Autosomal();
        var alleles = new ArrayList<Allele>();
        alleles.add(Allele.wildOf(id));
        var others = 1 + random.nextInt(loci > 2 ? 1 + random.nextInt(2) : 3);
        for (var i = 0; i < others; i++) {
            alleles.add(new Allele(id, "a" + i));
        }
        var locus = new Locus(id, inheritance, alleles);
        var names = List.of(words.removeLast(), words.removeLast(), words.removeLast());
        var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        var viabilities = new HashMap<Genotype.Diploid, Viability>();
        for (var pair : locus.allPairs()) {
            var plain = looks.isEmpty() || oneIn(3);
            looks.put(pair, plain ? Phenotype.normalOf(id) : new Phenotype(id, pick(names), true));
            // The wild type lives: a cross does not look at loci that nobody has.
            if (looks.size() > 1 && oneIn(5)) {
                viabilities.put(
                        pair, new Viability(pick(VIABILITIES), pick(List.of(Standing.values()))));
            }
        }
        // At least one form to see, so that there is something to ask for.
        looks.put(locus.allPairs().getLast(), new Phenotype(id, names.getFirst(), true));
        var maskings = new HashMap<Phenotype, Masking>();
        for (var look : looks.values()) {
            if (look.visible() && oneIn(4)) {
                maskings.put(look, drawMasking(loci));
            }
        }
        return new PhenotypeMap(locus, looks, viabilities, maskings);
    }

    private Masking drawMasking(int loci) {
        if (oneIn(3)) {
            return new Masking.Everything();
        }
        var hidden = new HashSet<LocusId>();
        for (var i = 0; i < loci; i++) {
            if (oneIn(2)) {
                hidden.add(new LocusId("l" + i));
            }
        }
        return new Masking.These(hidden);
    }

    private LinkageMap drawLinkage(LinkedHashMap<LocusId, PhenotypeMap> loci) {
        var autosomal = new ArrayList<LocusId>();
        loci.forEach(
                (id, map) -> {
                    if (!map.locus().isSexLinked()) {
                        autosomal.add(id);
                    }
                });
        if (autosomal.size() < 2 || oneIn(2)) {
            return LinkageMap.NONE;
        }
        Collections.shuffle(autosomal, random);
        var linked = autosomal.subList(0, 2 + random.nextInt(autosomal.size() - 1));
        var gaps = new ArrayList<Fraction>();
        for (var i = 1; i < linked.size(); i++) {
            gaps.add(pick(RECOMBINATIONS));
        }
        return new LinkageMap(List.of(new LinkageMap.Group(linked, gaps)));
    }

    private List<Combination> drawCombinations(LinkedHashMap<LocusId, PhenotypeMap> loci) {
        var combinations = new ArrayList<Combination>();
        while (loci.size() > 1 && oneIn(3)) {
            combinations.add(
                    new Combination(
                            drawParts(loci, 2),
                            new Viability(pick(VIABILITIES), pick(List.of(Standing.values())))));
        }
        return combinations;
    }

    private List<Caution> drawCautions(LinkedHashMap<LocusId, PhenotypeMap> loci) {
        var cautions = new ArrayList<Caution>();
        while (oneIn(2)) {
            cautions.add(
                    new Caution(
                            pick(List.of(Caution.Concern.values())),
                            drawParts(loci, 1 + random.nextInt(loci.size())),
                            pick(List.of(Standing.values())),
                            "words " + cautions.size(),
                            "drawn"));
        }
        return cautions;
    }

    private List<Caution.Part> drawParts(LinkedHashMap<LocusId, PhenotypeMap> loci, int count) {
        var maps = new ArrayList<>(loci.values());
        Collections.shuffle(maps, random);
        var parts = new ArrayList<Caution.Part>();
        for (var map : maps.subList(0, count)) {
            // The first is never the wild type, since what everyone has is no combination.
            var series = map.locus().alleles();
            var alleles = parts.isEmpty() ? series.subList(1, series.size()) : series;
            parts.add(new Caution.Part(pick(alleles), 1 + random.nextInt(2)));
        }
        return parts;
    }

    private ParentGenotype drawParent(Sex sex) {
        var parent = ParentGenotype.WILD;
        for (var map : model.loci().values()) {
            if (oneIn(6)) {
                continue;
            }
            var weights = new LinkedHashMap<Genotype, Fraction>();
            var count = oneIn(3) ? 1 + random.nextInt(3) : 1;
            for (var i = 0; i < count; i++) {
                weights.put(drawGenotype(map, sex), Fraction.of(1 + random.nextInt(3), 1));
            }
            parent = parent.with(Distribution.proportionalTo(weights).orElseThrow());
        }
        if (!model.linkage().groups().isEmpty() && oneIn(3)) {
            var group = model.linkage().groups().getFirst();
            parent =
                    parent.withTogether(
                            Haplotype.of(
                                    group.loci().stream()
                                            .map(id -> pick(model.theLocus(id).locus().alleles()))
                                            .toList()));
        }
        return parent;
    }

    private Genotype drawGenotype(PhenotypeMap map, Sex sex) {
        var one = pick(map.locus().alleles());
        var other = pick(map.locus().alleles());
        return map.locus().isSexLinked() && sex == model.sexes().heterogametic()
                ? new Genotype.Phased(one, other)
                : new Genotype.Diploid(one, other);
    }

    private boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
