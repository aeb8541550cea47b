package clutchwright.app.loggers;

import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.engine.incubation.HatchForecast;
import clutchwright.engine.incubation.HatchModel;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Fate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/// When a clutch's eggs pip: by what a sensor says of their warmth, else as if it were usual.
///
/// @param forecast in days after laying, whatever has become of it since
/// @param hatched whether any has pipped already
/// @param felt by what sensor, if by any
@SuppressWarnings("OptionalUsedAsFieldOrParameterType")
public record Pipping(
        LocalDate laid, HatchForecast forecast, boolean hatched, Optional<FeltSoFar> felt) {

    /// How far eggs in a good incubator may be from 31.7 °C: common practice, no source.
    private static final double UNREAD_KELVIN = 0.5;

    /// Past that nothing is left of the forecast.
    private static final double OVER = 0.999;

    public static Pipping of(Clutch clutch, Optional<FeltSoFar> felt) {
        return new Pipping(
                clutch.laid(),
                felt.map(Pipping::after).orElseGet(Pipping::unread),
                clutch.eggs().stream().anyMatch(egg -> egg.fate() instanceof Fate.Hatched),
                felt);
    }

    /// As it stands on a day on which none has pipped before.
    public HatchForecast on(LocalDate today) {
        double day = ChronoUnit.DAYS.between(laid, today);
        return hatched || forecast.by(day) >= OVER ? forecast : forecast.notBy(day);
    }

    /// The day so long after laying.
    public LocalDate date(double days) {
        return laid.plusDays((long) Math.floor(days));
    }

    private static HatchForecast unread() {
        var unread = Math.log(DevelopmentRate.Q10) / 10 * UNREAD_KELVIN;
        return new HatchModel(DevelopmentRate.standard(), Math.hypot(HatchModel.SPREAD, unread))
                .constant(DevelopmentRate.REFERENCE);
    }

    /// It goes on as it was on average, once a day of it is known.
    private static HatchForecast after(FeltSoFar felt) {
        var development = felt.development();
        return HatchModel.STANDARD.after(
                development,
                development.lastDay() >= 1
                        ? development.reached() / development.lastDay()
                        : DevelopmentRate.standard().perDay(DevelopmentRate.REFERENCE));
    }
}
