package clutchwright.records.plans;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.List;

/// The pairings that were worth most together on the day on which they were worked out.
///
/// @param worth of all of them, in the house's own money
/// @param bound above which no plan under the same limits can be worth
public record SavedPlan(
        PlanId id,
        long version,
        int season,
        String name,
        LocalDate madeOn,
        double worth,
        double bound,
        List<Pair> pairs) {

    public record Pair(AnimalId dam, AnimalId sire) {}

    public SavedPlan {
        pairs = List.copyOf(pairs);
    }
}
