package clutchwright.engine.incubation;

import clutchwright.engine.incubation.BoxTrace.Beside;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/// A trace of a box of eggs as equations for what the box lets out: in each hour the heat that goes
/// out is the rise times the conductance. Solving them is left to a library.
///
/// Source of the formulas: `docs/mathematics.md`, "A box's conductance by a logger".
///
/// @param hours one equation each
/// @param beside what the box was read beside
/// @param offsetSdKelvin of what is not known of the two sensors' difference
/// @param hoursUnsteady left out
/// @param hoursWithoutReading left out
public record HeatBalance(
        List<Hour> hours,
        Beside beside,
        double offsetSdKelvin,
        int hoursUnsteady,
        int hoursWithoutReading) {

    /// An equation: `riseKelvin = watts / conductance`, and what is not known of either.
    ///
    /// @param watts that leave the box
    /// @param riseKelvin of the box's air above the incubator's
    /// @param wattsSd of what the box and the eggs take up as they warm
    /// @param riseSdKelvin of the eggs above the box's air, where the sensor lies among the eggs
    public record Hour(double watts, double riseKelvin, double wattsSd, double riseSdKelvin) {}

    /// What else is known.
    ///
    /// @param eggs live ones
    /// @param development at the first sample, 0 to 1
    /// @param offsetKelvin by which the box's sensor read more than the incubator's, both side by
    ///     side
    /// @param boxJoulesPerKelvin of air, substrate, water and tub, where it is known
    public record Known(
            EmbryoHeat heat,
            EggBox.Pile pile,
            double eggGrams,
            int eggs,
            double development,
            OptionalDouble offsetKelvin,
            OptionalDouble boxJoulesPerKelvin) {}

    /// The equations, or why there are none.
    public sealed interface Stated {

        record Equations(HeatBalance balance) implements Stated {}

        /// @param hours of the longest steady stretch
        record TooShort(int hours, int unsteady, int withoutReading) implements Stated {}

        /// @param watts of all eggs
        record NoWarmth(double watts) implements Stated {}
    }

    /// Less says nothing of what is steady.
    public static final int FEWEST_HOURS = 6;

    private static final double LEAST_WATTS = 0.02;

    /// Judgements of ours, no source: two sensors that lay side by side for two hours, and two that
    /// did not; a set point, with the logger first hung into the incubator's air, and without.
    private static final double PAIRED_SENSORS_KELVIN = 0.03;

    private static final double SENSORS_KELVIN = 0.2;
    private static final double PAIRED_SET_POINT_KELVIN = 0.1;
    private static final double SET_POINT_KELVIN = 0.3;

    /// Beside a set point most traces tell too little. Those that tell anything are the ones whose
    /// errors made the rise look large, so that their interval has to be wider: by simulation, no
    /// source. At the limit of what is told, the lower end stays above zero.
    private static final double CHOSEN = 1.25;

    private static final double USUAL_BOX_JOULES_PER_KELVIN = 2500;
    private static final double USUAL_BOX_SD = 1000;

    /// The pass from eggs to box is known to a factor of two.
    private static final double PILE_LOG_SD = 0.35;

    public HeatBalance {
        hours = List.copyOf(hours);
    }

    public static Stated of(BoxTrace trace, Known known) {
        var first = trace.samples().isEmpty() ? DevelopmentRate.REFERENCE : readFirst(trace);
        var begin = watts(known, known.development(), first);
        if (begin < LEAST_WATTS) {
            return new Stated.NoWarmth(begin);
        }
        var steady = SteadyHours.of(trace);
        if (steady.hours().size() < FEWEST_HOURS) {
            return new Stated.TooShort(
                    steady.hours().size(), steady.unsteady(), steady.withoutReading());
        }
        return new Stated.Equations(
                new HeatBalance(
                        equations(trace, known, steady),
                        trace.beside(),
                        offsetSd(trace.beside(), known.offsetKelvin().isPresent()),
                        steady.unsteady(),
                        steady.withoutReading()));
    }

    private static Celsius readFirst(BoxTrace trace) {
        return trace.samples().getFirst().read();
    }

    private static double offsetSd(Beside beside, boolean paired) {
        return switch (beside) {
            case SENSOR -> paired ? PAIRED_SENSORS_KELVIN : SENSORS_KELVIN;
            case SET_POINT -> paired ? PAIRED_SET_POINT_KELVIN : SET_POINT_KELVIN;
        };
    }

    private static List<Hour> equations(BoxTrace trace, Known known, SteadyHours steady) {
        var mass = new EggBox(known.heat(), Conductance.STANDARD, known.pile(), known.eggGrams());
        var eggs = ThermalMass.of(mass, known.eggs(), 1).eggJoulesPerKelvin();
        var box = known.boxJoulesPerKelvin().orElse(USUAL_BOX_JOULES_PER_KELVIN);
        var boxSd = known.boxJoulesPerKelvin().isPresent() ? 0 : USUAL_BOX_SD;
        var pass = known.pile().wattsPerKelvin(known.eggs());
        var hours = new ArrayList<Hour>();
        var grown = known.development();
        var rate = known.heat().rate().perDay(readFirst(trace));
        var until = 0.0;
        for (var hour : steady.hours()) {
            grown = Math.min(1, grown + rate * (hour.at() - until) / 24);
            until = hour.at();
            var read = new Celsius(hour.read() - known.offsetKelvin().orElse(0));
            var egg =
                    switch (trace.probe()) {
                        case EGGS -> read;
                        case BOX -> eggs(known, grown, read);
                    };
            rate = known.heat().rate().perDay(egg);
            var heat = watts(known, grown, egg);
            // As their heat grows the eggs draw away from the box.
            var next = watts(known, Math.min(1, grown + rate / 24), egg);
            var apart = (next - heat) / pass;
            var eggDrift =
                    switch (trace.probe()) {
                        case EGGS -> hour.driftPerHour();
                        case BOX -> hour.driftPerHour() + apart;
                    };
            var passed = heat - eggs * eggDrift / 3600;
            var over =
                    switch (trace.probe()) {
                        case EGGS -> passed / pass;
                        case BOX -> 0;
                    };
            var boxDrift = eggDrift - apart;
            hours.add(
                    new Hour(
                            passed - box * boxDrift / 3600,
                            read.degrees() - hour.incubator() - over,
                            boxSd * boxDrift / 3600,
                            over * PILE_LOG_SD));
        }
        return hours;
    }

    /// Of all eggs.
    private static double watts(Known known, double grown, Celsius egg) {
        return known.eggs() * known.heat().watts(grown, egg, known.eggGrams());
    }

    /// The eggs' temperature in box air that was read: it rises with their heat, and that with it.
    private static Celsius eggs(Known known, double grown, Celsius box) {
        var egg = box;
        for (var round = 0; round < 20; round++) {
            egg =
                    box.plus(
                            Math.min(
                                    10,
                                    watts(known, grown, egg)
                                            / known.pile().wattsPerKelvin(known.eggs())));
        }
        return egg;
    }

    /// What a solution leaves of each equation, in K.
    public List<Double> residuals(double kelvinPerWatt) {
        return hours.stream().map(h -> h.riseKelvin() - h.watts() * kelvinPerWatt).toList();
    }

    public double meanRiseKelvin() {
        return mean(Hour::riseKelvin);
    }

    /// How many slow waves what is left over is looked at by. As many as E. Lazarus, D. Lewis,
    /// J. Stock and M. Watson advise (2018, Journal of Business and Economic Statistics 36:541);
    /// beside a set point half of them, since the incubator's own wandering, which nothing read
    /// there, hangs together for longer: the quicker waves would make it look smaller than it is.
    public int waves() {
        var share =
                switch (beside) {
                    case SENSOR -> 0.4;
                    case SET_POINT -> 0.2;
                };
        return (int) Math.max(1, share * Math.pow(hours.size(), 2.0 / 3));
    }

    /// @param reach for 95 % of Student's distribution with [#waves] degrees of freedom
    public ConductanceEstimate judged(double kelvinPerWatt, double reach) {
        var squares = hours.stream().mapToDouble(h -> h.watts() * h.watts()).sum();
        var noise = Math.sqrt(longRun(residuals(kelvinPerWatt))) / squares;
        // What is the same in all hours does not go out in many.
        var same =
                Math.sqrt(
                                square(offsetSdKelvin * sum(Hour::watts))
                                        + square(kelvinPerWatt * sum(h -> h.watts() * h.wattsSd()))
                                        + square(sum(h -> h.watts() * h.riseSdKelvin())))
                        / squares;
        var half = Math.hypot(reach * noise, 1.96 * same);
        var told =
                switch (beside) {
                    case SENSOR -> half;
                    case SET_POINT -> half * CHOSEN;
                };
        return ConductanceEstimate.of(
                kelvinPerWatt, Math.hypot(noise, same), half, told, meanRiseKelvin());
    }

    /// Variance of the sum of what each hour pulls, by its slow waves: however the hours hang
    /// together, these do not.
    private double longRun(List<Double> residuals) {
        var n = hours.size();
        var sum = 0.0;
        for (var wave = 1; wave <= waves(); wave++) {
            var weight = 0.0;
            for (var k = 0; k < n; k++) {
                weight +=
                        Math.cos(Math.PI * wave * (k + 0.5) / n)
                                * hours.get(k).watts()
                                * residuals.get(k);
            }
            sum += 2 * weight * weight;
        }
        return sum / waves();
    }

    private double mean(ToDoubleFunction<Hour> value) {
        return sum(value) / hours.size();
    }

    private double sum(ToDoubleFunction<Hour> value) {
        return hours.stream().mapToDouble(value).sum();
    }

    private static double square(double x) {
        return x * x;
    }
}
