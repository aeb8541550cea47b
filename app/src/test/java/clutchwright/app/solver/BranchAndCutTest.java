package clutchwright.app.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.planning.IntegerProgramme.Answer;
import clutchwright.engine.planning.IntegerProgramme.Effort;
import clutchwright.engine.planning.PlanLimits;
import clutchwright.engine.planning.PriceStep;
import clutchwright.engine.planning.ProposedPairing;
import clutchwright.engine.planning.SeasonPlan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// The plan of a season, held against every set of pairings that could be made.
class BranchAndCutTest {

    private static final long SEED = 20_261_127;
    private static final Effort EXACT = new Effort(30, 0);

    @Test
    void of_small_seasons_no_set_of_pairings_that_keeps_the_limits_is_worth_more() {
        var random = new Random(SEED);
        int possible = 0;
        for (int round = 0; round < 60; round++) {
            var plan = random(random);
            var best = best(plan);
            var answer = new BranchAndCut().solve(plan.programme(), EXACT);
            if (Double.isNaN(best)) {
                assertThat(answer)
                        .as("seed %d, round %d", SEED, round)
                        .isInstanceOf(Answer.Impossible.class);
                continue;
            }
            possible++;
            assertThat(answer).isInstanceOf(Answer.Found.class);
            var found = (Answer.Found) answer;
            var chosen = plan.chosen(found);
            assertThat(keeps(plan, chosen)).as("seed %d, round %d", SEED, round).isTrue();
            assertThat(plan.worth(chosen)).isCloseTo(best, within(1e-4));
            assertThat(found.value()).isCloseTo(best, within(1e-4));
            assertThat(found.bound()).isGreaterThanOrEqualTo(best - 1e-4);
        }
        assertThat(possible).isBetween(30, 59);
    }

    /// By hand: two females, one male that may be used once; the tenth of a kind is worth less.
    @Test
    void a_male_that_may_be_used_once_goes_where_he_is_worth_most() {
        var plan =
                new SeasonPlan(
                        List.of(
                                pair("F1", "M1", 10, Map.of("Clown", 3.0), Set.of()),
                                pair("F2", "M1", 0, Map.of("Clown", 4.0), Set.of())),
                        new LinkedHashMap<>(
                                Map.of(
                                        "Clown",
                                        List.of(new PriceStep(2, 100), new PriceStep(9, 20)))),
                        limits(Map.of("M1", 1), Map.of(), 9),
                        List.of());

        var found = (Answer.Found) new BranchAndCut().solve(plan.programme(), EXACT);

        // F2: 2 at 100 and 2 at 20; F1: 10, 2 at 100 and 1 at 20.
        assertThat(plan.chosen(found)).extracting(ProposedPairing::dam).containsExactly("F2");
        assertThat(found.value()).isCloseTo(240, within(1e-6));
    }

    @Test
    void whoever_stops_it_before_it_begins_gets_no_plan_and_after_it_is_over_nothing_happens() {
        var plan = random(new Random(SEED));
        var stops = new ArrayList<Runnable>();

        var stopped = new BranchAndCut().solve(plan.programme(), EXACT, Runnable::run);
        var found = new BranchAndCut().solve(plan.programme(), EXACT, stops::add);

        assertThat(stopped).isInstanceOf(Answer.OutOfTime.class);
        assertThat(found).isInstanceOf(Answer.Found.class);
        stops.forEach(Runnable::run);
    }

    @Test
    void what_is_pinned_and_may_not_be_is_impossible() {
        var hindered =
                new ProposedPairing(
                        "F1",
                        "M1",
                        5,
                        new LinkedHashMap<>(),
                        0,
                        new LinkedHashMap<>(),
                        new LinkedHashMap<>(),
                        new LinkedHashSet<>(),
                        "both show a gene that harms its double form",
                        "");
        var plan =
                new SeasonPlan(
                        List.of(hindered),
                        new LinkedHashMap<>(),
                        limits(Map.of(), Map.of(), 9),
                        List.of(hindered));

        assertThat(new BranchAndCut().solve(plan.programme(), EXACT))
                .isInstanceOf(Answer.Impossible.class);
    }

