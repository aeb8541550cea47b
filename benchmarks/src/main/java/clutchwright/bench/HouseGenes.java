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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// The genes of a made-up house: of every ten loci six are recessive, two incomplete dominant,
/// one dominant and one a recessive series of three.
final class HouseGenes {

    private HouseGenes() {}

    static GeneticModel of(int loci) {
        var maps = new LinkedHashMap<LocusId, PhenotypeMap>();
        for (var i = 0; i < loci; i++) {
            var id = new LocusId("locus-" + i);
            maps.put(
                    id,
                    switch (i % 10) {
                        case 6, 7 -> map(id, 1, true, true);
                        case 8 -> map(id, 1, true, false);
                        case 9 -> map(id, 2, false, false);
                        default -> map(id, 1, false, false);
                    });
        }
        return new GeneticModel(SexDetermination.XY, maps, LinkageMap.NONE, List.of(), List.of());
    }

    private static PhenotypeMap map(
            LocusId id, int others, boolean oneCopyShows, boolean twoShowMore) {
        var alleles = new ArrayList<Allele>();
        alleles.add(Allele.wildOf(id));
        for (var i = 0; i < others; i++) {
            alleles.add(new Allele(id, "Gene" + (char) ('A' + i)));
        }
        var locus = new Locus(id, new Inheritance.Autosomal(), alleles);
        var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
        for (var pair : locus.allPairs()) {
            looks.put(pair, look(id, pair, oneCopyShows, twoShowMore));
        }
        return new PhenotypeMap(locus, looks, Map.of(), Map.of());
    }

    private static Phenotype look(
            LocusId id, Genotype.Diploid pair, boolean oneCopyShows, boolean twoShowMore) {
        var wild = Allele.wildOf(id);
        var copies = 2 - pair.copiesOf(wild);
        if (copies == 0 || (copies == 1 && !oneCopyShows)) {
            return Phenotype.normalOf(id);
        }
        var name = pair.toString().replace("/", " ").replace("+", "").strip();
        if (pair.isHomozygous() || copies == 1) {
            name =
                    pair.alleles().stream()
                            .filter(a -> !a.isWild())
                            .findFirst()
                            .orElseThrow()
                            .name();
        }
        return new Phenotype(id, copies == 2 && twoShowMore ? "Super " + name : name, true);
    }
}
