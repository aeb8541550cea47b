package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.Mode;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.LocusId;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/// The loci of one species that a search finds, in their groups.
///
/// @param shipped the species as it comes with the program
record Guide(Catalogue catalogue, Catalogue shipped, Search search) {

    static Guide of(Holding holding, String species, String typed) {
        return new Guide(holding.catalogue(species), holding.shipped(species), Search.of(typed));
    }

    String path(LocusId locus) {
        return "/catalogue/%s/%s".formatted(catalogue.species().id(), locus);
    }

    boolean isShipped(LocusId locus) {
        return shipped.species().findLocus(locus).isPresent();
    }

    /// Those that concern the locus alone or together with others.
    List<Caution> cautionsOf(LocusId locus) {
        return catalogue.model().cautions().stream()
                .filter(
                        caution ->
                                caution.parts().stream()
                                        .anyMatch(part -> part.allele().locus().equals(locus)))
                .toList();
    }

    /// Groups that something was found in; each locus is in the first that it fits.
    List<GuideGroup> groups(Map<LocusId, Integer> animals) {
        var found = found();
        return Stream.of(Kind.values())
                .map(kind -> group(kind, found, animals))
                .filter(group -> !group.entries().isEmpty())
                .toList();
    }

    private GuideGroup group(Kind kind, List<LocusEntry> found, Map<LocusId, Integer> animals) {
        return new GuideGroup(
                kind.title,
                kind.note,
                found.stream()
                        .filter(entry -> Kind.of(entry) == kind)
                        .map(entry -> GuideEntry.of(this, entry, animals))
                        .toList());
    }

    private List<LocusEntry> found() {
        return catalogue.species().loci().stream()
                .filter(entry -> search.meetsHead(entry) || search.findBelow(entry).isPresent())
                .toList();
    }

    private enum Kind {
        COMPLEX("Complexes", "Several alleles of one place: an animal has at most two of them."),
        VISIBLE("Incomplete dominant and dominant", "One copy shows."),
        RECESSIVE("Recessive", "One copy does not show: the animal is het."),
        SEX_LINKED("Sex-linked", "The sex of the young and the gene go together: see how in each.");

        private final String title;
        private final String note;

        Kind(String title, String note) {
            this.title = title;
            this.note = note;
        }

        static Kind of(LocusEntry entry) {
            if (entry.map().locus().isSexLinked()) {
                return SEX_LINKED;
            }
            if (entry.traits().size() > 1) {
                return COMPLEX;
            }
            return entry.traits().getFirst().mode() == Mode.RECESSIVE ? RECESSIVE : VISIBLE;
        }
    }
}
