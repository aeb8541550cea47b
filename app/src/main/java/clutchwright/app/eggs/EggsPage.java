package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Transaction;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// The clutches of a season.
@Controller
public class EggsPage {

    private final Holding holding;

    EggsPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/eggs")
    public Reply show(Form query) {
        var found = holding.database().read(tx -> found(tx, query.text("season")));
        var boxes = found.boxes().stream().collect(Collectors.toMap(Box::id, Function.identity()));
        return Reply.show(
                new EggsView(
                        found.season(),
                        found.seasons(),
                        found.clutches().stream()
                                .sorted(Comparator.comparing(Clutch::laid))
                                .map(clutch -> ClutchCard.of(holding, clutch, boxes))
                                .toList()));
    }

    private Found found(Transaction tx, String asked) {
        var clutches = new Clutches(tx);
        var seasons = new TreeSet<Integer>(Comparator.reverseOrder());
        seasons.addAll(new Pairings(tx).seasons());
        var now = holding.today().getYear();
        seasons.add(now);
        if (asked.matches("\\d{4}")) {
            seasons.add(Integer.parseInt(asked));
            return found(tx, Integer.parseInt(asked), List.copyOf(seasons));
        }
        // The last season in which there is something to see, not one that is only planned.
        var season =
                seasons.stream()
                        .filter(year -> year == now || !clutches.ofSeason(year).isEmpty())
                        .findFirst()
                        .orElse(now);
        var ofSeason = found(tx, season, List.copyOf(seasons));
        // Eggs that are still waited for are at hand, whatever season they count in.
        var all = new LinkedHashMap<ClutchId, Clutch>();
        ofSeason.clutches().forEach(clutch -> all.put(clutch.id(), clutch));
        clutches.incubating().forEach(clutch -> all.putIfAbsent(clutch.id(), clutch));
        return new Found(season, ofSeason.seasons(), List.copyOf(all.values()), ofSeason.boxes());
    }

    private static Found found(Transaction tx, int season, List<Integer> seasons) {
        return new Found(season, seasons, new Clutches(tx).ofSeason(season), new Boxes(tx).all());
    }

    private record Found(
            int season, List<Integer> seasons, List<Clutch> clutches, List<Box> boxes) {}
}
