package clutchwright.app.collection;

import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Meaning;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.SpeciesRecords;
import java.util.ArrayList;
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
    ///
    /// @param asked what is to be explained
    record Done(
            PackageInHand read, SequencedMap<String, PedigreeInference> species, List<Why> asked) {}

    /// Of whom it is asked why.
    ///
    /// @param gene only this one; else every gene that it may carry
    record Why(AnimalId animal, Optional<String> gene) {}

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

    /// Whom `TAG` or `TAG:GENE` means; empty if there is no such animal, which is said.
    Optional<List<Why>> asked(List<String> written, Consumer<String> say) {
        var asked = new ArrayList<Why>();
        for (var one : written) {
            var whole = read.collection().find(one);
            var colon = one.lastIndexOf(':');
            var animal =
                    whole.isPresent() || colon < 0
                            ? whole
                            : read.collection().find(one.substring(0, colon));
            if (animal.isEmpty()) {
                var near = read.collection().tagsNear(colon < 0 ? one : one.substring(0, colon));
                say.accept(
                        "--why: there is no animal “%s”.%s"
                                .formatted(
                                        one,
                                        near.isEmpty()
                                                ? " Write its tag, or TAG:GENE."
                                                : " Perhaps " + String.join(" or ", near) + "."));
                return Optional.empty();
            }
            var gene =
                    whole.isPresent()
                            ? Optional.<String>empty()
                            : Optional.of(one.substring(colon + 1));
            asked.add(new Why(animal.get().id(), gene));
        }
        return Optional.of(asked);
    }

    /// Works it out; empty if the background leaves the wild type no room, which is said.
    Optional<Done> under(double background, double misread, List<Why> asked, Consumer<String> say) {
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
        return Optional.of(new Done(read, done, asked));
    }
}
