package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.steering.PlanRules;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.records.settings.Settings;
import java.math.BigDecimal;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// What a plan has to keep to in this house.
@Controller
public class PlanRulesPage {

    private static final String PATH = PlanPage.PATH + "/rules";
    private static final double PERCENT = 100;
    private static final int MOST = 100_000;
    private static final int LONGEST_SECONDS = 600;

    private final Holding holding;

    PlanRulesPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping(PATH)
    public Reply show() {
        var rules = holding.database().read(tx -> PlanRules.read(new Settings(tx)));
        return Reply.show(
                new PlanRulesView(
                        Form.EMPTY
                                .with("clutches", whole(rules.clutches()))
                                .with("kinship", plain(PERCENT * rules.kinship()))
                                .with("females", Integer.toString(rules.females()))
                                .with("boxes", whole(rules.boxes()))
                                .with("places", whole(rules.places()))
                                .with("placeWeeks", Integer.toString(rules.placeWeeks()))
                                .with("question", plain(rules.questionWorth()))
                                .with("seconds", Integer.toString(rules.seconds()))));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static String whole(Optional<Integer> number) {
        return number.map(found -> Integer.toString(found)).orElse("");
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    @PostMapping(PATH)
    public Reply save(Form form) {
        var fields = new Fields(form);
        var clutches = optional(fields, form, "clutches", 0);
        var kinship = fields.number("kinship", 0, PERCENT);
        var females = fields.whole("females", 1, 100);
        var boxes = optional(fields, form, "boxes", 0);
        var places = optional(fields, form, "places", 0);
        var weeks = fields.whole("placeWeeks", 0, 52);
        var question = fields.number("question", 0, 1e9);
        var seconds = fields.whole("seconds", 1, LONGEST_SECONDS);
        return switch (fields.into(
                () ->
                        new PlanRules(
                                clutches.value(),
                                kinship.value() / PERCENT,
                                females.value(),
                                boxes.value(),
                                places.value(),
                                weeks.value(),
                                question.value(),
                                seconds.value()))) {
            case Entry.Faulty<PlanRules>(var faulty) -> Reply.faulty(new PlanRulesView(faulty));
            case Entry.Understood<PlanRules>(var rules) ->
                    Written.to(
                                    holding,
                                    "Changed the rules of the season's plan",
                                    tx -> {
                                        rules.write(new Settings(tx));
                                        return rules;
                                    })
                            .going(PlanPage.PATH, "The rules are saved.");
        };
    }

    private static Fields.Read<Optional<Integer>> optional(
            Fields fields, Form form, String field, int least) {
        return form.text(field).isBlank()
                ? fields.understood(Optional.empty())
                : fields.whole(field, least, MOST).map(Optional::of);
    }
}
