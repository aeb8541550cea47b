package clutchwright.engine.genetics;

import java.math.BigInteger;
import java.util.List;

/// Whole numbers of ways.
final class Counting {

    private Counting() {}

    static BigInteger choose(int all, int some) {
        var ways = BigInteger.ONE;
        for (var i = 1; i <= some; i++) {
            ways = ways.multiply(BigInteger.valueOf(all - some + i)).divide(BigInteger.valueOf(i));
        }
        return ways;
    }

    /// In how many orders so many of each kind can come.
    static BigInteger multinomial(List<Integer> counts) {
        var ways = BigInteger.ONE;
        var soFar = 0;
        for (var count : counts) {
            soFar += count;
            ways = ways.multiply(choose(soFar, count));
        }
        return ways;
    }
}
