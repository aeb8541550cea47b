package clutchwright.app.eggs;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/// The genes that a clutch may show, each with the forms that can be told apart.
public record GenesInPlay(List<Gene> genes) {

    public GenesInPlay {
        genes = List.copyOf(genes);
    }

    /// @param forms visible ones, of which a hatchling shows one at most
    public record Gene(LocusId locus, List<Phenotype> forms) {

        public Gene {
            forms = List.copyOf(forms);
        }
    }

    static GenesInPlay of(Expected expected) {
        return new GenesInPlay(
                expected.model().loci().keySet().stream()
                        .map(locus -> new Gene(locus, forms(expected, locus)))
                        .filter(gene -> !gene.forms().isEmpty())
                        .toList());
    }

    /// Of a dam alone, where the sire is not known: what one copy of hers can show.
    static GenesInPlay of(GeneticModel model, ParentGenotype dam) {
        return new GenesInPlay(
                dam.loci().keySet().stream()
                        .map(
                                locus -> {
                                    var forms = new LinkedHashSet<Phenotype>();
                                    var alleles = alleles(dam, locus);
                                    forms(model, locus, alleles, alleles, forms);
                                    return new Gene(locus, List.copyOf(forms));
                                })
                        .filter(gene -> !gene.forms().isEmpty())
                        .toList());
    }

    /// How a form sends it.
    public static String key(Phenotype form) {
        return form.locus() + "=" + form.name();
    }

    static Optional<Phenotype> find(GeneticModel model, String key) {
        var at = key.indexOf('=');
        if (at < 0 || !LocusId.isWellFormed(key.substring(0, at))) {
            return Optional.empty();
        }
        return model.findLocus(new LocusId(key.substring(0, at))).stream()
                .flatMap(map -> map.phenotypes().stream())
                .filter(form -> form.visible() && form.name().equals(key.substring(at + 1)))
                .findFirst();
    }

    private static List<Phenotype> forms(Expected expected, LocusId locus) {
        var forms = new LinkedHashSet<Phenotype>();
        for (var part : expected.parts()) {
            forms(
                    expected.model(),
                    locus,
                    alleles(part.dam(), locus),
                    alleles(part.sire(), locus),
                    forms);
        }
        return List.copyOf(forms);
    }

    private static void forms(
            GeneticModel model,
            LocusId locus,
            Set<Allele> dam,
            Set<Allele> sire,
            Set<Phenotype> forms) {
        var map = model.theLocus(locus);
        for (var hers : dam) {
            for (var his : sire) {
                var look = map.phenotypeOf(new Diploid(hers, his));
                if (look.visible()) {
                    forms.add(look);
                }
            }
        }
    }

    /// What a gamete may carry there.
    private static Set<Allele> alleles(ParentGenotype parent, LocusId locus) {
        var alleles = new LinkedHashSet<Allele>();
        var genotypes = parent.loci().get(locus);
        if (genotypes == null) {
            alleles.add(Allele.wildOf(locus));
        } else {
            genotypes.outcomes().forEach(genotype -> alleles.addAll(genotype.alleles()));
        }
        return alleles;
    }
}
