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

/// When a clutch pips, where no logger says how warm it is.
///
/// @param words in one sentence
/// @param basis what it rests on
public record ExpectedHatch(String words, String basis, Markup strip) {

    /// How far eggs in a good incubator may be from 31.7 °C: common practice, no source.
    private static final double UNREAD_KELVIN = 0.5;

    /// Past that nothing is left of the forecast.
    private static final double OVER = 0.999;

    /// @param hatched whether any has pipped
    static ExpectedHatch of(LocalDate laid, LocalDate today, boolean hatched, Formats formats) {
        var unread = Math.log(DevelopmentRate.Q10) / 10 * UNREAD_KELVIN;
        var forecast =
                new HatchModel(DevelopmentRate.standard(), Math.hypot(HatchModel.SPREAD, unread))
                        .constant(DevelopmentRate.REFERENCE);
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
                words, HatchWords.withoutLogger(formats), strip(laid, today, forecast, words));
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
