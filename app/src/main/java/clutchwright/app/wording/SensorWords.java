package clutchwright.app.wording;

import clutchwright.engine.incubation.SensorAlarm;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/// What sensors say, and what that calls for.
public record SensorWords(Formats formats, ZoneId zone) {

    public static final String CAUTION =
            "Limits are common practice for royal pythons, no source; this page is no safety device. Use a cut-out and an alarm that do not hang on a computer.";

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm");

    /// `14:05 on 3 May`.
    public String at(Instant moment) {
        var local = moment.atZone(zone);
        return "%s on %s".formatted(TIME.format(local), formats.dayOfYear(local.toLocalDate()));
    }

    /// What is wrong, and since when.
    public String of(SensorAlarm alarm) {
        var degrees = formats.warmth(alarm.extreme().degrees());
        return switch (alarm.kind()) {
            case CRITICAL ->
                    "Critical: up to %s since %s. Cool it now.".formatted(degrees, at(alarm));
            case TOO_WARM -> "Too warm: up to %s since %s.".formatted(degrees, at(alarm));
            case TOO_COLD -> "Too cold: down to %s since %s.".formatted(degrees, at(alarm));
            case TOO_FAST ->
                    "Changing too fast: %s now, %s or more within the hour since %s."
                            .formatted(degrees, formats.warmthDifference(2), at(alarm));
            case WARM -> "Warm for long: up to %s since %s.".formatted(degrees, at(alarm));
            case COOL -> "Cool for long: down to %s since %s.".formatted(degrees, at(alarm));
            case SILENT -> "Silent since %s; it last said %s.".formatted(at(alarm), degrees);
        };
    }

    /// On what that rests.
    public String basis(SensorAlarm alarm) {
        return switch (alarm.kind()) {
            case CRITICAL -> limit(35, "half an hour");
            case TOO_WARM -> limit(33.333, "an hour");
            case TOO_COLD -> limit(27, "half a day");
            case WARM -> limit(32.8, "half a day");
            case COOL -> limit(29.5, "a day");
            case TOO_FAST -> "our judgement: that much within an hour";
            case SILENT -> "by the time that you allow it";
        };
    }

    private String limit(double celsius, String lasting) {
        return "%s for %s, common practice".formatted(formats.warmth(celsius), lasting);
    }

    private String at(SensorAlarm alarm) {
        return at(alarm.since());
    }
}
