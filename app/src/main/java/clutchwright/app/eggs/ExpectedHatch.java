package clutchwright.app.eggs;

import clutchwright.app.loggers.Pipping;
import clutchwright.app.parts.CalendarStrip;
import clutchwright.app.parts.CalendarStrip.Days;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HatchWords;
import clutchwright.engine.incubation.HatchForecast;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/// When a clutch pips, as it is told and drawn.
///
/// @param words in one sentence
/// @param basis what it rests on
public record ExpectedHatch(String words, String basis, Markup strip) {

    static ExpectedHatch of(Pipping pipping, LocalDate today, Formats formats) {
        var forecast = pipping.on(today);
        var words =
                HatchWords.expected(
                        pipping.date(forecast.mean()),
                        pipping.date(forecast.quantile(0.05)),
                        pipping.date(forecast.quantile(0.95)),
                        formats);
        return new ExpectedHatch(
                words,
                pipping.felt()
                        .map(
                                found ->
                                        HatchWords.bySensor(
                                                found.sensor(),
                                                found.amongEggs(),
                                                found.development(),
                                                formats))
                        .orElseGet(() -> HatchWords.withoutLogger(formats)),
                strip(pipping, today, forecast, words));
    }

    private static Markup strip(
            Pipping pipping, LocalDate today, HatchForecast forecast, String words) {
        return CalendarStrip.draw(
                day -> forecast.by(ChronoUnit.DAYS.between(pipping.laid(), day) + 1.0),
                new Days(
                        pipping.date(forecast.quantile(0.25)),
                        pipping.date(forecast.quantile(0.75))),
                new Days(
                        pipping.date(forecast.quantile(0.05)),
                        pipping.date(forecast.quantile(0.95))),
                today,
                words);
    }
}
