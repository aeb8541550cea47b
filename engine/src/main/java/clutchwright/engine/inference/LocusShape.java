package clutchwright.engine.inference;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/// The genotypes that an animal may have at one locus, numbered for each [Build], and the
/// gametes that each makes.
final class LocusShape {

    final PhenotypeMap map;
    final SexDetermination sexes;
    final List<Allele> alleles;
    private final Map<Build, List<State>> states = new EnumMap<>(Build.class);

    /// What an animal's sex makes of a locus. Where the sex is not known it is part of the
    /// state.
    enum Build {
        FEMALE,
        MALE,
        UNSEXED;

        static Build of(Sex sex) {
            return sex == Sex.FEMALE ? FEMALE : MALE;
        }
    }

    /// @param sex the sex that the state includes; both where the locus does not mind
    /// @param first number of an allele; on the shared chromosome where it matters
    /// @param second the other; on the limited chromosome where it matters
    record State(List<Sex> sex, Genotype genotype, int first, int second, double viability) {}

    /// @param alleles of the locus that may be there at all, the wild type first
    LocusShape(GeneticModel model, PhenotypeMap map, List<Allele> alleles) {
        this.map = map;
        this.sexes = model.sexes();
        this.alleles = List.copyOf(alleles);
        for (var build : Build.values()) {
            states.put(build, statesOf(build));
        }
    }

    List<State> states(Build build) {
        return states.getOrDefault(build, List.of());
    }

    private List<State> statesOf(Build build) {
        if (!map.locus().isSexLinked()) {
            return unordered(List.of(Sex.values()));
        }
        return switch (build) {
            case FEMALE -> ofSex(Sex.FEMALE);
            case MALE -> ofSex(Sex.MALE);
            case UNSEXED -> {
                var both = new ArrayList<>(ofSex(Sex.FEMALE));
                both.addAll(ofSex(Sex.MALE));
                yield List.copyOf(both);
            }
        };
    }

    private List<State> ofSex(Sex sex) {
        return sex == sexes.heterogametic() ? ordered(sex) : unordered(List.of(sex));
    }

    private List<State> unordered(List<Sex> sex) {
        var all = new ArrayList<State>();
        for (var i = 0; i < alleles.size(); i++) {
            for (var j = i; j < alleles.size(); j++) {
                var genotype = new Genotype.Diploid(alleles.get(i), alleles.get(j));
                all.add(new State(sex, genotype, i, j, viability(genotype)));
            }
        }
        return List.copyOf(all);
    }

    private List<State> ordered(Sex sex) {
        var all = new ArrayList<State>();
        for (var i = 0; i < alleles.size(); i++) {
            for (var j = 0; j < alleles.size(); j++) {
                var genotype = new Genotype.Phased(alleles.get(i), alleles.get(j));
                all.add(new State(List.of(sex), genotype, i, j, viability(genotype)));
            }
        }
        return List.copyOf(all);
    }

    private double viability(Genotype genotype) {
        return map.viabilityOf(genotype).counted().value();
    }

    /// Chances of the alleles in the gametes that a parent gives to young of that sex.
    double[] gametes(State parent, Sex parentSex, Sex young) {
        var chances = new double[alleles.size()];
        if (parent.genotype() instanceof Genotype.Phased
                && map.locus().inheritance() instanceof Inheritance.SexLinked(var r)) {
            var changes = r.value();
            chances[young == parentSex ? parent.second() : parent.first()] += 1 - changes;
            chances[young == parentSex ? parent.first() : parent.second()] += changes;
        } else {
            chances[parent.first()] += 0.5;
            chances[parent.second()] += 0.5;
        }
        return chances;
    }
}
