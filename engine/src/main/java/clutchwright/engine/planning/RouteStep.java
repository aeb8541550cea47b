package clutchwright.engine.planning;

import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// A pairing of a route, made again each season until what it is to bring is there.
///
/// @param season the first in which its clutches can hatch, if all before went well at once
/// @param clutches until it brings what is kept with the confidence asked for
/// @param chance that so many clutches bring at least one of everything kept
public record RouteStep(
        int season, Parent dam, Parent sire, int clutches, List<Keeping> keep, double chance) {

    public RouteStep {
        keep = List.copyOf(keep);
    }

    /// Where a parent comes from.
    public sealed interface Parent {

        /// Animals of the stock of which the same is held; at least one.
        record Own(List<AnimalId> animals) implements Parent {

            public Own {
                animals = List.copyOf(animals);
            }
        }

        /// @param number of the [Keeping] of an earlier step
        record Kept(int number) implements Parent {}
    }
}
