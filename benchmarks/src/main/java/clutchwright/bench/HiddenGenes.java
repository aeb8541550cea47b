package clutchwright.bench;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// One gene of each kind: a recessive, an incomplete dominant, a dominant whose double dies, a
/// series of look-alikes, and an incomplete dominant on the sex chromosomes.
final class HiddenGenes {

    private static final Fraction RECOMBINATION = Fraction.of(1, 20);

    private HiddenGenes() {}

    static GeneticModel model() {
        var maps = new LinkedHashMap<LocusId, PhenotypeMap>();
        var autosomal = new Inheritance.Autosomal();
        for (var map :
                List.of(
                        map("recessive", autosomal, 1, 0, Fraction.WHOLE),
                        map("incomplete", autosomal, 1, 2, Fraction.WHOLE),
                        map("lethal", autosomal, 1, 1, Fraction.NONE),
                        map("series", autosomal, 2, 0, Fraction.WHOLE),
                        map(
                                "sex-linked",
                                new Inheritance.SexLinked(RECOMBINATION),
                                1,
                                2,
                                Fraction.WHOLE))) {
            maps.put(map.locus().id(), map);
        }
        return new GeneticModel(SexDetermination.XY, maps, LinkageMap.NONE, List.of(), List.of());
    }

    /// @param looks 0 where only pairs without the wild type show, 1 where one copy shows, 2
    ///     where two show more
    private static PhenotypeMap map(
            String name, Inheritance inheritance, int mutants, int looks, Fraction doubleLives) {
        var id = new LocusId(name);
        var alleles = new ArrayList<Allele>();
        alleles.add(Allele.wildOf(id));
        for (var i = 0; i < mutants; i++) {
            alleles.add(new Allele(id, "allele " + (i + 1)));
        }
        var locus = new Locus(id, inheritance, alleles);
        var forms = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        var viabilities = new HashMap<Genotype.Diploid, Viability>();
        for (var pair : locus.allPairs()) {
            var copies = 2 - pair.copiesOf(locus.wildType());
            var shows = copies == 2 || (copies == 1 && looks > 0);
            var form = copies == 2 && looks == 2 ? "double" : "single";
            forms.put(pair, shows ? new Phenotype(id, form, true) : Phenotype.normalOf(id));
            if (copies == 2 && !doubleLives.isWhole()) {
                viabilities.put(pair, new Viability(doubleLives, Standing.SETTLED));
            }
        }
        return new PhenotypeMap(locus, forms, viabilities, Map.of());
    }
}
