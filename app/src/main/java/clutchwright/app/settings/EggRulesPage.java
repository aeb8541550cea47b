package clutchwright.app.settings;

import clutchwright.app.holding.EggRules;
import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.engine.incubation.Conductance;
import clutchwright.records.settings.Settings;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// What the house goes by when it puts eggs into boxes.
@Controller
public class EggRulesPage {

    private static final String PATH = "/settings/eggs";
    private static final int MOST_EGGS = 60;

    private final Holding holding;

    EggRulesPage(Holding holding) {
        this.holding = holding;
    }

    /// A box that was measured comes with the address.
    @GetMapping(PATH)
    public Reply show(Form query) {
        var rules = holding.database().read(tx -> EggRules.read(new Settings(tx)));
        var measured = query.text("ua");
        return Reply.show(
                new EggRulesView(
                        Form.EMPTY
                                .with("most", Integer.toString(rules.mostInBox()))
                                .with(
                                        "ua",
                                        measured.isEmpty()
                                                ? rules.usualBox()
                                                        .map(box -> box.wattsPerKelvin() + "")
                                                        .orElse("")
                                                : measured)));
    }

    @PostMapping(PATH)
    public Reply save(Form form) {
        var fields = new Fields(form);
        var most = fields.whole("most", 1, MOST_EGGS);
        Fields.Read<Optional<Double>> box =
                form.text("ua").isBlank()
                        ? fields.understood(Optional.empty())
                        : fields.number("ua", 0.3, 20).map(Optional::of);
        return switch (fields.into(
                () -> new EggRules(most.value(), box.value().map(Conductance::new)))) {
            case Entry.Faulty<EggRules>(var faulty) -> Reply.faulty(new EggRulesView(faulty));
            case Entry.Understood<EggRules>(var rules) -> {
                var written =
                        Written.to(
                                holding,
                                "Changed the rules for eggs",
                                tx -> {
                                    rules.write(new Settings(tx));
                                    return rules;
                                });
                yield written.going(PATH, "Saved.");
            }
        };
    }
}
