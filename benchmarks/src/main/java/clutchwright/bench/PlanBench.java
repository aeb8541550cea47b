package clutchwright.bench;

import clutchwright.app.solver.BranchAndCut;
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
import java.util.OptionalInt;
import java.util.Random;

/// The plan of a season of a large house: 300 females by 60 males with every kind of limit.
final class PlanBench {

    private static final int FEMALES = 300;
    private static final int MALES = 60;
    private static final int KINDS = 40;
    private static final int WEEKS = 30;
    private static final int PROJECTS = 8;
    private static final double GAP = 0.01;
    private static final double SECONDS = 120;

    private PlanBench() {}

    @SuppressWarnings("SystemOut")
    static void run() {
        System.out.println("| seed | variables | rows | seconds | value | bound | gap |");
        System.out.println("|---|---|---|---|---|---|---|");
        for (long seed = 1; seed <= 5; seed++) {
            var plan = season(new Random(seed));
            var programme = plan.programme();
            var began = System.nanoTime();
            var answer = new BranchAndCut().solve(programme, new Effort(SECONDS, GAP));
            var seconds = (System.nanoTime() - began) / 1e9;
            System.out.println(
                    answer instanceof Answer.Found found
                            ? String.format(
                                    java.util.Locale.ENGLISH,
                                    "| %d | %d | %d | %.1f | %.0f | %.0f | %.4f |",
                                    seed,
                                    programme.variables().size(),
                                    programme.rows().size(),
                                    seconds,
                                    found.value(),
                                    found.bound(),
                                    found.gap())
                            : "| %d | - | - | %.1f | %s |".formatted(seed, seconds, answer));
        }
    }

    private static SeasonPlan season(Random random) {
        var pairs = new ArrayList<ProposedPairing>();
        for (int dam = 0; dam < FEMALES; dam++) {
            double eggs = 4 + 5 * random.nextDouble();
            int laid = random.nextInt(WEEKS - 12);
            for (int sire = 0; sire < MALES; sire++) {
                pairs.add(pair(random, dam, sire, eggs, laid));
            }
        }
        var prices = new LinkedHashMap<String, List<PriceStep>>();
        for (int kind = 0; kind < KINDS; kind++) {
            double price = 40 + 900 * Math.pow(random.nextDouble(), 3);
            prices.put(
                    "kind " + kind,
                    List.of(
                            new PriceStep(5, price),
                            new PriceStep(10, 0.7 * price),
                            new PriceStep(30, 0.35 * price)));
        }
        var uses = new LinkedHashMap<String, Integer>();
        for (int sire = 0; sire < MALES; sire++) {
            uses.put("M" + sire, 3 + random.nextInt(4));
        }
        var boxes = new LinkedHashMap<String, Double>();
        var places = new LinkedHashMap<String, Double>();
        for (int week = 0; week < WEEKS; week++) {
            boxes.put("week " + week, 70.0);
            places.put("week " + week, 420.0);
        }
        var projects = new LinkedHashMap<String, PlanLimits.Share>();
        for (int project = 0; project < PROJECTS; project++) {
            projects.put("project " + project, new PlanLimits.Share(2, 12));
        }
        return new SeasonPlan(
                pairs,
                prices,
                new PlanLimits(OptionalInt.of(120), 0.125, uses, boxes, places, projects),
                List.of());
    }

    private static ProposedPairing pair(Random random, int dam, int sire, double eggs, int laid) {
        var kinds = new LinkedHashMap<String, Double>();
        for (int i = 0; i < 4; i++) {
            kinds.merge(
                    "kind " + random.nextInt(KINDS),
                    eggs * 0.9 / 4 * (0.5 + random.nextDouble()),
                    Double::sum);
        }
        var boxes = new LinkedHashMap<String, Double>();
        for (int week = laid; week < laid + 9; week++) {
            boxes.put("week " + week, week == laid ? 0.5 : 1.0);
        }
        var places = new LinkedHashMap<String, Double>();
        for (int week = laid + 9; week < WEEKS; week++) {
            places.put("week " + week, 0.9 * eggs);
        }
        var projects = new LinkedHashSet<String>();
        if (random.nextInt(20) == 0) {
            projects.add("project " + random.nextInt(PROJECTS));
        }
        return new ProposedPairing(
                "F" + dam,
                "M" + sire,
                projects.isEmpty() ? 20 * random.nextDouble() : 300,
                kinds,
                random.nextInt(8) == 0 ? 0.25 : 0,
                boxes,
                places,
                projects,
                random.nextInt(30) == 0 ? "hindered" : "",
                "");
    }
}
