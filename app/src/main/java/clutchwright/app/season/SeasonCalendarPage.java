package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.LayOutlook;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// The season at a glance: all females over one calendar.
@Controller
public class SeasonCalendarPage {

    private final Holding holding;
    private final Preferring preferring;

    SeasonCalendarPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/season/calendar")
    public Reply show(Form query) {
        var formats = new Formats(preferring.preferences());
        var asked = query.text("season");
        var season =
                asked.matches("(19|20)\\d\\d")
                        ? Integer.parseInt(asked)
                        : new SeasonList(holding, formats).current();
        var courses = holding.database().read(tx -> courses(tx, season));
        var strip = SeasonStrip.over(List.copyOf(courses.values()), holding.today(), formats);
        return Reply.show(
                new SeasonCalendarView(
                        season,
                        holding.database().read(tx -> seasons(tx, season)),
                        strip.months(),
                        courses.entrySet().stream()
                                .map(
                                        each ->
                                                new SeasonCalendarView.Row(
                                                        Mate.of(holding, each.getKey()),
                                                        sires(each.getValue()),
                                                        strip.row(each.getValue())))
                                .toList()));
    }

    private String sires(SeasonCourse course) {
        return course.pairings().stream()
                .map(pairing -> Mate.of(holding, pairing.sire()).tag())
                .collect(Collectors.joining(", "));
    }

    private static List<Integer> seasons(Transaction tx, int season) {
        var seasons = new TreeSet<Integer>(Comparator.reverseOrder());
        seasons.addAll(new Pairings(tx).seasons());
        seasons.add(season);
        return List.copyOf(seasons);
    }

    /// Who lays, or laid, first in front; whose day nothing says at the end.
    private static Map<AnimalId, SeasonCourse> courses(Transaction tx, int season) {
        var pairings = new Pairings(tx);
        var signs = pairings.signsOfSeason(season);
        var clutches = new Clutches(tx).ofPairingsIn(season);
        var expected = LayOutlook.of(tx, season);
        var courses = new LinkedHashMap<AnimalId, SeasonCourse>();
        pairings.ofSeason(season).stream()
                .collect(
                        Collectors.groupingBy(
                                Pairing::dam, LinkedHashMap::new, Collectors.toList()))
                .forEach(
                        (dam, hers) -> {
                            var ids = hers.stream().map(Pairing::id).toList();
                            courses.put(
                                    dam,
                                    new SeasonCourse(
                                            hers,
                                            signs.stream()
                                                    .filter(sign -> ids.contains(sign.pairing()))
                                                    .toList(),
                                            clutches.stream()
                                                    .filter(
                                                            clutch ->
                                                                    clutch.pairing()
                                                                            .filter(ids::contains)
                                                                            .isPresent())
                                                    .toList(),
                                            Optional.ofNullable(expected.get(dam))));
                        });
        var sorted = new LinkedHashMap<AnimalId, SeasonCourse>();
        courses.entrySet().stream()
                .sorted(Comparator.comparing(each -> layDay(each.getValue())))
                .forEach(each -> sorted.put(each.getKey(), each.getValue()));
        return sorted;
    }

    private static LocalDate layDay(SeasonCourse course) {
        return course.clutches().stream()
                .map(clutch -> clutch.laid())
                .findFirst()
                .or(() -> course.expected().map(LayOutlook.Expected::about))
                .orElse(LocalDate.MAX);
    }
}
