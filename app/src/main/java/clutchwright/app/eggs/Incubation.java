package clutchwright.app.eggs;

import clutchwright.app.wording.Formats;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/// How far a clutch is, by rules of thumb: common practice for royal pythons, no forecast.
///
/// 55 to 60 days at 31.5 to 32 °C, candling from the first days on; eggs at 32.8 °C need attention,
/// at 33.3 °C they are in danger.
public record Incubation(LocalDate laid, LocalDate today) {

    static final int EARLIEST = 55;
    static final int LATEST = 60;
    static final double SET_LOW = 31.5;
    static final double SET_HIGH = 32.0;
    static final double WARN = 32.8;
    static final double ALARM = 33.3;

    /// Days since laying; 0 on the day itself.
    public long day() {
        return Math.max(0, ChronoUnit.DAYS.between(laid, today));
    }

    /// Whether hatching is to be looked for by now.
    public boolean isDue() {
        return day() >= EARLIEST;
    }

    /// Well past what is common.
    public boolean isLate() {
        return day() > LATEST + 7L;
    }

    public String window(Formats formats) {
        return formats.dayOfYear(laid.plusDays(EARLIEST))
                + " to "
                + formats.dayOfYear(laid.plusDays(LATEST));
    }

    /// On what the window rests.
    public static String basis(Formats formats) {
        return "%d to %d days at %s to %s, common practice"
                .formatted(EARLIEST, LATEST, formats.warmth(SET_LOW), formats.warmth(SET_HIGH));
    }

    /// The caution about warmth.
    public static String limits(Formats formats) {
        return "A probe among the eggs should never read more than %s; at %s act at once. Common practice; your own reference thermometer decides."
                .formatted(formats.warmth(WARN), formats.warmth(ALARM));
    }
}
