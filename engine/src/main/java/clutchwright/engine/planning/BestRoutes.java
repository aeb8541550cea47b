package clutchwright.engine.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Picks the routes of which none is as good as another in everything.
final class BestRoutes {

    /// Runs differ by chance: what is nearer than this is alike.
    private static final double ALIKE = 0.005;

    private BestRoutes() {}

    /// @param confidence of those that reach it only; of all where none does
    static List<Route> of(List<Route> routes, double confidence) {
        var reaching = routes.stream().filter(route -> route.chance() >= confidence).toList();
        var ordered =
                (reaching.isEmpty() ? routes : reaching)
                        .stream()
                                .distinct()
                                .sorted(
                                        Comparator.comparingInt(Route::seasons)
                                                .thenComparingDouble(Route::clutches)
                                                .thenComparingDouble(route -> -route.chance())
                                                .thenComparingInt(route -> route.steps().size()))
                                .toList();
        var best = new ArrayList<Route>();
        for (var route : ordered) {
            if (best.stream().noneMatch(other -> isAsGood(other, route))
                    && ordered.stream().noneMatch(other -> isBetter(other, route))) {
                best.add(route);
            }
        }
        return List.copyOf(best);
    }

    /// In seasons, clutches and chance, better in one of them.
    private static boolean isBetter(Route good, Route worse) {
        return good.seasons() <= worse.seasons()
                && good.clutches() <= worse.clutches()
                && good.chance() >= worse.chance()
                && (good.seasons() < worse.seasons()
                        || good.clutches() < worse.clutches()
                        || good.chance() > worse.chance());
    }

    /// At equal horizons: in clutches and in the chance by every season, as far as runs tell.
    private static boolean isAsGood(Route good, Route worse) {
        if (good.clutches() > worse.clutches() * (1 + ALIKE)) {
            return false;
        }
        for (var s = 0; s < good.chanceBySeason().size(); s++) {
            if (good.chanceBySeason().get(s) < worse.chanceBySeason().get(s) - ALIKE) {
                return false;
            }
        }
        return true;
    }
}
