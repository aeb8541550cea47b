package clutchwright.engine.catalogue;

import static java.util.stream.Collectors.toMap;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/// What every pair of a locus looks like: as the file states it, else as the modes of its alleles
/// imply.
final class Looks {

    static final String SUPER = "Super ";

    private final LocusId locus;
    private final Map<Allele, Mode> modes;
    private final Map<Genotype.Diploid, Phenotype> stated;

    private Looks(LocusId locus, Map<Allele, Mode> modes, Map<Genotype.Diploid, Phenotype> stated) {
        this.locus = locus;
        this.modes = modes;
        this.stated = stated;
    }

    static SequencedMap<Genotype.Diploid, Phenotype> of(
            List<Allele> alleles, List<Trait> traits, Map<Genotype.Diploid, Phenotype> stated) {
        var modes = traits.stream().collect(toMap(Trait::allele, Trait::mode));
        var looks = new Looks(alleles.getFirst().locus(), modes, stated);
        var all = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        for (int i = 0; i < alleles.size(); i++) {
            for (int j = i; j < alleles.size(); j++) {
                var pair = new Genotype.Diploid(alleles.get(i), alleles.get(j));
                all.put(pair, looks.of(alleles.get(i), alleles.get(j)));
            }
        }
        return all;
    }

    /// Forms that no line of the file states: one for each visible look that a pair has by
    /// implication alone.
    static List<NamedForm> impliedForms(
            Map<Genotype.Diploid, Phenotype> stated,
            SequencedMap<Genotype.Diploid, Phenotype> looks) {
        var pairs = new LinkedHashMap<Phenotype, List<Genotype.Diploid>>();
        looks.forEach(
                (pair, look) -> {
                    if (look.visible() && !stated.containsKey(pair)) {
                        pairs.computeIfAbsent(look, key -> new ArrayList<>()).add(pair);
                    }
                });
        return pairs.entrySet().stream()
                .map(form -> new NamedForm(form.getKey(), List.of(), form.getValue(), ""))
                .toList();
    }

    private Phenotype of(Allele first, Allele second) {
        var look = stated.get(new Genotype.Diploid(first, second));
        return look != null ? look : implied(first, second);
    }

    /// @param first not after the second in the series
    private Phenotype implied(Allele first, Allele second) {
        if (second.isWild()) {
            return Phenotype.normalOf(locus);
        }
        if (first.isWild()) {
            return isRecessive(second) ? Phenotype.normalOf(locus) : named(second.name());
        }
        if (first.equals(second)) {
            return named(
                    modes.get(first) == Mode.INCOMPLETE_DOMINANT
                            ? SUPER + first.name()
                            : first.name());
        }
        if (isRecessive(first) != isRecessive(second)) {
            return of(Allele.wildOf(locus), isRecessive(first) ? second : first);
        }
        return named(first.name() + " " + second.name());
    }

    private boolean isRecessive(Allele allele) {
        return modes.get(allele) == Mode.RECESSIVE;
    }

    private Phenotype named(String name) {
        return new Phenotype(locus, name, true);
    }
}
