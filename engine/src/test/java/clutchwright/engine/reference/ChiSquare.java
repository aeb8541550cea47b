package clutchwright.engine.reference;

import clutchwright.engine.probability.Fraction;
import java.util.List;

/// Pearson's statistic of counts against expected chances, exactly.
final class ChiSquare {

    private ChiSquare() {}

    static Fraction of(List<Integer> counts, List<Fraction> chances) {
        var total = Fraction.of(counts.stream().mapToInt(Integer::intValue).sum(), 1);
        var sum = Fraction.NONE;
        for (var i = 0; i < counts.size(); i++) {
            var expected = total.times(chances.get(i));
            var deviation = Fraction.of(counts.get(i), 1).minus(expected);
            sum = sum.plus(deviation.times(deviation).dividedBy(expected));
        }
        return sum;
    }
}
