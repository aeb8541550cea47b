package clutchwright.app.eggs;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What was predicted of a clutch against what was found.
///
/// @param looked     how many hatchlings were looked at without doubt
/// @param rest       the chance of all groups that have no row
/// @param chance     of a clutch that falls into groups just so; empty where nothing was seen
/// @param asUnlikely of a clutch of that size that is no likelier; only where all such clutches are
///     few enough to be counted
public record Comparison(
        int looked,
        List<Row> rows,
        Fraction rest,
        Optional<Fraction> chance,
        Optional<Fraction> asUnlikely) {

    private static final int SHOWN = 12;

    /// Clutches to be told apart, at most, where all of them are counted.
    private static final long COUNTED = 400;

    public Comparison {
        rows = List.copyOf(rows);
    }

    /// @param expected hatchlings of so many, on average
    public record Row(GeneLineMarkup genes, Fraction chance, double expected, int found) {}

    static Comparison of(Expected expected, List<HatchlingLine> hatchlings) {
        var counts = new LinkedHashMap<Set<Phenotype>, Integer>();
        for (var hatchling : hatchlings) {
            if (hatchling.look() instanceof HatchlingLine.Look.Seen(var shows)) {
                counts.merge(shows, 1, Integer::sum);
            }
        }
        return of(expected, counts);
    }

    /// @param counts hatchlings by what they show; each look once
    static Comparison of(Expected expected, SequencedMap<Set<Phenotype>, Integer> counts) {
        var looked = counts.values().stream().mapToInt(Integer::intValue).sum();
        var found = new ArrayList<Cross.Found>();
        counts.forEach((shows, count) -> found.add(new Cross.Found(shows, count)));
        var rows = rows(expected, counts, looked);
        var rest =
                rows.stream().map(Row::chance).reduce(Fraction.NONE, Fraction::plus).complement();
        var chance =
                looked == 0 ? Optional.<Fraction>empty() : Optional.of(expected.chanceOf(found));
        return new Comparison(
                looked,
                rows,
                rest,
                chance,
                chance.flatMap(just -> asUnlikely(expected, looked, just)));
    }

    private static List<Row> rows(
            Expected expected, SequencedMap<Set<Phenotype>, Integer> counts, int looked) {
        var rows = new ArrayList<Row>();
        var left = new LinkedHashMap<>(counts);
        for (var guess : expected.likeliest(SHOWN)) {
            var count = Optional.ofNullable(left.remove(guess.look())).orElse(0);
            rows.add(row(guess.genes(), guess.chance(), looked, count));
        }
        left.forEach(
                (shows, count) -> {
                    rows.add(row(expected.genesOf(shows), expected.chanceOf(shows), looked, count));
                });
        return rows;
    }

    private static Row row(GeneLineMarkup genes, Fraction chance, int looked, int found) {
        return new Row(genes, chance, chance.value() * looked, found);
    }

    /// Sums over all ways in which so many hatchlings can fall into the groups.
    private static Optional<Fraction> asUnlikely(Expected expected, int looked, Fraction just) {
        var groups = expected.groups();
        if (groups > SHOWN || ways(looked, groups) > COUNTED) {
            return Optional.empty();
        }
        var looks = expected.likeliest(SHOWN).stream().map(Expected.Guess::look).toList();
        return Optional.of(sum(expected, looks, looked, new ArrayList<>(), just));
    }

    private static Fraction sum(
            Expected expected,
            List<Set<Phenotype>> looks,
            int left,
            List<Cross.Found> found,
            Fraction just) {
        var at = found.size();
        if (at == looks.size()) {
            var chance = left > 0 ? Fraction.NONE : expected.chanceOf(found);
            return chance.compareTo(just) <= 0 ? chance : Fraction.NONE;
        }
        var sum = Fraction.NONE;
        for (var count = at == looks.size() - 1 ? left : 0; count <= left; count++) {
            var more = new ArrayList<>(found);
            more.add(new Cross.Found(looks.get(at), count));
            sum = sum.plus(sum(expected, looks, left - count, more, just));
        }
        return sum;
    }

    /// `(n + k - 1)! / (n! (k - 1)!)` ways for n hatchlings in k groups, or more than are counted.
    private static long ways(int hatchlings, long groups) {
        long ways = 1;
        for (long i = 1; i <= hatchlings && ways <= COUNTED; i++) {
            ways = ways * (groups - 1 + i) / i;
        }
        return ways;
    }
}
