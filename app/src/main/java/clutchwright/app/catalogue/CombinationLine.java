package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.NamedCombination;
import java.util.List;

/// A trade name of several loci.
///
/// @param parts each look with its locus's page
/// @param also other names in a row; may be empty
public record CombinationLine(String name, String also, List<Link> parts) {

    public CombinationLine {
        parts = List.copyOf(parts);
    }

    static CombinationLine of(Guide guide, NamedCombination combination) {
        return new CombinationLine(
                combination.name(),
                String.join(", ", combination.synonyms()),
                combination.phenotypes().stream()
                        .map(look -> new Link(look.name(), guide.path(look.locus())))
                        .toList());
    }
}
