package clutchwright.records.statements;

import java.util.List;

/// A gene line as it was written, and as it was understood.
///
/// @param written   in the writer's own words
/// @param canonical the same genes in the catalogue's words; blank where it was not understood
/// @param mentions  the alleles it speaks of, wild type left out
public record GeneText(String written, String canonical, String species, List<Mention> mentions) {

    public GeneText {
        written = written.strip();
        canonical = canonical.strip();
        mentions = List.copyOf(mentions);
    }
}
