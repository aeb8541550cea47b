package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.RoutePlan.Source;
import clutchwright.engine.planning.RoutePlan.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/// Plays a route through, season by season, egg by egg, as a keeper would follow it who sees only
/// what shows. What animals carry unseen is drawn once and then holds.
///
/// The policy, `docs/mathematics.md`, "Routes": each season the steps are gone through from the
/// goal backwards. A step that has not brought all that is to be kept is bred again with every
/// dam that is grown and free, up to its number of clutches and what the season has left. Any
/// hatchling that is what the goal asks for counts, of whichever step.
final class PolicySimulation {

    private final GenePool pool;
    private final RouteLimits limits;
    private final RandomGenerator random;
    private final List<Player> players = new ArrayList<>();

    /// By unit, dam's state and sire's state; null where none was asked for yet.
    private final @Nullable Draw[][][] draws;

    private final long[] reached;
    private long clutchesLaid;

    private PolicySimulation(RoutePlan plan) {
        pool = plan.pool();
        limits = plan.limits();
        random = new SplittableRandom(limits.seed());
        draws = new Draw[pool.units.size()][0][0];
        reached = new long[limits.seasons() + 1];
        plan.steps().forEach(step -> players.add(new Player(step)));
    }

    /// @param clutches mean number laid until the goal is reached or the seasons are over
    /// @param chanceBySeason from the first season on
    record Played(double clutches, List<Double> chanceBySeason) {}

    /// Ready to be played; several that are may be played side by side.
    static PolicySimulation of(RoutePlan plan) {
        return new PolicySimulation(plan);
    }

    /// To be called once.
    Played play() {
        for (var run = 0; run < limits.runs(); run++) {
            run();
        }
        return played();
    }

    private Played played() {
        var chances = new ArrayList<Double>();
        var sum = 0L;
        for (var s = 1; s <= limits.seasons(); s++) {
            sum += reached[s];
            chances.add((double) sum / limits.runs());
        }
        return new Played((double) clutchesLaid / limits.runs(), List.copyOf(chances));
    }

    /// A step while it is played.
    private static final class Player {
        final Step step;
        final int perSeason;
        final int[][] keys;
        final Sex[] sexes;
        final List<List<Grown>> kept = new ArrayList<>();

        /// By unit, the looks that are what the goal asks for; none where none can be.
        final List<Set<Integer>> goalMales;

        final List<Set<Integer>> goalFemales;

        Player(Step step) {
            this.step = step;
            perSeason = step.perSeason();
            keys = new int[step.keep().size()][];
            sexes = new Sex[step.keep().size()];
            for (var k = 0; k < keys.length; k++) {
                var target = step.keep().get(k).target();
                keys[k] = target.keys().stream().mapToInt(some -> some.iterator().next()).toArray();
                sexes[k] = target.sex().orElseThrow();
                kept.add(new ArrayList<>());
            }
            goalMales = goal(Sex.MALE);
            goalFemales = goal(Sex.FEMALE);
        }

        private List<Set<Integer>> goal(Sex sex) {
            return step.mating().goal(sex).map(Pairing.Target::keys).orElse(List.of());
        }

        boolean isDone() {
            if (step.isLast()) {
                return false;
            }
            for (var k = 0; k < keys.length; k++) {
                if (kept.get(k).size() < step.keep().get(k).count()) {
                    return false;
                }
            }
            return true;
        }
    }

    /// An animal with what it has in truth.
    private static final class Grown {
        final int[] states;
        final int from;
        int bredIn;

        Grown(int[] states, int from) {
            this.states = states;
            this.from = from;
        }
    }

    private final Map<Acquisition.Owned, List<Grown>> own = new HashMap<>();
    private int males;
    private int females;

    private void run() {
        own.clear();
        males = 0;
        females = 0;
        players.forEach(player -> player.kept.forEach(List::clear));
        for (var season = 1; season <= limits.seasons(); season++) {
            var left = limits.clutchesPerSeason();
            for (var p = players.size() - 1; p >= 0 && left > 0; p--) {
                left -= breed(players.get(p), season, left);
            }
            clutchesLaid += limits.clutchesPerSeason() - left;
            if (pool.goal.isMetBy(males, females)) {
                reached[season]++;
                return;
            }
        }
    }

    /// @return clutches laid
    private int breed(Player player, int season, int left) {
        if (player.isDone()) {
            return 0;
        }
        var sires = grown(player.step.sire(), season);
        if (sires.isEmpty()) {
            return 0;
        }
        var laid = 0;
        for (var dam : grown(player.step.dam(), season)) {
            if (laid == left || laid == player.perSeason) {
                break;
            }
            if (dam.bredIn != season) {
                dam.bredIn = season;
                hatch(player, dam, sires.get((season + laid) % sires.size()), season);
                laid++;
            }
        }
        return laid;
    }

