package clutchwright.app.projects;

import clutchwright.app.steering.ProjectRoutes;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.planning.RouteStep;
import clutchwright.engine.planning.RouteStep.Parent;
import java.util.HashMap;
import java.util.Map;

/// How inbred the young of each step of a route are, by the tabular method from the kinship of
/// the stock on. Steps are asked for in order.
final class RouteKinship {

    private final Kinship stock;
    private final Map<Integer, RouteStep> origins = new HashMap<>();

    RouteKinship(Kinship stock) {
        this.stock = stock;
    }

    /// The inbreeding coefficient of the step's hatchlings: the kinship of its parents.
    double ofYoung(RouteStep step) {
        step.keep().forEach(keeping -> origins.put(keeping.number(), step));
        return between(step.dam(), step.sire());
    }

    private double between(Parent one, Parent other) {
        return switch (one) {
            case Parent.Kept(var number) ->
                    switch (other) {
                        case Parent.Kept(var second) ->
                                number == second
                                        ? (1 + parents(number)) / 2
                                        : through(
                                                Math.max(number, second),
                                                new Parent.Kept(Math.min(number, second)));
                        case Parent.Own _ -> through(number, other);
                    };
            case Parent.Own(var animals) ->
                    switch (other) {
                        case Parent.Kept(var second) -> through(second, one);
                        case Parent.Own(var others) ->
                                founders(animals.getFirst(), others.getFirst());
                    };
        };
    }

    /// An animal that would be bought has no ancestors here.
    private double founders(AnimalId one, AnimalId other) {
        return ProjectRoutes.isPurchase(one) || ProjectRoutes.isPurchase(other)
                ? 0
                : stock.between(one, other);
    }

    private double parents(int kept) {
        var step = origin(kept);
        return between(step.dam(), step.sire());
    }

    /// The mean of both parents' kinship with the older animal.
    private double through(int kept, Parent older) {
        var step = origin(kept);
        return (between(step.dam(), older) + between(step.sire(), older)) / 2;
    }

    private RouteStep origin(int kept) {
        var step = origins.get(kept);
        if (step == null) {
            throw new IllegalStateException("K" + kept + " is kept of no step before");
        }
        return step;
    }
}
