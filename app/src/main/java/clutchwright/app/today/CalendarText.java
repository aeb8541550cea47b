package clutchwright.app.today;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/// The day's work as an iCalendar object (RFC 5545): whole days, one event each.
///
/// @param events in any order
/// @param written when it was made
record CalendarText(List<Event> events, Instant written) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /// RFC 5545, section 3.1: no line has more octets, its end not counted.
    private static final int LINE_OCTETS = 75;

    CalendarText {
        events = List.copyOf(events);
    }

    /// @param uid the same for the same thing, however often it is read
    record Event(String uid, LocalDate day, String summary, String description) {}

    @Override
    public String toString() {
        var text = new StringBuilder();
        line(text, "BEGIN:VCALENDAR");
        line(text, "VERSION:2.0");
        line(text, "PRODID:-//Clutchwright//Today//EN");
        line(text, "CALSCALE:GREGORIAN");
        line(text, "METHOD:PUBLISH");
        line(text, "X-WR-CALNAME:Clutchwright");
        line(text, "REFRESH-INTERVAL;VALUE=DURATION:PT6H");
        for (var event : events) {
            line(text, "BEGIN:VEVENT");
            line(text, "UID:" + escaped(event.uid()));
            line(text, "DTSTAMP:" + STAMP.format(written));
            line(text, "DTSTART;VALUE=DATE:" + DAY.format(event.day()));
            line(text, "DTEND;VALUE=DATE:" + DAY.format(event.day().plusDays(1)));
            line(text, "SUMMARY:" + escaped(event.summary()));
            line(text, "DESCRIPTION:" + escaped(event.description()));
            line(text, "TRANSP:TRANSPARENT");
            line(text, "END:VEVENT");
        }
        line(text, "END:VCALENDAR");
        return text.toString();
    }

    /// RFC 5545, section 3.3.11.
    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\\n")
                .replace("\n", "\\n")
                .replace("\r", "\\n");
    }

    /// Folded between characters, never within one.
    private static void line(StringBuilder text, String line) {
        var octets = 0;
        for (var character : line.codePoints().mapToObj(Character::toString).toList()) {
            var size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > LINE_OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(character);
            octets += size;
        }
        text.append("\r\n");
    }
}