    private List<Grown> grown(Source source, int season) {
        var all =
                switch (source) {
                    case Source.OfStock(var owned) -> own.computeIfAbsent(owned, this::drawn);
                    case Source.OfSlot(var step, var slot, _) -> players.get(step).kept.get(slot);
                };
        var grown = new ArrayList<Grown>(all.size());
        for (var one : all) {
            if (one.from <= season) {
                grown.add(one);
            }
        }
        return grown;
    }

    private List<Grown> drawn(Acquisition.Owned owned) {
        var animals = new ArrayList<Grown>();
        for (var a = 0; a < owned.animals().size(); a++) {
            var states = new int[pool.units.size()];
            for (var u = 0; u < states.length; u++) {
                states[u] = drawn(u, owned.kind().mixes().get(u));
            }
            animals.add(new Grown(states, owned.first().get(a)));
        }
        return animals;
    }

    private int drawn(int unit, int mix) {
        var chances = pool.units.get(unit).mix(mix);
        if (chances.size() == 1) {
            return chances.firstEntry().getKey();
        }
        var at = random.nextDouble();
        for (var entry : chances.entrySet()) {
            at -= entry.getValue().value();
            if (at < 0) {
                return entry.getKey();
            }
        }
        return chances.lastEntry().getKey();
    }

    private void hatch(Player player, Grown dam, Grown sire, int season) {
        var units = pool.units.size();
        var found = new int[units];
        var states = new int[units];
        for (var egg = 0; egg < pool.biology.eggs(); egg++) {
            if (random.nextDouble() >= pool.biology.hatchRate().value()) {
                continue;
            }
            var lives = true;
            for (var u = 0; u < units && lives; u++) {
                lives = draw(u, dam.states[u], sire.states[u]).into(u, found, states, random);
            }
            if (lives) {
                look(player, found, states, season);
            }
        }
    }

    private void look(Player player, int[] found, int[] states, int season) {
        var sex = sexOf(found);
        if (isGoal(sex == Sex.MALE ? player.goalMales : player.goalFemales, found)) {
            if (sex == Sex.MALE) {
                males++;
            } else {
                females++;
            }
        }
        for (var k = 0; k < player.keys.length; k++) {
            var kept = player.kept.get(k);
            if (player.sexes[k] == sex
                    && kept.size() < player.step.keep().get(k).count()
                    && Arrays.equals(player.keys[k], found)) {
                kept.add(new Grown(states.clone(), season + pool.biology.seasonsToMaturity(sex)));
            }
        }
    }

    private Sex sexOf(int[] found) {
        for (var key : found) {
            var told = GeneUnit.sexOf(key);
            if (told.isPresent()) {
                return told.get();
            }
        }
        return random.nextDouble() < pool.biology.males().value() ? Sex.MALE : Sex.FEMALE;
    }

    private static boolean isGoal(List<Set<Integer>> goal, int[] found) {
        if (goal.isEmpty()) {
            return false;
        }
        for (var u = 0; u < found.length; u++) {
            if (!goal.get(u).contains(found[u])) {
                return false;
            }
        }
        return true;
    }

    private Draw draw(int unit, int dam, int sire) {
        if (dam >= draws[unit].length) {
            draws[unit] = Arrays.copyOf(draws[unit], dam + 1);
            Arrays.setAll(draws[unit], d -> draws[unit][d] == null ? new Draw[0] : draws[unit][d]);
        }
        if (sire >= draws[unit][dam].length) {
            draws[unit][dam] = Arrays.copyOf(draws[unit][dam], sire + 1);
        }
        var known = draws[unit][dam][sire];
        if (known == null) {
            known = Draw.of(pool, pool.units.get(unit).offspring(dam, sire));
            draws[unit][dam][sire] = known;
        }
        return known;
    }

    /// What an egg becomes at one unit.
    private record Draw(List<GeneUnit.Share> shares, Chances chances) {

        /// Summed, so that one number decides.
        private static final class Chances {
            final double alive;
            final double[] upTo;

            Chances(double alive, double... upTo) {
                this.alive = alive;
                this.upTo = upTo;
            }
        }

        static Draw of(GenePool pool, GeneUnit.Offspring offspring) {
            var upTo = new double[offspring.shares().size()];
            var sum = 0.0;
            for (var i = 0; i < upTo.length; i++) {
                var share = offspring.shares().get(i);
                sum +=
                        share.value()
                                * GeneUnit.sexOf(share.key())
                                        .map(sex -> 2 * pool.biology.shareOf(sex).value())
                                        .orElse(1.0);
                upTo[i] = sum;
            }
            return new Draw(offspring.shares(), new Chances(offspring.alive().value(), upTo));
        }

        /// @return whether it lives
        boolean into(int unit, int[] found, int[] states, RandomGenerator random) {
            if (chances.alive < 1 && random.nextDouble() >= chances.alive) {
                return false;
            }
            var i = 0;
            if (shares.size() > 1) {
                var at = random.nextDouble();
                while (i < shares.size() - 1 && at >= chances.upTo[i]) {
                    i++;
                }
            }
            found[unit] = shares.get(i).key();
            states[unit] = shares.get(i).state();
            return true;
        }
    }
}
