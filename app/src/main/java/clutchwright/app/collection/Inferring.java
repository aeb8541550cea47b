package clutchwright.app.collection;

import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.records.SpeciesRecords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/// Which loci of which species are to be worked out.
///
/// @param loci by the short name of the species
record Inferring(PackageInHand read, SequencedMap<String, List<LocusId>> loci) {

    /// What came of it, by the short name of the species.
    record Done(PackageInHand read, SequencedMap<String, PedigreeInference> species) {}

    /// All of which anything is said or seen.
    static Inferring of(PackageInHand read) {
        var loci = new LinkedHashMap<String, List<LocusId>>();
        read.species()
                .forEach(
                        (name, some) ->
                                loci.put(
                                        name,
                                        List.copyOf(PedigreeInference.touched(some.records()))));
        return new Inferring(read, loci);
    }

    /// One locus, in every species that has it; empty if none has, which is said.
    static Optional<Inferring> at(PackageInHand read, String id, Consumer<String> say) {
        var loci = new LinkedHashMap<String, List<LocusId>>();
        read.species()
                .forEach(
                        (name, some) ->
                                loci.put(
                                        name,
                                        some.catalogue().model().loci().keySet().stream()
                                                .filter(one -> one.value().equalsIgnoreCase(id))
                                                .toList()));
        if (loci.values().stream().allMatch(List::isEmpty) && !loci.isEmpty()) {
            var near =
                    read.species().values().stream()
                            .map(SpeciesRecords::catalogue)
                            .flatMap(catalogue -> named(catalogue, id))
                            .distinct()
                            .toList();
            say.accept(
                    "--locus: there is no locus “%s”.%s"
                            .formatted(
                                    id,
                                    near.isEmpty()
                                            ? " Its short name stands on the page of its gene."
                                            : " Perhaps %s.".formatted(String.join(" or ", near))));
            return Optional.empty();
        }
        return Optional.of(new Inferring(read, loci));
    }

    /// The loci of the genes that are called so, or nearly so.
    private static Stream<String> named(Catalogue catalogue, String name) {
        return Stream.concat(Stream.of(name), catalogue.nearest(name, 3).stream())
                .flatMap(one -> catalogue.find(one).stream())
                .flatMap(
                        meaning ->
                                meaning instanceof Meaning.OfAllele(_, var allele)
                                        ? Stream.of(allele.locus().value())
                                        : Stream.of());
    }

    /// Works it out; empty if the background leaves the wild type no room, which is said.
    Optional<Done> under(double background, double misread, Consumer<String> say) {
        var assumptions = new Assumptions(background, misread);
        var done = new LinkedHashMap<String, PedigreeInference>();
        for (var entry : loci.entrySet()) {
            var some = Optional.ofNullable(read.species().get(entry.getKey())).orElseThrow();
            for (var id : entry.getValue()) {
                var locus = some.catalogue().model().theLocus(id).locus();
                var genes = locus.alleles().size() - 1;
                if (genes * background > 1) {
                    say.accept(
                            "--background: %s for each of the %d genes of %s is more than 1 together; write %.4f at most."
                                    .formatted(background, genes, id, 1.0 / genes));
                    return Optional.empty();
                }
            }
            done.put(
                    entry.getKey(),
                    PedigreeInference.of(some.records(), assumptions, entry.getValue()));
        }
        return Optional.of(new Done(read, done));
    }
}
