package clutchwright.engine.probability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/// Fractions are the same numbers whether they fit into a `long` or not.
class FractionStaysExactTest {

    /// Around the borders where a product, a sum or a negation leaves the range of a `long`.
    private static final List<Long> BORDERS =
            List.of(
                    0L,
                    1L,
                    -1L,
                    2L,
                    -3L,
                    7L,
                    1L << 31,
                    (1L << 31) + 1,
                    -(1L << 32),
                    3_037_000_500L,
                    1L << 53,
                    (1L << 53) + 1,
                    1L << 62,
                    Long.MAX_VALUE,
                    -Long.MAX_VALUE,
                    Long.MIN_VALUE,
                    Long.MIN_VALUE + 1,
                    Long.MAX_VALUE - 1);

    @Test
    void arithmetic_agrees_with_whole_numbers_of_any_size_at_the_borders_of_long() {
        for (var a : BORDERS) {
            for (var b : BORDERS) {
                for (var c : BORDERS) {
                    for (var d : BORDERS) {
                        if (b != 0 && d != 0) {
                            check(a, b, c, d);
                        }
                    }
                }
            }
        }
    }

    @Test
    void arithmetic_agrees_with_whole_numbers_of_any_size_by_seed() {
        var random = new Random(20260101);
        for (var i = 0; i < 20_000; i++) {
            check(draw(random), 1 | draw(random), draw(random), 1 | draw(random));
        }
    }

    private static long draw(Random random) {
        return random.nextLong() >> random.nextInt(64);
    }

    private static void check(long a, long b, long c, long d) {
        var left = Fraction.of(a, b);
        var right = Fraction.of(c, d);
        assertSame(left, big(a), big(b));
        assertSame(
                left.plus(right),
                big(a).multiply(big(d)).add(big(c).multiply(big(b))),
                big(b).multiply(big(d)));
        assertSame(
                left.minus(right),
                big(a).multiply(big(d)).subtract(big(c).multiply(big(b))),
                big(b).multiply(big(d)));
        assertSame(left.times(right), big(a).multiply(big(c)), big(b).multiply(big(d)));
        if (c != 0) {
            assertSame(left.dividedBy(right), big(a).multiply(big(d)), big(b).multiply(big(c)));
        }
        var sign = big(b).signum() * big(d).signum();
        var order =
                Integer.signum(big(a).multiply(big(d)).compareTo(big(c).multiply(big(b)))) * sign;
        assertThat(Integer.signum(left.compareTo(right))).isEqualTo(order);
        assertThat(left.equals(right)).isEqualTo(order == 0);
        if (order == 0) {
            assertThat(left).hasSameHashCodeAs(right);
        }
    }

    private static BigInteger big(long number) {
        return BigInteger.valueOf(number);
    }

    private static void assertSame(
            Fraction fraction, BigInteger numerator, BigInteger denominator) {
        assertThat(fraction.numerator().multiply(denominator))
                .isEqualTo(fraction.denominator().multiply(numerator));
        assertThat(fraction.denominator().signum()).isEqualTo(1);
        assertThat(fraction.numerator().gcd(fraction.denominator())).isEqualTo(BigInteger.ONE);
    }

    @Test
    void the_value_is_the_nearest_double() {
        assertThat(Fraction.of(1, 6).value()).isEqualTo(1.0 / 6);
        assertThat(Fraction.of(2, 3).value()).isEqualTo(2.0 / 3);
        // Half-way between two doubles goes to the even one, a hair above it goes up.
        assertThat(Fraction.of((1L << 53) + 1, 1).value()).isEqualTo(0x1p53);
        var hair = Fraction.of(big(1), BigInteger.TWO.pow(100));
        assertThat(Fraction.of((1L << 53) + 1, 1).plus(hair).value()).isEqualTo(0x1p53 + 2);
        assertThat(Fraction.HALF.power(1000).value()).isEqualTo(0x1p-1000);
        assertThat(Fraction.of(-1, 3).power(3).value()).isEqualTo(-1.0 / 27);
        assertThat(Fraction.of(Long.MIN_VALUE, 1).value()).isEqualTo(-0x1p63);
    }

    @Test
    void powers_and_texts() {
        assertThat(Fraction.NONE.power(0)).isEqualTo(Fraction.WHOLE);
        assertThat(Fraction.of(2, 3).power(2)).isEqualTo(Fraction.of(4, 9));
        assertThat(Fraction.parse(" 6/8 ")).isEqualTo(Fraction.of(3, 4)).hasToString("3/4");
        assertThat(Fraction.parse("3")).hasToString("3/1");
        assertThatThrownBy(() -> Fraction.of(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fraction.WHOLE.dividedBy(Fraction.NONE))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
