package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.List;

/// What a group of hatchlings shows, and how often, without what it may hold unseen.
///
/// @param name the forms in naming order, or `Normal`
/// @param shows the visible forms in naming order; empty where nothing shows
/// @param chance among the embryos that live, above zero
public record Group(String name, List<Phenotype> shows, Fraction chance) {

    public Group {
        shows = List.copyOf(shows);
    }
}
