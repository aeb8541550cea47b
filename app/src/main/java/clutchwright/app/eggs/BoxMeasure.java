package clutchwright.app.eggs;

import clutchwright.app.loggers.PairedLog;
import clutchwright.app.wording.ConductanceWords;
import clutchwright.engine.incubation.BoxTrace;
import clutchwright.engine.incubation.BoxTrace.Beside;
import clutchwright.engine.incubation.BoxTrace.Probe;
import clutchwright.engine.incubation.BoxTrace.Sample;
import clutchwright.engine.incubation.Celsius;
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
import java.util.Optional;
import java.util.OptionalDouble;

/// What a box lets out, by a logger's file of it.
///
/// @param setPointCelsius of the incubator, where the file has no column of its air
/// @param development of the eggs at the first reading
/// @param offsetKelvin by which the box's sensor reads more, both side by side
/// @param boxJoulesPerKelvin of substrate, water and tub, where that is known
@SuppressWarnings("OptionalUsedAsFieldOrParameterType")
record BoxMeasure(
        Probe probe,
        Optional<Double> setPointCelsius,
        int eggs,
        double development,
        Optional<Double> offsetKelvin,
        double eggGrams,
        Optional<Double> boxJoulesPerKelvin,
        Shape shape) {

    sealed interface Result {

        /// @param notes what it rests on, as sentences
        record Found(Told told, HeatBalance balance, List<String> notes) implements Result {

            public Found {
                notes = List.copyOf(notes);
            }
        }

        /// @param why as the end of a sentence that began with the file's name
        record Refused(String why) implements Result {}
    }

    Result of(PairedLog.Understood log) {
        var trace = trace(log);
        return switch (HeatBalance.of(trace, known(shape))) {
            case Stated.TooShort found -> new Result.Refused(ConductanceWords.tooShort(found));
            case Stated.NoWarmth found -> new Result.Refused(ConductanceWords.cold(found));
            case Stated.Equations(var balance) ->
                    switch (LeastSquares.estimate(balance)) {
                        case ConductanceEstimate.TooVague vague ->
                                new Result.Refused(ConductanceWords.vague(vague, probe));
                        case Told told ->
                                new Result.Found(told, balance, notes(balance, trace, log.notes()));
                    };
        };
    }

    private List<String> notes(HeatBalance balance, BoxTrace trace, List<String> remarks) {
        var notes = new ArrayList<>(remarks);
        notes.addAll(
                ConductanceWords.notes(
                        balance,
                        trace.beside(),
                        probe,
                        offsetKelvin.isPresent(),
                        byTheOtherCurve(trace)));
        return notes;
    }

    /// Which is as long and as steady, and late enough if this one is.
    private double byTheOtherCurve(BoxTrace trace) {
        var other = shape == Shape.LOGISTIC ? Shape.EXPONENTIAL : Shape.LOGISTIC;
        return HeatBalance.of(trace, known(other)) instanceof Stated.Equations(var balance)
                ? 1 / LeastSquares.kelvinPerWatt(balance)
                : Double.NaN;
    }

    private BoxTrace trace(PairedLog.Understood log) {
        return new BoxTrace(
                probe,
                log.hasIncubator() ? Beside.SENSOR : Beside.SET_POINT,
                log.pairs().stream()
                        .map(
                                pair ->
                                        new Sample(
                                                pair.hours(),
                                                pair.incubator()
                                                        .or(() -> setPointCelsius.map(Celsius::new))
                                                        .orElseThrow(),
                                                pair.read()))
                        .toList());
    }

    private Known known(Shape curve) {
        return new Known(
                EmbryoHeat.standard(curve),
                EggBox.Pile.STANDARD,
                eggGrams,
                eggs,
                development,
                offsetKelvin.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                boxJoulesPerKelvin.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }
}
