package clutchwright.engine.notation;

import clutchwright.engine.catalogue.NamedForm;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.List;
import java.util.Optional;

/// Which pairs of alleles are meant by the name of a form.
final class FormPairs {

    private static final String SUPER = "Super ";

    private FormPairs() {}

    /// The allele whose own look the form is: its name then means the allele.
    static Optional<Allele> ownAllele(NamedForm form, String name, PhenotypeMap map) {
        return form.pairs().stream()
                .flatMap(pair -> pair.alleles().stream())
                .filter(allele -> !allele.isWild())
                .filter(
                        allele ->
                                form.pairs().contains(Choice.single(allele, map))
                                        || allele.name().equals(name))
                .findFirst();
    }

    static List<Diploid> meant(NamedForm form, String name, PhenotypeMap map) {
        // Where others look like the super form, who writes 'super' still means two copies.
        var twice =
                form.pairs().stream()
                        .filter(Diploid::isHomozygous)
                        .filter(pair -> name.equals(SUPER + pair.first().name()))
                        .toList();
        return twice.isEmpty() ? withoutTwins(form.pairs(), map) : twice;
    }

    /// A second allele that nobody can tell from one of the same look by name (there are two that
    /// give Albino) is meant only where it is named.
    private static List<Diploid> withoutTwins(List<Diploid> pairs, PhenotypeMap map) {
        var named =
                pairs.stream()
                        .filter(pair -> pair.alleles().stream().noneMatch(a -> isTwin(a, map)))
                        .toList();
        return named.isEmpty() ? pairs : named;
    }

    private static boolean isTwin(Allele allele, PhenotypeMap map) {
        var look = map.phenotypeOf(Choice.alone(allele, map));
        return !allele.isWild()
                && map.locus()
                        .findAllele(look.name())
                        .filter(other -> !other.equals(allele))
                        .isPresent();
    }
}