    private static SeasonPlan random(Random random) {
        int females = 1 + random.nextInt(4);
        int males = 1 + random.nextInt(3);
        var pairs = new ArrayList<ProposedPairing>();
        for (int dam = 1; dam <= females; dam++) {
            for (int sire = 1; sire <= males; sire++) {
                if (random.nextInt(5) > 0) {
                    pairs.add(
                            new ProposedPairing(
                                    "F" + dam,
                                    "M" + sire,
                                    random.nextInt(50) - 10,
                                    new LinkedHashMap<>(
                                            Map.of(
                                                    "Clown", random.nextInt(5) / 2.0,
                                                    "Pied", random.nextInt(5) / 2.0)),
                                    random.nextInt(4) / 16.0,
                                    new LinkedHashMap<>(Map.of("w20", random.nextDouble())),
                                    new LinkedHashMap<>(Map.of("w30", 1.0 * random.nextInt(6))),
                                    random.nextBoolean()
                                            ? new LinkedHashSet<>(Set.of("white"))
                                            : new LinkedHashSet<>(),
                                    random.nextInt(6) == 0 ? "care" : "",
                                    random.nextInt(2) == 0 ? "a written reason" : ""));
                }
            }
        }
        var uses = new LinkedHashMap<String, Integer>();
        for (int sire = 1; sire <= males; sire++) {
            uses.put("M" + sire, random.nextInt(3));
        }
        int least = random.nextInt(3) == 0 ? 1 : 0;
        return new SeasonPlan(
                pairs,
                new LinkedHashMap<>(
                        Map.of(
                                "Clown", List.of(new PriceStep(2, 30), new PriceStep(3, 8)),
                                "Pied", List.of(new PriceStep(1, 50), new PriceStep(9, 5)))),
                new PlanLimits(
                        OptionalInt.of(1 + random.nextInt(4)),
                        0.125,
                        uses,
                        new LinkedHashMap<>(Map.of("w20", 1.5)),
                        new LinkedHashMap<>(Map.of("w30", 10.0)),
                        new LinkedHashMap<>(Map.of("white", new PlanLimits.Share(least, 2)))),
                pairs.isEmpty() || random.nextInt(3) > 0 ? List.of() : List.of(pairs.getFirst()));
    }

    /// Of all sets of pairings; no number if none keeps the limits.
    private static double best(SeasonPlan plan) {
        var pairs = plan.pairings();
        var best = Double.NaN;
        for (int set = 0; set < 1 << pairs.size(); set++) {
            var chosen = new ArrayList<ProposedPairing>();
            for (int i = 0; i < pairs.size(); i++) {
                if ((set >> i & 1) == 1) {
                    chosen.add(pairs.get(i));
                }
            }
            if (keeps(plan, chosen)) {
                var worth = worth(plan, chosen);
                best = Double.isNaN(best) ? worth : Math.max(best, worth);
            }
        }
        return best;
    }

    private static boolean keeps(SeasonPlan plan, List<ProposedPairing> chosen) {
        var limits = plan.limits();
        var dams = chosen.stream().map(ProposedPairing::dam).distinct().count();
        if (dams < chosen.size()
                || chosen.size() > limits.clutches().orElse(99)
                || !chosen.containsAll(plan.pinned())) {
            return false;
        }
        for (var pair : chosen) {
            var excluded = !pair.hindrance().isEmpty() && pair.overruled().isEmpty();
            if (excluded || pair.kinship() > limits.kinship()) {
                return false;
            }
        }
        for (var male : limits.uses().entrySet()) {
            if (chosen.stream().filter(p -> p.sire().equals(male.getKey())).count()
                    > male.getValue()) {
                return false;
            }
        }
        var boxes = chosen.stream().mapToDouble(p -> p.boxes().getOrDefault("w20", 0.0)).sum();
        var places = chosen.stream().mapToDouble(p -> p.places().getOrDefault("w30", 0.0)).sum();
        var white = chosen.stream().filter(p -> p.projects().contains("white")).count();
        var share = limits.projects().get("white");
        return boxes <= limits.boxes().getOrDefault("w20", 99.0)
                && places <= limits.places().getOrDefault("w30", 99.0)
                && (share == null || (white >= share.least() && white <= share.most()));
    }

    /// Hatchling by half hatchling, the dearest price that is left first.
    private static double worth(SeasonPlan plan, List<ProposedPairing> chosen) {
        var sum = 0.0;
        for (var pair : chosen) {
            sum += pair.worth();
        }
        for (var kind : plan.prices().keySet()) {
            var halves =
                    (int)
                            Math.round(
                                    2
                                            * chosen.stream()
                                                    .mapToDouble(
                                                            p ->
                                                                    p.hatchlings()
                                                                            .getOrDefault(
                                                                                    kind, 0.0))
                                                    .sum());
            var offers = new ArrayList<Double>();
            for (var step : plan.prices().get(kind)) {
                for (int half = 0; half < 2 * step.hatchlings(); half++) {
                    offers.add(step.price() / 2);
                }
            }
            for (int half = 0; half < Math.min(halves, offers.size()); half++) {
                sum += offers.get(half);
            }
        }
        return sum;
    }

    private static ProposedPairing pair(
            String dam,
            String sire,
            double worth,
            Map<String, Double> kinds,
            Set<String> projects) {
        return new ProposedPairing(
                dam,
                sire,
                worth,
                new LinkedHashMap<>(kinds),
                0,
                new LinkedHashMap<>(),
                new LinkedHashMap<>(),
                new LinkedHashSet<>(projects),
                "",
                "");
    }

    private static PlanLimits limits(
            Map<String, Integer> uses, Map<String, Double> boxes, int clutches) {
        return new PlanLimits(
                OptionalInt.of(clutches),
                0.125,
                new LinkedHashMap<>(uses),
                new LinkedHashMap<>(boxes),
                new LinkedHashMap<>(),
                new LinkedHashMap<>());
    }
}
