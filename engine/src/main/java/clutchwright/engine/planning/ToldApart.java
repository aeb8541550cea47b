package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;

/// A species as someone sees it who has each animal tested at some loci: there every pair of
/// alleles is told from every other, as if each had a look of its own.
public final class ToldApart {

    private ToldApart() {}

    /// The same model, but for what is told apart at these loci. A look that only one pair has
    /// keeps its name; others are called by what is carried, `het Clown`, or by their copies,
    /// `2 Pinstripe`.
    ///
    /// @throws IllegalArgumentException if the model does not know a locus
    public static GeneticModel at(Collection<LocusId> tested, GeneticModel model) {
        var loci = new LinkedHashMap<>(model.loci());
        for (var locus : tested) {
            loci.put(locus, apart(model.theLocus(locus)));
        }
        return new GeneticModel(
                model.sexes(), loci, model.linkage(), model.combinations(), model.cautions());
    }

    private static PhenotypeMap apart(PhenotypeMap map) {
        var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        var maskings = new HashMap<Phenotype, Masking>();
        var names = new HashSet<String>();
        map.looks()
                .forEach(
                        (pair, look) -> {
                            var told = alone(map, look) ? look : named(map, pair, look);
                            if (!names.add(told.name())) {
                                told =
                                        new Phenotype(
                                                look.locus(),
                                                told.name() + " (" + pair + ")",
                                                true);
                            }
                            looks.put(pair, told);
                            if (!(map.maskingOf(look) instanceof Masking.Nothing)) {
                                maskings.put(told, map.maskingOf(look));
                            }
                        });
        return new PhenotypeMap(map.locus(), looks, map.viabilities(), Map.copyOf(maskings));
    }

    private static boolean alone(PhenotypeMap map, Phenotype look) {
        return map.showing(look).size() == 1;
    }

    private static Phenotype named(PhenotypeMap map, Genotype.Diploid pair, Phenotype look) {
        if (pair.first().isWild() && pair.second().isWild()) {
            return look;
        }
        var carried = pair.alleles().stream().filter(allele -> !allele.isWild()).toList();
        var name = String.join(" / ", carried.stream().map(Allele::name).distinct().toList());
        if (!look.visible()) {
            return new Phenotype(map.locus().id(), "het " + name, true);
        }
        return carried.size() == 2 && pair.first().equals(pair.second())
                ? new Phenotype(map.locus().id(), "2 " + name, true)
                : new Phenotype(map.locus().id(), name, true);
    }
}
