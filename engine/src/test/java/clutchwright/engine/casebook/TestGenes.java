package clutchwright.engine.casebook;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Combination;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Group;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/// A small language for writing down species and animals in tests.
///
/// A pair is written `Clown/+`, in the heterogametic sex at a sex-linked locus `+|Banana`.
public final class TestGenes {

    private SexDetermination sexes = SexDetermination.XY;
    private final Map<LocusId, PhenotypeMap> loci = new LinkedHashMap<>();
    private final List<LinkageMap.Group> linked = new ArrayList<>();
    private final List<Combination> combinations = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();

    /// Looks as pairs and names: `"Pastel/+", "Pastel", "Pastel/Pastel", "Super Pastel"`. Pairs
    /// that are not named look normal.
    public TestGenes locus(String id, List<String> alleles, String... looks) {
        return locus(id, new Inheritance.Autosomal(), alleles, looks);
    }

    public TestGenes recessive(String id, String allele) {
        return locus(id, List.of(allele), allele + "/" + allele, allele);
    }

    public TestGenes incomplete(String id, String allele) {
        return locus(
                id,
                List.of(allele),
                allele + "/+",
                allele,
                allele + "/" + allele,
                "Super " + allele);
    }

    public TestGenes dominant(String id, String allele) {
        return locus(id, List.of(allele), allele + "/+", allele, allele + "/" + allele, allele);
    }

    public TestGenes sexLinked(String id, Fraction recombination, String allele, String... looks) {
        return locus(id, new Inheritance.SexLinked(recombination), List.of(allele), looks);
    }

    public TestGenes locus(
            String id, Inheritance inheritance, List<String> alleles, String... looks) {
        var locus = new LocusId(id);
        var series = new ArrayList<Allele>();
        series.add(Allele.wildOf(locus));
        alleles.forEach(allele -> series.add(new Allele(locus, allele)));
        var described = new Locus(locus, inheritance, series);
        var map = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        described.allPairs().forEach(pair -> map.put(pair, Phenotype.normalOf(locus)));
        for (var i = 0; i < looks.length; i += 2) {
            map.put(pair(locus, looks[i]), new Phenotype(locus, looks[i + 1], true));
        }
        loci.put(locus, new PhenotypeMap(described, map, Map.of(), Map.of()));
        return this;
    }

    public TestGenes viability(String id, String pair, Fraction chance) {
        return viability(id, pair, new Viability(chance, Standing.SETTLED));
    }

    public TestGenes viability(String id, String pair, Viability viability) {
        var map = Objects.requireNonNull(loci.get(new LocusId(id)));
        var viabilities = new HashMap<>(map.viabilities());
        viabilities.put(pair(map.locus().id(), pair), viability);
        loci.put(
                map.locus().id(),
                new PhenotypeMap(map.locus(), map.looks(), viabilities, map.maskings()));
        return this;
    }

    public TestGenes masking(String id, String form, Masking masking) {
        var map = Objects.requireNonNull(loci.get(new LocusId(id)));
        var maskings = new HashMap<>(map.maskings());
        maskings.put(new Phenotype(map.locus().id(), form, true), masking);
        loci.put(
                map.locus().id(),
                new PhenotypeMap(map.locus(), map.looks(), map.viabilities(), maskings));
        return this;
    }

    public TestGenes linked(List<String> ids, Fraction... gaps) {
        linked.add(new LinkageMap.Group(ids.stream().map(LocusId::new).toList(), List.of(gaps)));
        return this;
    }

    public TestGenes combination(Fraction viability, Caution.Part... parts) {
        combinations.add(
                new Combination(List.of(parts), new Viability(viability, Standing.SETTLED)));
        return this;
    }

    public TestGenes caution(Caution caution) {
        cautions.add(caution);
        return this;
    }

    public TestGenes sexes(SexDetermination determination) {
        sexes = determination;
        return this;
    }

    public GeneticModel model() {
        return new GeneticModel(
                sexes, new LinkedHashMap<>(loci), new LinkageMap(linked), combinations, cautions);
    }

    public static Caution.Part part(String id, String allele, int copies) {
        return new Caution.Part(new Allele(new LocusId(id), allele), copies);
    }

    public static Phenotype form(String id, String name) {
        return new Phenotype(new LocusId(id), name, true);
    }

    /// An animal with these genotypes for certain: `"clown", "Clown/+", "pastel", "Pastel/+"`.
    public static ParentGenotype animal(String... genotypes) {
        var animal = ParentGenotype.WILD;
        for (var i = 0; i < genotypes.length; i += 2) {
            animal = animal.with(Distribution.certain(genotype(genotypes[i], genotypes[i + 1])));
        }
        return animal;
    }

    /// The same animal, at one locus with a chance of being so, wild type otherwise.
    public static ParentGenotype perhaps(
            ParentGenotype animal, String id, String genotype, Fraction chance) {
        return animal.with(
                chances(
                        id,
                        genotype,
                        chance,
                        genotype.contains("|") ? "+|+" : "+/+",
                        chance.complement()));
    }

    public static Distribution<Genotype> chances(
            String id, String first, Fraction chance, String second, Fraction other) {
        var chances = new LinkedHashMap<Genotype, Fraction>();
        chances.put(genotype(id, first), chance);
        chances.put(genotype(id, second), other);
        return new Distribution<>(chances);
    }

    /// Every group as `3/4 Normal, 1/4 Clown`, in the order of the engine.
    public static String groups(Cross cross) {
        return String.join(
                ", ",
                cross.groups(1000).stream()
                        .map(group -> group.chance() + " " + group.name())
                        .toList());
    }

    /// None if no group has the name.
    public static Fraction chanceOf(Cross cross, String name) {
        return cross.groups(1000).stream()
                .filter(group -> group.name().equals(name))
                .map(Group::chance)
                .reduce(Fraction.NONE, Fraction::plus);
    }

    public static Outcome outcome(Cross cross, String name) {
        return cross.likeliest(1000).stream()
                .filter(outcome -> outcome.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /// What the group may carry, as `2/3 Clown`.
    public static String carries(Cross cross, String name) {
        return String.join(
                ", ",
                outcome(cross, name).carries().stream()
                        .map(held -> held.chance() + " " + held.allele())
                        .toList());
    }

    public static Genotype genotype(String id, String text) {
        var locus = new LocusId(id);
        if (text.contains("|")) {
            var alleles = text.split("\\|", -1);
            return new Genotype.Phased(
                    new Allele(locus, alleles[0]), new Allele(locus, alleles[1]));
        }
        return pair(locus, text);
    }

    private static Genotype.Diploid pair(LocusId locus, String text) {
        var alleles = text.split("/", -1);
        return new Genotype.Diploid(new Allele(locus, alleles[0]), new Allele(locus, alleles[1]));
    }
}
