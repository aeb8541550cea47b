package clutchwright.app.today;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.today.CalendarText.Event;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.settings.Settings;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/// The day's work and the days to come, for a phone's own calendar.
///
/// The feed is the one thing that is read without signing in: who has the address reads it.
@Controller
public class CalendarPage {

    private static final MediaType CALENDAR =
            new MediaType("text", "calendar", StandardCharsets.UTF_8);
    private static final String PAGE = "/today/calendar";

    private final Holding holding;
    private final Preferring preferring;
    private final Clock clock;

    CalendarPage(Holding holding, Preferring preferring, Clock clock) {
        this.holding = holding;
        this.preferring = preferring;
        this.clock = clock;
    }

    @GetMapping(PAGE)
    public Reply show() {
        return Reply.show(new CalendarView(holding.database().read(CalendarSecret::isMade), ""));
    }

    /// Makes the address, or another one in place of it.
    @PostMapping(PAGE)
    public Reply make() {
        var written = Written.to(holding, "Made a calendar address", CalendarSecret::make);
        return Reply.show(
                new CalendarView(
                        true,
                        ServletUriComponentsBuilder.fromCurrentContextPath()
                                .path("/calendar/" + written.result() + ".ics")
                                .toUriString()));
    }

    @PostMapping(PAGE + "/revoke")
    public Reply revoke() {
        Written.to(
                holding,
                "Revoked the calendar address",
                tx -> new Settings(tx).remove(CalendarSecret.SETTING));
        return Reply.go(PAGE).saying("The address is void. Phones that knew it get nothing more.");
    }

    @GetMapping("/calendar/{secret:[A-Za-z0-9_-]{20,100}}.ics")
    public ResponseEntity<byte[]> feed(@PathVariable String secret) {
        if (!holding.database().read(tx -> CalendarSecret.fits(tx, secret))) {
            return ResponseEntity.notFound().cacheControl(CacheControl.noStore()).build();
        }
        var found =
                holding.database().read(tx -> Found.read(tx, holding.today(), clock.getZone(), 0));
        return ResponseEntity.ok()
                .contentType(CALENDAR)
                .cacheControl(CacheControl.noStore())
                .body(
                        new CalendarText(events(found), clock.instant())
                                .toString()
                                .getBytes(StandardCharsets.UTF_8));
    }

    private List<Event> events(Found found) {
        var formats = new Formats(preferring.preferences());
        var due = new ArrayList<Due>();
        due.addAll(new DueClutches(found, formats).all());
        due.addAll(new DuePairings(found, formats).all());
        return due.stream()
                .map(
                        each ->
                                new Event(
                                        uid(each),
                                        // What is overdue is for today.
                                        each.from().isBefore(found.today())
                                                ? found.today()
                                                : each.from(),
                                        each.name() + ": " + each.what(),
                                        each.basis()))
                .toList();
    }

    /// By what it is about, without the step that it has come to.
    private static String uid(Due due) {
        return due.kind().name().toLowerCase(Locale.ROOT)
                + due.link().replaceAll("/(hatch|candle)$", "").replaceAll("[^A-Za-z0-9]+", "-")
                + "@clutchwright";
    }
}
