package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Pairing.Case;
import clutchwright.engine.planning.Pairing.Target;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// How soon a pairing of two kinds brings what is sought, counted from its first clutches on.
/// Worked out once, whatever way the two kinds were come by.
final class PairingOdds {

    private final GenePool pool;
    private final Pairing pairing;
    private final RouteLimits limits;
    private final List<Case> goal;
    private final Map<Object, Chances> known = new HashMap<>();
    private final Map<List<Sought>, Integer> planned = new HashMap<>();
    private int goalPlanned;

    /// Something to be kept of a pairing.
    record Sought(Target target, int count) {}

    private record Within(List<Sought> sought, int perSeason) {}

    private record Pair(Sought male, Sought female, int perSeason) {}

    PairingOdds(GenePool pool, Pairing pairing, RouteLimits limits) {
        this.pool = pool;
        this.pairing = pairing;
        this.limits = limits;
        goal = goalCases();
    }

    /// The chance that so many seasons bring what is sought, from none on.
    ///
    /// @param perSeason clutches
    Chances within(List<Sought> sought, int perSeason) {
        return known.computeIfAbsent(
                new Within(sought, perSeason),
                _ -> {
                    var found = new double[limits.seasons() + 1];
                    for (var n = 1; n < found.length; n++) {
                        found[n] = found(sought, n * perSeason * pool.biology.eggs());
                    }
                    return new Chances(found);
                });
    }

    /// The chance that so many seasons after the first clutches a male and a female are grown.
    Chances grownWithin(Sought male, Sought female, int perSeason) {
        return known.computeIfAbsent(
                new Pair(male, female, perSeason), _ -> bothGrown(male, female, perSeason));
    }

    private Chances bothGrown(Sought male, Sought female, int perSeason) {
        var cases = pairing.cases(List.of(male.target(), female.target()));
        var eggs = perSeason * pool.biology.eggs();
        var both = new double[limits.seasons() + 1];
        for (var n = 0; n < both.length; n++) {
            var maleEggs = Math.max(0, n - pool.biology.maleSeasons() + 1) * eggs;
            var femaleEggs = Math.max(0, n - pool.biology.femaleSeasons() + 1) * eggs;
            for (var truth : cases) {
                both[n] +=
                        truth.weight()
                                * Waiting.atLeastBoth(
                                        male.count(),
                                        truth.perEgg().getFirst(),
                                        maleEggs,
                                        female.count(),
                                        truth.perEgg().getLast(),
                                        femaleEggs);
            }
        }
        return new Chances(both);
    }

    /// The chance that so many eggs bring what is sought.
    private double found(List<Sought> sought, int eggs) {
        var cases = pairing.cases(sought.stream().map(Sought::target).toList());
        var sum = 0.0;
        for (var truth : cases) {
            var all = 1.0;
            if (sought.size() == 2) {
                all =
                        Waiting.atLeastBoth(
                                sought.getFirst().count(),
                                truth.perEgg().getFirst(),
                                eggs,
                                sought.getLast().count(),
                                truth.perEgg().getLast(),
                                eggs);
            } else {
                // Of three and more as if they were independent: it only ranks routes.
                for (var i = 0; i < sought.size(); i++) {
                    all *= Waiting.atLeast(sought.get(i).count(), truth.perEgg().get(i), eggs);
                }
            }
            sum += truth.weight() * all;
        }
        return sum;
    }

    /// Clutches that bring at least one of everything sought with the confidence asked for; as
    /// many as there are seasons for where even those do not.
    int planned(List<Sought> sought) {
        return planned.computeIfAbsent(
                sought,
                _ -> {
                    var most = most();
                    for (var clutches = 1; clutches < most; clutches++) {
                        if (chance(sought, clutches) >= limits.confidence()) {
                            return clutches;
                        }
                    }
                    return most;
                });
    }

    private int most() {
        return Math.max(1, limits.seasons() * limits.clutchesPerSeason());
    }

    /// The chance that so many clutches bring at least one of everything sought.
    double chance(List<Sought> sought, int clutches) {
        return found(
                sought.stream().map(one -> new Sought(one.target(), 1)).toList(),
                clutches * pool.biology.eggs());
    }

    /// Whether the pairing can bring what the goal asks for.
    boolean canBringGoal() {
        return !goal.isEmpty();
    }

    /// The chance that so many seasons bring all that the goal asks for.
    Chances goalWithin(int perSeason) {
        return known.computeIfAbsent(
                perSeason,
                _ -> {
                    var found = new double[limits.seasons() + 1];
                    for (var n = 1; n < found.length; n++) {
                        found[n] = goalChance(n * perSeason);
                    }
                    return new Chances(found);
                });
    }

    int goalPlanned() {
        if (goalPlanned == 0) {
            goalPlanned = 1;
            while (goalPlanned < most() && goalChance(goalPlanned) < limits.confidence()) {
                goalPlanned++;
            }
        }
        return goalPlanned;
    }

    double goalChance(int clutches) {
        var sum = 0.0;
        for (var truth : goal) {
            sum +=
                    truth.weight()
                            * Waiting.enough(
                                    pool.goal,
                                    truth.perEgg().getFirst(),
                                    truth.perEgg().getLast(),
                                    clutches * pool.biology.eggs());
        }
        return sum;
    }

    /// Chances per egg of a male and of a female that is what is wanted.
    private List<Case> goalCases() {
        var male = pairing.goal(Optional.of(Sex.MALE));
        var female = pairing.goal(Optional.of(Sex.FEMALE));
        if (male.isPresent() && female.isPresent()) {
            return pairing.cases(List.of(male.get(), female.get()));
        }
        var cases = new ArrayList<Case>();
        male.ifPresent(
                target ->
                        pairing.cases(List.of(target))
                                .forEach(
                                        one ->
                                                cases.add(
                                                        new Case(
                                                                one.weight(),
                                                                List.of(
                                                                        one.perEgg().getFirst(),
                                                                        0.0)))));
        female.ifPresent(
                target ->
                        pairing.cases(List.of(target))
                                .forEach(
                                        one ->
                                                cases.add(
                                                        new Case(
                                                                one.weight(),
                                                                List.of(
                                                                        0.0,
                                                                        one.perEgg()
                                                                                .getFirst())))));
        return cases;
    }
}
