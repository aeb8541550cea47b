package clutchwright.engine.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/// Plays a season's plan through many times: who lays, how many eggs, which hatch, what they are,
/// and what they then sell for.
public final class SeasonSimulation {

    private final List<Clutch> clutches;
    private final Map<String, List<PriceStep>> prices;
    private final RandomGenerator random;
    private final double[] worths;
    private final SequencedMap<String, int[]> counts = new LinkedHashMap<>();
    private final int[] hatched;

    private SeasonSimulation(
            List<Clutch> clutches, Map<String, List<PriceStep>> prices, int runs, long seed) {
        this.clutches = clutches;
        this.prices = prices;
        this.random = new SplittableRandom(seed);
        this.worths = new double[runs];
        this.hatched = new int[runs];
    }

    /// What the parents of a clutch turn out to give.
    @FunctionalInterface
    public interface Brood {

        /// Drawn anew for each run.
        ClutchKinds draw(RandomGenerator random);
    }

    /// A clutch that is planned.
    ///
    /// @param lays chance that there is one
    /// @param eggs chance of each number of good eggs, given that there is one
    /// @param hatches chance that a good egg hatches
    /// @param worth what it is worth beyond what its hatchlings sell for, if it is laid
    public record Clutch(
            Brood brood,
            double lays,
            SequencedMap<Integer, Double> eggs,
            double hatches,
            double worth) {

        public Clutch {
            eggs = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(eggs));
        }
    }

    /// @param low in 19 of 20 runs it was no less
    /// @param high in 19 of 20 runs it was no more
    public record Range(double low, double mean, double high) {}

    /// @param kinds hatchlings of each kind that came up
    public record Played(
            Range worth, Range hatchlings, SequencedMap<String, Range> kinds, int runs) {

        public Played {
            kinds = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(kinds));
        }
    }

    /// @param prices by kind, the dearest first
    /// @param runs at least one
    public static Played play(
            List<Clutch> clutches, Map<String, List<PriceStep>> prices, int runs, long seed) {
        var simulation = new SeasonSimulation(clutches, prices, runs, seed);
        for (var run = 0; run < runs; run++) {
            simulation.run(run);
        }
        return simulation.played();
    }

    private void run(int run) {
        var sold = new LinkedHashMap<String, Integer>();
        for (var clutch : clutches) {
            if (random.nextDouble() >= clutch.lays()) {
                continue;
            }
            worths[run] += clutch.worth();
            var young = young(clutch);
            if (young == 0) {
                continue;
            }
            hatched[run] += young;
            var kinds = clutch.brood().draw(random);
            worths[run] += young * kinds.hetWorth();
            for (var n = 0; n < young; n++) {
                kind(kinds, sold);
            }
        }
        sold.forEach(
                (kind, many) -> {
                    counts.computeIfAbsent(kind, _ -> new int[worths.length])[run] = many;
                    worths[run] += sale(prices.getOrDefault(kind, List.of()), many);
                });
    }

    private int young(Clutch clutch) {
        var left = random.nextDouble();
        var eggs = clutch.eggs().isEmpty() ? 0 : clutch.eggs().lastEntry().getKey();
        for (var each : clutch.eggs().entrySet()) {
            left -= each.getValue();
            if (left < 0) {
                eggs = each.getKey();
                break;
            }
        }
        var young = 0;
        for (var egg = 0; egg < eggs; egg++) {
            if (random.nextDouble() < clutch.hatches()) {
                young++;
            }
        }
        return young;
    }

    private void kind(ClutchKinds kinds, Map<String, Integer> sold) {
        var left = random.nextDouble();
        for (var some : List.of(kinds.priced(), kinds.unpriced())) {
            for (var each : some.entrySet()) {
                left -= each.getValue();
                if (left < 0) {
                    sold.merge(each.getKey(), 1, Integer::sum);
                    return;
                }
            }
        }
    }

    private static double sale(List<PriceStep> steps, int many) {
        var sum = 0.0;
        double left = many;
        for (var step : steps) {
            var some = Math.min(left, step.hatchlings());
            sum += some * step.price();
            left -= some;
        }
        return sum;
    }

    private Played played() {
        var kinds = new ArrayList<Map.Entry<String, Range>>();
        counts.forEach(
                (kind, many) ->
                        kinds.add(
                                Map.entry(
                                        kind,
                                        range(Arrays.stream(many).asDoubleStream().toArray()))));
        kinds.sort((a, b) -> Double.compare(b.getValue().mean(), a.getValue().mean()));
        var ordered = new LinkedHashMap<String, Range>();
        kinds.forEach(each -> ordered.put(each.getKey(), each.getValue()));
        return new Played(
                range(worths.clone()),
                range(Arrays.stream(hatched).asDoubleStream().toArray()),
                ordered,
                worths.length);
    }

    private static Range range(double[] found) {
        var mean = Arrays.stream(found).average().orElse(0);
        Arrays.sort(found);
        var tail = found.length / 20;
        return new Range(found[tail], mean, found[found.length - 1 - tail]);
    }
}
