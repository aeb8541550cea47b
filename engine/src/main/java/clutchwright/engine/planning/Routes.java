package clutchwright.engine.planning;

import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// What a search for routes came to.
public sealed interface Routes {

    /// How far the search went.
    enum Method {
        /// Every route of the kind described in `docs/mathematics.md` was weighed.
        EXHAUSTIVE,
        /// There are more than could be weighed, or the search was stopped.
        BEST_FOUND
    }

    /// @param routes none is at least as good as another in everything; quickest first
    /// @param weighed how many ways to come by an animal were weighed
    /// @param playedRuns runs of all routes that were played through
    /// @param leftAside animals that may have what hides the goal's genes, and were not needed
    record Found(
            List<Route> routes,
            Method method,
            int weighed,
            long playedRuns,
            List<AnimalId> leftAside)
            implements Routes {

        public Found {
            routes = List.copyOf(routes);
            leftAside = List.copyOf(leftAside);
        }
    }

    record Refused(ImpossibleGoal reason) implements Routes {}
}
