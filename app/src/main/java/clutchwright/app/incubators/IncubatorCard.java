package clutchwright.app.incubators;

import clutchwright.app.loggers.Watched;
import clutchwright.app.wording.Formats;
import clutchwright.records.clutches.Box;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Sensors;
import clutchwright.records.store.Transaction;
import java.time.ZoneId;
import java.util.List;

/// One incubator: what stands in it, and what its sensors say.
///
/// @param boxes those with eggs that are waiting, in words
public record IncubatorCard(
        Incubator incubator, String setPoint, List<String> boxes, List<Trace> traces) {

    public IncubatorCard {
        boxes = List.copyOf(boxes);
        traces = List.copyOf(traces);
    }

    static IncubatorCard of(
            Transaction tx, Incubator incubator, int days, ZoneId zone, Formats formats) {
        return new IncubatorCard(
                incubator,
                formats.warmth(incubator.setPointCelsius()),
                new Incubators(tx)
                        .boxes(incubator).stream()
                                .map(box -> filled(tx, box, formats))
                                .filter(words -> !words.isEmpty())
                                .toList(),
                new Sensors(tx)
                        .of(incubator.id()).stream()
                                .map(sensor -> Watched.of(tx, sensor))
                                .map(watched -> Trace.of(tx, watched, days, zone, formats))
                                .toList());
    }

    public String link() {
        return "/eggs/incubators/" + incubator.id().value();
    }

    private static String filled(Transaction tx, Box box, Formats formats) {
        var eggs =
                tx.number(
                        "select count(*) from egg where box = ? and fate = 'INCUBATING'",
                        box.id().value());
        return eggs == 0
                ? ""
                : "%s with %s".formatted(box.label(), formats.count(eggs, "egg", "eggs"));
    }
}
