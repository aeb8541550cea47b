package clutchwright.engine.agreement;

import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.inference.OwnRecords;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// How likely an animal's own sighting and tests are if it has that pair of genes.
final class OwnEvidence {

    private final GeneticModel model;
    private final PhenotypeMap map;
    private final double misread;
    private final Map<OwnRecords, Map<Genotype.Diploid, Double>> known = new HashMap<>();

    OwnEvidence(GeneticModel model, PhenotypeMap map, double misread) {
        this.model = model;
        this.map = map;
        this.misread = misread;
    }

    Set<Phenotype> normal() {
        return Set.of(Phenotype.normalOf(map.locus().id()));
    }

    double of(OwnRecords own, Genotype.Diploid pair) {
        return known.computeIfAbsent(own, _ -> new HashMap<>())
                .computeIfAbsent(pair, one -> worked(own, one));
    }

    private double worked(OwnRecords own, Genotype.Diploid pair) {
        var likelihood = look(own).map(seen -> sighting(seen, pair)).orElse(1.0);
        for (var test : own.tests()) {
            if (test.allele().locus().equals(map.locus().id())) {
                var positive =
                        pair.copiesOf(test.allele()) > 0
                                ? test.sensitivity()
                                : 1 - test.specificity();
                likelihood *= test.found() ? positive : 1 - positive;
            }
        }
        return likelihood;
    }

    /// What was seen at the locus: empty if nobody looked, if it could not be read, or if a form
    /// that was seen elsewhere hides it.
    Optional<Set<Phenotype>> look(OwnRecords own) {
        if (own.seen().isEmpty()) {
            return Optional.empty();
        }
        var seen = own.seen().get();
        var here = map.locus().id();
        if (seen.unread().contains(here)) {
            return Optional.empty();
        }
        if (seen.looks().containsKey(here)) {
            return Optional.of(seen.looks().get(here));
        }
        var hidden =
                seen.looks().entrySet().stream()
                        .anyMatch(
                                entry ->
                                        entry.getValue().stream()
                                                .anyMatch(
                                                        look ->
                                                                model.theLocus(entry.getKey())
                                                                        .maskingOf(look)
                                                                        .hides(here)));
        return hidden ? Optional.empty() : Optional.of(normal());
    }

    /// The record names the true form, or by a misread any other, each alike; where it leaves
    /// several open, any of them.
    private double sighting(Set<Phenotype> recorded, Genotype.Diploid pair) {
        var forms = new HashSet<>(map.looks().values());
        if (forms.size() == 1) {
            return 1;
        }
        var shows = map.phenotypeOf(pair);
        var chance = 0.0;
        for (var form : recorded) {
            chance += form.equals(shows) ? 1 - misread : misread / (forms.size() - 1);
        }
        return chance;
    }
}
