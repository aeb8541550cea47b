package clutchwright.app.catalogue;

import clutchwright.app.wording.CautionWords;
import clutchwright.app.wording.GeneWords;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/// What every pair of alleles of a locus looks like.
///
/// @param names of the alleles, wild type first, as they head rows and columns
/// @param rows one an allele, a cell for each allele in each
public record PairTable(List<String> names, List<List<Cell>> rows) {

    static final String WILD = "Wild type";

    public PairTable {
        names = List.copyOf(names);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /// @param look the name of the form
    /// @param shows whether it can be told from an animal without the gene
    /// @param marks what else must be known of the pair, in words
    public record Cell(String look, boolean shows, List<String> marks) {

        public Cell {
            marks = List.copyOf(marks);
        }
    }

    /// @param titles what a locus is called
    static PairTable of(LocusEntry entry, Function<LocusId, String> titles) {
        var alleles = entry.map().locus().alleles();
        return new PairTable(
                alleles.stream().map(PairTable::name).toList(),
                alleles.stream().map(row -> row(entry, alleles, row, titles)).toList());
    }

    private static List<Cell> row(
            LocusEntry entry, List<Allele> alleles, Allele row, Function<LocusId, String> titles) {
        return alleles.stream()
                .map(column -> cell(entry, new Genotype.Diploid(row, column), titles))
                .toList();
    }

    private static Cell cell(
            LocusEntry entry, Genotype.Diploid pair, Function<LocusId, String> titles) {
        var look = entry.map().phenotypeOf(pair);
        return new Cell(look.name(), look.visible(), marks(entry, pair, titles));
    }

    /// What the pair does beside its look: dies, hides other genes, asks for care.
    static List<String> marks(
            LocusEntry entry, Genotype.Diploid pair, Function<LocusId, String> titles) {
        var viability = entry.map().viabilityOf(pair);
        var living = GeneWords.living(viability);
        var masking = entry.map().maskingOf(entry.map().phenotypeOf(pair));
        var care =
                entry.cautions().stream()
                        .filter(
                                caution ->
                                        caution.parts().stream()
                                                .allMatch(part -> part.holdsFor(pair)))
                        .map(
                                caution ->
                                        "care: "
                                                + CautionWords.concern(caution.concern())
                                                        .toLowerCase(Locale.ROOT))
                        .distinct();
        return Stream.of(
                        Stream.of(
                                living.isEmpty()
                                        ? ""
                                        : "%s (%s)"
                                                .formatted(living, GeneWords.standing(viability))),
                        Stream.of(GeneWords.hiding(masking, titles)),
                        care)
                .flatMap(stream -> stream)
                .filter(mark -> !mark.isEmpty())
                .toList();
    }

    static String name(Allele allele) {
        return allele.isWild() ? WILD : allele.name();
    }

    /// A pair as a keeper says it: `one Clown`, `two Clown`, `Lesser and Mojave`.
    static String spoken(Genotype.Diploid pair) {
        var alleles = pair.alleles();
        var first = alleles.getFirst();
        var last = alleles.getLast();
        if (first.equals(last)) {
            return "two " + name(first);
        }
        if (first.isWild() || last.isWild()) {
            return "one " + (first.isWild() ? last : first).name();
        }
        return first.name() + " and " + last.name();
    }
}
