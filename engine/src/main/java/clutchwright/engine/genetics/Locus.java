package clutchwright.engine.genetics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/// A place on a chromosome and the allelic series known there.
///
/// Genes that prove to be alleles of one another are one locus, whatever the trade calls them.
///
/// @param alleles the series, wild type first; at least two, all of this locus, none twice
public record Locus(LocusId id, Inheritance inheritance, List<Allele> alleles) {

    public Locus {
        alleles = List.copyOf(alleles);
        if (alleles.size() < 2) {
            throw new IllegalArgumentException("locus " + id + " has fewer than two alleles");
        }
        if (!alleles.getFirst().isWild()) {
            throw new IllegalArgumentException(
                    "locus " + id + " does not begin with the wild type");
        }
        for (var allele : alleles) {
            if (!allele.locus().equals(id)) {
                throw new IllegalArgumentException(
                        "allele " + allele + " is of locus " + allele.locus() + ", not " + id);
            }
        }
        if (Set.copyOf(alleles).size() != alleles.size()) {
            throw new IllegalArgumentException(
                    "locus " + id + " names an allele twice: " + alleles);
        }
    }

    public Allele wildType() {
        return alleles.getFirst();
    }

    public Optional<Allele> findAllele(String name) {
        return alleles.stream().filter(allele -> allele.name().equals(name)).findFirst();
    }

    public boolean isSexLinked() {
        return inheritance instanceof Inheritance.SexLinked;
    }

    /// Every unordered pair of alleles, each once: `n (n + 1) / 2` of them.
    public List<Genotype.Diploid> allPairs() {
        return IntStream.range(0, alleles.size())
                .boxed()
                .flatMap(
                        i ->
                                IntStream.range(i, alleles.size())
                                        .mapToObj(
                                                j ->
                                                        new Genotype.Diploid(
                                                                alleles.get(i), alleles.get(j))))
                .toList();
    }
}
