package clutchwright.engine.proof;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.proof.TestMating.Case;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.SequencedSet;

/// What living hatchlings of an animal would be recorded to look like, by what it and its mate
/// are.
final class Hatchlings {

    /// A look that is as usual whether the parent carries the allele or not tells nothing; what
    /// is above one by less than this is rounding.
    private static final double TELLS = 1e-9;

    private final PhenotypeMap map;
    private final double misread;
    private final LocusChances chances;
    private final Sex sex;
    private final Map<List<Genotype>, SequencedMap<Phenotype, Double>> known = new HashMap<>();

    /// @param sex of the animal that is tested
    Hatchlings(PedigreeInference inference, LocusChances chances, Sex sex) {
        this.map = inference.records().model().theLocus(chances.locus());
        this.misread = inference.assumptions().misread();
        this.chances = chances;
        this.sex = sex;
    }

    /// @param joint chances of both genotypes, the tested animal's first
    Optional<TestMating> mating(
            AnimalId mate, Allele allele, SequencedMap<List<Genotype>, Double> joint) {
        var telling = telling(allele, joint);
        var cases = new ArrayList<Case>();
        joint.forEach(
                (pair, chance) -> {
                    var looks = looksOf(pair);
                    if (!looks.isEmpty()) {
                        var tells = telling.stream().mapToDouble(look -> at(looks, look)).sum();
                        cases.add(
                                new Case(
                                        pair.getFirst().carries(allele),
                                        chance,
                                        Math.min(1, tells)));
                    }
                });
        return cases.isEmpty()
                ? Optional.empty()
                : Optional.of(TestMating.of(mate, telling, cases));
    }

    /// The looks that one hatchling has more often if the parent carries the allele.
    private SequencedSet<Phenotype> telling(
            Allele allele, SequencedMap<List<Genotype>, Double> joint) {
        var ifCarries = new LinkedHashMap<Phenotype, Double>();
        var ifNot = new LinkedHashMap<Phenotype, Double>();
        var carries = new double[2];
        joint.forEach(
                (pair, chance) -> {
                    var has = pair.getFirst().carries(allele);
                    var looks = looksOf(pair);
                    looks.forEach(
                            (look, share) ->
                                    (has ? ifCarries : ifNot)
                                            .merge(look, chance * share, Double::sum));
                    carries[has ? 1 : 0] += looks.isEmpty() ? 0 : chance;
                });
        var telling = new LinkedHashSet<Phenotype>();
        for (var look : map.phenotypes()) {
            // Cross-multiplied: either may be nothing.
            var here = at(ifCarries, look) * carries[0];
            var there = at(ifNot, look) * carries[1];
            if (here > there * (1 + TELLS)) {
                telling.add(look);
            }
        }
        return telling;
    }

    /// Empty if no young of the two lives.
    private SequencedMap<Phenotype, Double> looksOf(List<Genotype> pair) {
        return known.computeIfAbsent(pair, this::worked);
    }

    private SequencedMap<Phenotype, Double> worked(List<Genotype> pair) {
        var young =
                sex == Sex.FEMALE
                        ? chances.youngOf(pair.getFirst(), pair.getLast())
                        : chances.youngOf(pair.getLast(), pair.getFirst());
        var looks = new LinkedHashMap<Phenotype, Double>();
        young.forEach(
                (genotype, chance) -> looks.merge(map.phenotypeOf(genotype), chance, Double::sum));
        return looks.isEmpty() ? looks : recorded(looks);
    }

    /// With the misread rate a keeper records one of the other forms, each alike.
    private SequencedMap<Phenotype, Double> recorded(SequencedMap<Phenotype, Double> looks) {
        var forms = map.phenotypes();
        if (forms.size() < 2) {
            return looks;
        }
        var recorded = new LinkedHashMap<Phenotype, Double>();
        for (var form : forms) {
            var right = at(looks, form);
            recorded.put(form, right * (1 - misread) + (1 - right) * misread / (forms.size() - 1));
        }
        return recorded;
    }

    private static double at(Map<Phenotype, Double> looks, Phenotype look) {
        return looks.getOrDefault(look, 0.0);
    }
}
