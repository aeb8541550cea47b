package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.engine.season.LayPriors;
import clutchwright.records.LayAssumed;
import clutchwright.records.settings.Settings;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// What is taken to be known of lay days before the records speak.
@Controller
public class LayDaysPage {

    private static final String PATH = "/settings/lay-days";

    private final Holding holding;

    LayDaysPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping(PATH)
    public Reply show() {
        return Reply.show(new LayDaysView(LayPriorsForm.of(now())));
    }

    @PostMapping(PATH)
    public Reply save(Form form) {
        return switch (LayPriorsForm.read(form, now())) {
            case Entry.Understood<LayPriors>(var priors) ->
                    put(priors).going(PATH, "Saved. The forecasts follow at once.");
            case Entry.Faulty<LayPriors>(var faulty) -> Reply.faulty(new LayDaysView(faulty));
        };
    }

    @PostMapping(PATH + "/standard")
    public Reply standard() {
        return put(LayPriors.STANDARD).going(PATH, "As it was at first.");
    }

    private Written<LayPriors> put(LayPriors priors) {
        return Written.to(
                holding,
                "Changed what is taken of lay days",
                tx -> {
                    LayAssumed.put(new Settings(tx), priors);
                    return priors;
                });
    }

    private LayPriors now() {
        return holding.database().read(tx -> LayAssumed.read(new Settings(tx)));
    }
}
