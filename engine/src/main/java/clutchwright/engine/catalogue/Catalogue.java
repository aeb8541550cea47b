package clutchwright.engine.catalogue;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import java.util.List;
import java.util.Optional;

/// One species with the keeper's own entries applied, and every name that leads into it.
///
/// Names are compared without regard to case, spaces, hyphens and underscores.
public final class Catalogue {

    private final Species species;

    private Catalogue(Species species) {
        this.species = species;
    }

    public static Catalogue of(Species species) {
        return new Catalogue(species);
    }

    /// The species that come with the program, in the order to offer them.
    public static List<String> shippedSpecies() {
        return List.of("python-regius");
    }

    /// @param speciesId one of the shipped species
    /// @throws IllegalArgumentException if no such species is shipped
    public static Catalogue shipped(String speciesId) {
        throw new UnsupportedOperationException("#2");
    }

    public Species species() {
        return species;
    }

    public GeneticModel model() {
        return species.model();
    }

    /// What the name means; empty if the catalogue does not know it.
    public Optional<Meaning> find(String name) {
        throw new UnsupportedOperationException("#2");
    }

    /// Known names that are close to what was written, nearest first.
    public List<String> nearest(String written, int limit) {
        throw new UnsupportedOperationException("#2");
    }

    /// Known names that begin so, or have a word that begins so, best first; for completion.
    public List<String> beginning(String written, int limit) {
        throw new UnsupportedOperationException("#2");
    }

    /// @throws IllegalArgumentException if the allele is not of this catalogue
    public Trait theTrait(Allele allele) {
        return species.loci().stream()
                .filter(entry -> entry.id().equals(allele.locus()))
                .flatMap(entry -> entry.traits().stream())
                .filter(trait -> trait.allele().equals(allele))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no trait for allele " + allele));
    }
}
