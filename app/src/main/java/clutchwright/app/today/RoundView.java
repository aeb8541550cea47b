package clutchwright.app.today;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Formats;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// The day's work in the order in which one walks through the house; to be printed, too.
///
/// @param first what cannot wait for the round to come there
/// @param stops place by place
/// @param unsexed young animals of which nobody has looked what they are
public record RoundView(LocalDate today, List<Due> first, List<Stop> stops, int unsexed)
        implements View {

    public RoundView {
        first = List.copyOf(first);
        stops = List.copyOf(stops);
    }

    /// @param rack to be fed at once, where it is one
    public record Stop(String name, Optional<Long> rack, List<Line> lines) {

        public Stop {
            lines = List.copyOf(lines);
        }
    }

    /// @param where within the stop, such as `tub 4`
    public record Line(Due due, String where) {}

    static RoundView of(Found found, Formats formats, ZoneId zone) {
        var due = new ArrayList<Due>();
        due.addAll(new DueWarmth(found, formats, zone).all());
        due.addAll(new DueClutches(found, formats).all());
        due.addAll(new DuePairings(found, formats).all());
        due.addAll(new DueYoung(found, formats).all());
        due.addAll(new DueMeals(found, formats).all());
        due.addAll(new DueWeights(found, formats).all());
        due.removeIf(each -> each.when() != Due.When.NOW);
        var first = due.stream().filter(Due::grave).sorted(Due.ORDER).toList();
        due.removeIf(Due::grave);
        due.sort(
                Comparator.comparing(Due::spot, Spot.WALK)
                        .thenComparing(Due::name, Numbered.ORDER)
                        .thenComparing(Due::kind));
        return new RoundView(found.today(), first, stops(found, due), found.unsexed());
    }

    private static List<Stop> stops(Found found, List<Due> walked) {
        var lines = new LinkedHashMap<String, List<Line>>();
        walked.forEach(
                due ->
                        lines.computeIfAbsent(due.spot().heading(), _ -> new ArrayList<>())
                                .add(new Line(due, due.spot().within())));
        return lines.entrySet().stream()
                .map(
                        stop ->
                                new Stop(
                                        stop.getKey(),
                                        found.racks().stream()
                                                .filter(rack -> rack.name().equals(stop.getKey()))
                                                .map(Found.InRack::id)
                                                .findFirst(),
                                        stop.getValue()))
                .toList();
    }

    public boolean nothingDue() {
        return first.isEmpty() && stops.isEmpty() && unsexed == 0;
    }

    @Override
    public String template() {
        return "today/round.jte";
    }

    @Override
    public String title() {
        return "The round of today";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.TODAY);
    }
}
