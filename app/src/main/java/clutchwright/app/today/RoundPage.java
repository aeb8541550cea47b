package clutchwright.app.today;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// The day's work in the order in which one walks through the house.
@Controller
public class RoundPage {

    /// More animals nobody feeds in one round.
    private static final int MOST_MEALS = 1_000;

    private final Holding holding;
    private final Preferring preferring;

    RoundPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(Back.ROUND)
    public Reply show() {
        var zone = holding.database().clock().getZone();
        var found =
                holding.database().read(tx -> Found.read(tx, holding.today(), zone, MOST_MEALS));
        return Reply.show(RoundView.of(found, new Formats(preferring.preferences()), zone));
    }
}
