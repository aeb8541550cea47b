package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.steering.PriceLines;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.records.plans.Price;
import clutchwright.records.plans.Prices;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// The house's own price list, as lines of text.
@Controller
public class PricesPage {

    private static final String PATH = PlanPage.PATH + "/prices";
    private static final String FIELD = "prices";
    private static final int LONGEST = 50_000;

    private final Holding holding;

    PricesPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping(PATH)
    public Reply show() {
        var prices = holding.database().read(tx -> new Prices(tx).of(holding.mainSpecies()));
        return Reply.show(
                new PricesView(Form.EMPTY.with(FIELD, PriceLines.write(prices)), List.of()));
    }

    @PostMapping(PATH)
    public Reply save(Form form) {
        var text = form.text(FIELD);
        var species = holding.mainSpecies();
        if (text.length() > LONGEST) {
            return Reply.faulty(
                    new PricesView(
                            form.withFault(
                                    FIELD, "A list of %,d characters at most.".formatted(LONGEST)),
                            List.of()));
        }
        return switch (new PriceLines(holding.lines(species), species).read(text)) {
            case PriceLines.Read.Faulty(var faults) ->
                    Reply.faulty(
                            new PricesView(
                                    form.withFault(
                                            FIELD,
                                            "Nothing is saved yet: some lines are not understood."),
                                    faults));
            case PriceLines.Read.Understood(var prices) -> save(species, prices);
        };
    }

    private Reply save(String species, List<Price> prices) {
        var written =
                Written.to(
                        holding,
                        "Changed the price list",
                        tx -> {
                            new Prices(tx).replace(species, prices);
                            return prices.size();
                        });
        return written.going(
                PATH,
                written.change().isPresent()
                        ? "The price list is saved: %d prices.".formatted(prices.size())
                        : "Nothing was changed.");
    }
}
