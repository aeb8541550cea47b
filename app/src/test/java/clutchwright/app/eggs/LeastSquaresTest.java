package clutchwright.app.eggs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.incubation.BoxTrace;
import clutchwright.engine.incubation.BoxTrace.Beside;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.ConductanceEstimate;
import clutchwright.engine.incubation.ConductanceEstimate.Told;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.EmbryoHeat.Shape;
import clutchwright.engine.incubation.HeatBalance;
import clutchwright.engine.incubation.HeatBalance.Known;
import clutchwright.engine.incubation.HeatBalance.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A box's conductance by a logger's trace. The traces are [SlowBox]'s, which has nothing of the
/// engine's.
class LeastSquaresTest {

    @ParameterizedTest
    @CsvSource({"0.7, 6, 0.8", "1.4, 10, 0.9", "2.5, 11, 0.75", "1.0, 1, 0.95"})
    void without_noise_it_is_found_again(double wattsPerKelvin, int eggs, double development) {
        var box = new SlowBox(wattsPerKelvin, 2500, eggs, development, 0, false, 0);
        for (var probe : Probe.values()) {
            var balance = balance(box, box.trace(48, 10, probe, Beside.SENSOR));
            var watts = balance.hours().stream().mapToDouble(HeatBalance.Hour::watts).sum();
            var rises = balance.hours().stream().mapToDouble(HeatBalance.Hour::riseKelvin).sum();
            assertThat(watts / rises)
                    .as("%s", probe)
                    .isCloseTo(wattsPerKelvin, within(0.002 * wattsPerKelvin));
        }
        if (eggs > 1) {
            assertThat(told(box, 48, Beside.SENSOR).conductance().wattsPerKelvin())
                    .isCloseTo(wattsPerKelvin, within(0.002 * wattsPerKelvin));
        }
    }

    @ParameterizedTest
    @CsvSource({"24, SENSOR", "48, SENSOR", "96, SENSOR", "96, SET_POINT"})
    void the_true_conductance_lies_in_its_interval_in_nine_of_ten_traces_or_more(
            int hours, Beside beside) {
        var tally = new Tally();
        for (var seed = 0; tally.told < 100; seed++) {
            assertThat(seed).as("%d traces told it", tally.told).isLessThan(1000);
            var box = SlowBox.drawn(seed, true);
            tally.add(box, estimate(box, hours, beside));
        }
        System.out.printf("%d h beside a %s: %s%n", hours, beside, tally);
        assertThat(tally.held).as(tally.toString()).isBetween(90, 100);
    }

    /// Without a difference of the sensors all that is left hangs together for hours.
    @ParameterizedTest
    @CsvSource({"24, SENSOR", "48, SENSOR", "96, SENSOR", "96, SET_POINT"})
    void so_it_does_by_the_allowance_for_hours_that_hang_together_alone(int hours, Beside beside) {
        var tally = new Tally();
        var plain = 0;
        for (var seed = 0; tally.told < 100; seed++) {
            assertThat(seed).as("%d traces told it", tally.told).isLessThan(1000);
            var box = SlowBox.drawn(seed, false);
            var balance = balance(box, box.trace(hours, 10, Probe.BOX, beside));
            var known = new HeatBalance(balance.hours(), beside, 0, 0, 0);
            var before = tally.told;
            tally.add(box, LeastSquares.estimate(known));
            plain += tally.told > before && heldAsIfIndependent(known, box) ? 1 : 0;
        }
        System.out.printf(
                "%d h beside a %s, no offset: %s; %d as if hours were independent%n",
                hours, beside, tally, plain);
        assertThat(tally.held).as(tally.toString()).isBetween(90, 100);
    }

    private static boolean heldAsIfIndependent(HeatBalance balance, SlowBox box) {
        var squares = balance.hours().stream().mapToDouble(h -> h.watts() * h.watts()).sum();
        var product = balance.hours().stream().mapToDouble(h -> h.watts() * h.riseKelvin()).sum();
        var left =
                balance.residuals(product / squares).stream().mapToDouble(r -> r * r).sum()
                        / (balance.hours().size() - 1);
        return Math.abs(product / squares - 1 / box.wattsPerKelvin())
                <= 2 * Math.sqrt(left / squares);
    }

    /// Counts as it goes.
    private static final class Tally {

        private final List<Long> missed = new ArrayList<>();
        private int told;
        private int held;
        private int vague;
        private double logWidths;

        void add(SlowBox box, ConductanceEstimate estimate) {
            if (!(estimate instanceof Told fit)) {
                vague++;
                return;
            }
            told++;
            logWidths += Math.log(fit.high().wattsPerKelvin() / fit.low().wattsPerKelvin());
            if (fit.low().wattsPerKelvin() <= box.wattsPerKelvin()
                    && box.wattsPerKelvin() <= fit.high().wattsPerKelvin()) {
                held++;
            } else {
                missed.add(box.seed());
            }
        }

        @Override
        public String toString() {
            return "%d of %d hold it, seeds from 0 on, %d more tell too little; missed by seeds %s; the ends differ by a factor of %.2f"
                    .formatted(held, told, vague, missed, Math.exp(logWidths / told));
        }
    }

    private static Told told(SlowBox box, int hours, Beside beside) {
        return switch (estimate(box, hours, beside)) {
            case Told told -> told;
            case ConductanceEstimate.TooVague vague -> throw new AssertionError(vague);
        };
    }

    private static ConductanceEstimate estimate(SlowBox box, int hours, Beside beside) {
        return LeastSquares.estimate(balance(box, box.trace(hours, 10, Probe.BOX, beside)));
    }

    private static HeatBalance balance(SlowBox box, BoxTrace trace) {
        return switch (HeatBalance.of(trace, known(box.eggs(), box.development()))) {
            case Stated.Equations(var balance) -> balance;
            case Stated other -> throw new AssertionError(other);
        };
    }

    private static Known known(int eggs, double development) {
        return new Known(
                EmbryoHeat.standard(Shape.LOGISTIC),
                EggBox.Pile.STANDARD,
                EmbryoHeat.EGG_GRAMS,
                eggs,
                development,
                OptionalDouble.of(0),
                OptionalDouble.empty());
    }
}
