package clutchwright.app.eggs;

import clutchwright.app.parts.CalendarStrip;
import clutchwright.app.parts.CalendarStrip.Days;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HatchWords;
import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.engine.incubation.HatchForecast;
import clutchwright.engine.incubation.HatchModel;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/// When a clutch pips: by what a sensor says of its warmth, else as if it were usual.
///
/// @param words in one sentence
/// @param basis what it rests on
public record ExpectedHatch(String words, String basis, Markup strip) {

    /// How far eggs in a good incubator may be from 31.7 °C: common practice, no source.
    private static final double UNREAD_KELVIN = 0.5;

    /// Past that nothing is left of the forecast.
    private static final double OVER = 0.999;

    /// @param hatched whether any has pipped
    /// @param felt what the eggs felt, where a sensor says so
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    static ExpectedHatch of(
            LocalDate laid,
            LocalDate today,
            boolean hatched,
            Optional<FeltSoFar> felt,
            Formats formats) {
        var forecast = felt.map(ExpectedHatch::after).orElseGet(ExpectedHatch::unread);
        double day = ChronoUnit.DAYS.between(laid, today);
        if (!hatched && forecast.by(day) < OVER) {
            forecast = forecast.notBy(day);
        }
        var words =
                HatchWords.expected(
                        date(laid, forecast.mean()),
                        date(laid, forecast.quantile(0.05)),
                        date(laid, forecast.quantile(0.95)),
                        formats);
        return new ExpectedHatch(
                words,
                felt.map(
                                found ->
                                        HatchWords.bySensor(
                                                found.sensor(),
                                                found.amongEggs(),
                                                found.development(),
                                                formats))
                        .orElseGet(() -> HatchWords.withoutLogger(formats)),
                strip(laid, today, forecast, words));
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

    private static Markup strip(
            LocalDate laid, LocalDate today, HatchForecast forecast, String words) {
        return CalendarStrip.draw(
                day -> forecast.by(ChronoUnit.DAYS.between(laid, day) + 1.0),
                new Days(date(laid, forecast.quantile(0.25)), date(laid, forecast.quantile(0.75))),
                new Days(date(laid, forecast.quantile(0.05)), date(laid, forecast.quantile(0.95))),
                today,
                words);
    }

    private static LocalDate date(LocalDate laid, double days) {
        return laid.plusDays((long) Math.floor(days));
    }
}
