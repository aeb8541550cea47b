package clutchwright.records.journal;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.LocusId;
import clutchwright.records.overlay.Overlay;
import clutchwright.records.overlay.OwnGenes;
import clutchwright.records.store.Transaction;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/// Genes that statements about animals speak of, and the catalogue of their species does not.
final class LostGenes {

    private LostGenes() {}

    static Set<Gene> of(Transaction tx) {
        var lost = new HashSet<Gene>();
        for (var species : Catalogue.shippedSpecies()) {
            var spokenOf = spokenOf(tx, species);
            if (!spokenOf.isEmpty()) {
                var entries = new Overlay(tx).of(species);
                var catalogue = OwnGenes.over(Catalogue.shipped(species), entries).catalogue();
                spokenOf.stream().filter(gene -> !gene.isIn(catalogue)).forEach(lost::add);
            }
        }
        return lost;
    }

    private static List<Gene> spokenOf(Transaction tx, String species) {
        return tx.list(
                row -> new Gene(species, new LocusId(row.text("locus")), row.text("allele")),
                "select distinct locus, allele from animal_gene where species = ?",
                species);
    }

    record Gene(String species, LocusId locus, String allele) {

        boolean isIn(Catalogue catalogue) {
            return catalogue.species().findLocus(locus).stream()
                    .flatMap(entry -> entry.traits().stream())
                    .anyMatch(trait -> trait.name().equals(allele));
        }
    }
}
