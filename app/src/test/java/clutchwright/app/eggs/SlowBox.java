package clutchwright.app.eggs;

import clutchwright.engine.incubation.BoxTrace;
import clutchwright.engine.incubation.BoxTrace.Beside;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.BoxTrace.Sample;
import clutchwright.engine.incubation.Celsius;
import java.util.ArrayList;
import java.util.SplittableRandom;

/// A box of eggs and its two sensors, written down from the equations of heat in the plainest way,
/// by Euler's steps of ten seconds, with nothing of the engine's.
///
/// @param noise 0 for none, 1 for as much as incubators have
/// @param offset whether the two sensors differ all the time, each box's by its own
record SlowBox(
        double wattsPerKelvin,
        double boxJoulesPerKelvin,
        int eggs,
        double development,
        double noise,
        boolean offset,
        long seed) {

    static final double SET = 31.2;

    private static final double STEP = 10;

    /// Any tub and any clutch in its last third.
    static SlowBox drawn(long seed, boolean offset) {
        var random = new SplittableRandom(seed);
        return new SlowBox(
                0.7 + 1.8 * random.nextDouble(),
                1500 + 2000 * random.nextDouble(),
                6 + random.nextInt(6),
                0.75 + 0.15 * random.nextDouble(),
                1,
                offset,
                seed);
    }

    BoxTrace trace(int hours, int minutes, Probe probe, Beside beside) {
        var random = new SplittableRandom(seed + 1_000_000);
        var grown = development;
        var room = 0.0;
        var box = SET + 0.3;
        var egg = box + 1;
        var lasting = 0.0;
        // Two sensors that were laid side by side still differ a little; so does a set point.
        var apart = offsetSdKelvin(beside) * noise * random.nextGaussian();
        var samples = new ArrayList<Sample>();
        // Half a day beforehand, so that all is warm.
        for (var step = -12 * 360; step * STEP <= hours * 3600.0; step++) {
            var seconds = step * STEP;
            room += drift(room, 5400, 0.1 * noise, random);
            lasting += drift(lasting, 3600, 0.03 * noise, random);
            var air = SET + room + noise * 0.15 * Math.sin(2 * Math.PI * seconds / 1800);
            if (step >= 0 && step % (minutes * 6) == 0) {
                var read = (probe == Probe.BOX ? box : egg) + lasting + apart;
                var beneath = beside == Beside.SENSOR ? air : SET;
                samples.add(
                        new Sample(
                                seconds / 3600,
                                new Celsius(beneath + white(beside, random)),
                                new Celsius(read + 0.03 * noise * random.nextGaussian())));
            }
            var rate = Math.pow(1.7, (egg - 31.7) / 10) / 57;
            var heat =
                    eggs
                            * 72_000
                            * rate
                            / 86_400
                            / (1 + Math.exp(-(grown - 0.68) / 0.1))
                            / 0.323884;
            var passed = 6 * 0.0095 * Math.pow(eggs, 0.8) * (egg - box);
            egg += STEP * (heat - passed) / (eggs * 85 * 3.4);
            box += STEP * (passed - wattsPerKelvin * (box - air)) / boxJoulesPerKelvin;
            if (step >= 0) {
                grown = Math.min(1, grown + rate * STEP / 86_400);
            }
        }
        return new BoxTrace(probe, beside, samples);
    }

    private double offsetSdKelvin(Beside beside) {
        return switch (beside) {
            case SENSOR -> offset ? 0.03 : 0;
            case SET_POINT -> offset ? 0.1 : 0;
        };
    }

    private double white(Beside beside, SplittableRandom random) {
        return beside == Beside.SENSOR ? 0.03 * noise * random.nextGaussian() : 0;
    }

    /// Back to nothing in so many seconds, and pushed away again.
    private static double drift(
            double now, double seconds, double spread, SplittableRandom random) {
        return -now * STEP / seconds
                + spread * Math.sqrt(2 * STEP / seconds) * random.nextGaussian();
    }
}
