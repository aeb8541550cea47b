package clutchwright.engine.planning;

import java.util.List;

/// A way to a goal over generations, with what it takes as its policy was played through.
///
/// @param seasons until the chance of having reached the goal is the confidence asked for, or the
///     last season looked at where it never is
/// @param clutches mean number laid until the goal is reached or the last season is over
/// @param chance of having reached the goal by then
/// @param steps each after those that its parents come from
/// @param chanceBySeason chance of having reached the goal by each season, from the first on
/// @param runs how often it was played through; a chance p is off by about the root of p(1-p)/runs
public record Route(
        int seasons,
        double clutches,
        double chance,
        List<RouteStep> steps,
        List<Double> chanceBySeason,
        int runs) {

    public Route {
        steps = List.copyOf(steps);
        chanceBySeason = List.copyOf(chanceBySeason);
    }
}
