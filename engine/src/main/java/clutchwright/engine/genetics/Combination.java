package clutchwright.engine.genetics;

import java.util.List;

/// What holds only for animals that have something at each of several loci.
///
/// @param parts at least two, of different loci; all must hold
public record Combination(List<Caution.Part> parts, Viability viability) {

    public Combination {
        parts = List.copyOf(parts);
        if (parts.stream().map(part -> part.allele().locus()).distinct().count() < 2) {
            throw new IllegalArgumentException("a combination names fewer than two loci: " + parts);
        }
    }
}
