package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Query.SexWanted;
import clutchwright.records.places.Address;
import clutchwright.records.places.Places;
import java.util.List;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// What the names that are typed into forms could grow into.
@Controller
public class CompletionPage {

    private static final int MOST = 12;

    private final Holding holding;

    CompletionPage(Holding holding) {
        this.holding = holding;
    }

    /// Animals that can be the parent asked for, those not sexed among them.
    ///
    /// @param form the field's name under `field`, and the beginning of a tag or name under that
    @GetMapping("/collection/tags")
    public Reply tags(Form form) {
        var field = form.text("field");
        var unwanted = field.equals("dam") ? SexWanted.MALE : SexWanted.FEMALE;
        var found =
                holding.database()
                        .read(
                                tx ->
                                        new Animals(tx)
                                                .find(
                                                        Query.everything()
                                                                .withText(form.text(field))
                                                                .page(0, 4 * MOST)));
        return Reply.show(
                new CompletionView(
                        found.animals().stream()
                                .filter(
                                        animal ->
                                                !animal.sex()
                                                        .map(Enum::name)
                                                        .equals(
                                                                java.util.Optional.of(
                                                                        unwanted.name())))
                                .limit(MOST)
                                .map(
                                        animal ->
                                                new CompletionView.Completion(
                                                        animal.tag().value(), animal.name()))
                                .toList()));
    }

    /// Names of rooms, racks or tubs on record.
    @GetMapping("/collection/places/names")
    public Reply places(Form form) {
        Function<Address, String> name =
                switch (form.text("field")) {
                    case "rack", "setRack" -> Address::rack;
                    case "tub", "setTub" -> Address::name;
                    default -> Address::room;
                };
        var names =
                holding
                        .database()
                        .read(tx -> List.copyOf(new Places(tx).addresses().values()))
                        .stream()
                        .map(name)
                        .distinct()
                        .limit(60)
                        .map(found -> new CompletionView.Completion(found, ""))
                        .toList();
        return Reply.show(new CompletionView(names));
    }
}
