package clutchwright.engine.planning;

import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;

/// Hatchlings to keep of a clutch: those that look so. What they hold unseen stays a chance.
///
/// @param number within the route, from 1
/// @param shows what is seen of the genes that matter to the goal; empty where nothing shows
/// @param sex empty where either will do
/// @param count to be kept, at most; the route goes on with the first
/// @param perHatchling chance that a hatchling is one of them, its sex included where one is asked
/// @param carries alleles that the look does not reveal, each with its chance
/// @param isGoal whether this is what the whole route is for
public record Keeping(
        int number,
        List<Phenotype> shows,
        Optional<Sex> sex,
        int count,
        Fraction perHatchling,
        List<Outcome.Held> carries,
        boolean isGoal) {

    public Keeping {
        shows = List.copyOf(shows);
        carries = List.copyOf(carries);
    }
}
