package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// The sheet that goes with a clutch, to be printed.
@Controller
public class SheetPage {

    private final Holding holding;
    private final Preferring preferring;

    SheetPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/{id:\\d+}/sheet")
    public Reply show(@PathVariable("id") long id) {
        return ClutchReading.find(holding, id)
                .<Reply>map(found -> Reply.show(view(found)))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private SheetView view(ClutchReading found) {
        var bench = new Bench(holding, found, preferring.preferences().tagPattern());
        return new SheetView(
                found.clutch(),
                Couple.of(holding, found.clutch().parentage()),
                bench.hatchlings(Optional.empty()),
                holding.catalogue(found.clutch().species()).species().latinName(),
                holding.today());
    }
}
