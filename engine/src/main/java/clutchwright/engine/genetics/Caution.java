package clutchwright.engine.genetics;

import java.util.List;

/// A welfare caution that goes with a genotype class.
///
/// @param parts what an animal must have for the caution to concern it: all of them
/// @param words the catalogue's or the keeper's own plain words
/// @param source where the words rest: a citation, or `common practice, no source`
public record Caution(
        Concern concern, List<Part> parts, Standing standing, String words, String source) {

    public Caution {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a caution that concerns no genotype: " + words);
        }
    }

    /// What the caution is about.
    public enum Concern {
        EARLY_DEATH,
        NERVES,
        SKELETON,
        EYES,
        SKIN,
        FERTILITY,
        OTHER
    }

    /// At least so many copies of an allele.
    ///
    /// @param copies 1 or 2
    public record Part(Allele allele, int copies) {

        public Part {
            if (copies < 1 || copies > 2) {
                throw new IllegalArgumentException("copies is " + copies + ", not 1 or 2");
            }
        }

        public boolean holdsFor(Genotype genotype) {
            return genotype.copiesOf(allele) >= copies;
        }
    }
}
