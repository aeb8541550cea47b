package clutchwright.engine.catalogue;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.toMap;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// One species with the keeper's own entries applied, and every name that leads into it.
///
/// Names are compared without regard to case, spaces, hyphens, underscores and apostrophes.
public final class Catalogue {

    private static final List<String> SHIPPED =
            List.of("python-regius", "pantherophis-guttatus", "boa-imperator");

    private final Species species;
    private final NameIndex index;
    private final int longestNameWords;
    private final Map<Allele, Trait> traits;

    private Catalogue(Species species) {
        this.species = species;
        this.index = NameIndex.of(species.loci(), species.combinations(), species.remarks());
        this.longestNameWords = index.longestNameWords();
        this.traits =
                species.loci().stream()
                        .flatMap(entry -> entry.traits().stream())
                        .collect(toMap(Trait::allele, trait -> trait));
    }

    public static Catalogue of(Species species) {
        return new Catalogue(species);
    }

    /// The species that come with the program, in the order to offer them.
    public static List<String> shippedSpecies() {
        return SHIPPED;
    }

    /// Reads the file anew at each call.
    ///
    /// @param speciesId one of the shipped species
    /// @throws IllegalArgumentException if no such species is shipped
    public static Catalogue shipped(String speciesId) {
        if (!SHIPPED.contains(speciesId)) {
            throw new IllegalArgumentException(
                    "no species " + speciesId + " is shipped, only " + SHIPPED);
        }
        var file = speciesId + ".species";
        return switch (CatalogueText.read(file, shippedText(file))) {
            case CatalogueText.Result.Loaded(var species) -> of(species);
            case CatalogueText.Result.Faulty(var faults) ->
                    throw new IllegalStateException("a shipped file is faulty: " + faults);
        };
    }

    /// The same species with other entries in force, such as a keeper's own laid over it.
    ///
    /// @throws IllegalArgumentException if it is another species
    public Catalogue with(Species overlaid) {
        if (!overlaid.id().equals(species.id())) {
            throw new IllegalArgumentException(
                    "entries of " + overlaid.id() + " over " + species.id());
        }
        return of(overlaid);
    }

    public Species species() {
        return species;
    }

    public GeneticModel model() {
        return species.model();
    }

    /// The loci that the keeper added or changed.
    public List<LocusEntry> ownEntries() {
        return species.loci().stream().filter(LocusEntry::ownEntry).toList();
    }

    /// What the name means; empty if the catalogue does not know it.
    ///
    /// Within one locus an own name goes before a synonym, and the name of an allele before that
    /// of a form; between loci a name that is used twice is always [Meaning.OneOf]. `Super` before
    /// any name of an allele that is not recessive is its homozygous form.
    public Optional<Meaning> find(String name) {
        return index.find(name);
    }

    /// Known names that are close to what was written, nearest first.
    public List<String> nearest(String written, int limit) {
        return near(written, limit).stream().map(Near::name).toList();
    }

    /// Known names that are close to what was written, with how far they are from it.
    public List<Near> near(String written, int limit) {
        return index.nearest(written, limit);
    }

    /// Known names that begin so, or have a word that begins so, best first; for completion.
    public List<String> beginning(String written, int limit) {
        return index.beginning(written, limit);
    }

    /// How many words the longest known name has: nothing longer need be looked up.
    public int longestNameWords() {
        return longestNameWords;
    }

    /// @throws IllegalArgumentException if the allele is not of this catalogue
    public Trait theTrait(Allele allele) {
        var trait = traits.get(allele);
        if (trait == null) {
            throw new IllegalArgumentException(
                    "no trait for allele " + allele + " of " + allele.locus());
        }
        return trait;
    }

    /// A known name that may have been meant.
    ///
    /// @param slips letters more, fewer, other or swapped between it and what was written; zero
    ///     for another spelling of the same
    public record Near(String name, int slips) {}

    private static String shippedText(String file) {
        try (var in = Catalogue.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(
                        "the file " + file + " is missing from the program");
            }
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
