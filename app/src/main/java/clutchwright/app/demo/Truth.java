package clutchwright.app.demo;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.random.RandomGenerator;

/// What an invented animal really has, which its keeper may not know.
///
/// @param loci one genotype a locus, in the shape of its sex; loci not named are wild type
record Truth(Sex sex, SequencedMap<LocusId, Genotype> loci) {

    /// One draw from what a line states.
    static Truth drawn(Sex sex, ParentGenotype stated, RandomGenerator random) {
        var loci = new LinkedHashMap<LocusId, Genotype>();
        stated.loci().forEach((locus, chances) -> loci.put(locus, draw(chances, random)));
        return new Truth(sex, loci);
    }

    /// The same animal with more that is certain.
    Truth and(ParentGenotype certain, RandomGenerator random) {
        var more = new LinkedHashMap<>(loci);
        certain.loci().forEach((locus, chances) -> more.put(locus, draw(chances, random)));
        return new Truth(sex, more);
    }

    /// One embryo of two parents; empty if its genotype does not live.
    static Optional<Truth> embryo(
            GeneticModel model, Truth dam, Truth sire, RandomGenerator random) {
        var sex = random.nextBoolean() ? Sex.FEMALE : Sex.MALE;
        var touched = new LinkedHashSet<>(dam.loci().keySet());
        touched.addAll(sire.loci().keySet());
        var loci = new LinkedHashMap<LocusId, Genotype>();
        for (var entry : model.loci().entrySet()) {
            if (!touched.contains(entry.getKey())) {
                continue;
            }
            var map = entry.getValue();
            var fromDam = dam.gamete(model, entry.getKey(), sex, random);
            var fromSire = sire.gamete(model, entry.getKey(), sex, random);
            var genotype = shaped(map.locus().isSexLinked(), model, sex, fromDam, fromSire);
            var lives = map.viabilityOf(genotype).counted().value();
            if (random.nextDouble() >= lives) {
                return Optional.empty();
            }
            if (!genotype.alleles().stream().allMatch(Allele::isWild)) {
                loci.put(entry.getKey(), genotype);
            }
        }
        return Optional.of(new Truth(sex, loci));
    }

    private static Genotype shaped(
            boolean linked, GeneticModel model, Sex sex, Allele fromDam, Allele fromSire) {
        if (!linked || sex != model.sexes().heterogametic()) {
            return new Genotype.Diploid(fromDam, fromSire);
        }
        return model.sexes() == SexDetermination.XY
                ? new Genotype.Phased(fromDam, fromSire)
                : new Genotype.Phased(fromSire, fromDam);
    }

    private Allele gamete(GeneticModel model, LocusId locus, Sex young, RandomGenerator random) {
        var genotype = loci.get(locus);
        if (genotype == null) {
            return Allele.wildOf(locus);
        }
        if (genotype instanceof Genotype.Phased(var shared, var limited)
                && model.theLocus(locus).locus().inheritance()
                        instanceof Inheritance.SexLinked(var recombination)) {
            var crosses = random.nextDouble() < recombination.value();
            return (young == sex) != crosses ? limited : shared;
        }
        return genotype.alleles().get(random.nextInt(2));
    }

    /// What can be seen, in naming order; what a visible form hides is left out.
    List<Phenotype> shows(GeneticModel model) {
        var shows = new ArrayList<Phenotype>();
        for (var entry : model.loci().entrySet()) {
            var genotype = loci.get(entry.getKey());
            var hidden =
                    shows.stream()
                            .anyMatch(
                                    look ->
                                            model.theLocus(look.locus())
                                                    .maskingOf(look)
                                                    .hides(entry.getKey()));
            if (genotype != null && !hidden) {
                var look = entry.getValue().phenotypeOf(genotype);
                if (look.visible()) {
                    shows.add(look);
                }
            }
        }
        return shows;
    }

    int copiesOf(Allele allele) {
        var genotype = loci.get(allele.locus());
        return genotype == null ? 0 : genotype.copiesOf(allele);
    }

    private static Genotype draw(Distribution<Genotype> chances, RandomGenerator random) {
        var left = random.nextDouble();
        for (var entry : chances.chances().entrySet()) {
            Fraction chance = entry.getValue();
            left -= chance.value();
            if (left < 0) {
                return entry.getKey();
            }
        }
        return chances.outcomes().getLast();
    }
}
