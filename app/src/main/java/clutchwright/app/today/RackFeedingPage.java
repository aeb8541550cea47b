package clutchwright.app.today;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.places.RackId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// A whole rack fed at once, except for those that are not ticked.
@Controller
public class RackFeedingPage {

    private static final String NONE = "This rack is not on record any more.";
    private static final int LONGEST_PREY = 60;

    private final Holding holding;
    private final Preferring preferring;

    RackFeedingPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/today/racks/{id:[0-9]{1,18}}")
    public Reply show(@PathVariable long id) {
        return find(id).<Reply>map(found -> Reply.show(view(id, found, found.allFed())))
                .orElseGet(() -> Reply.missing(NONE));
    }

    @PostMapping("/today/racks/{id:[0-9]{1,18}}")
    public Reply feed(@PathVariable long id, Form form) {
        return find(id).map(found -> feed(id, found, form)).orElseGet(() -> Reply.missing(NONE));
    }

    private Reply feed(long id, RackMeals found, Form form) {
        var fed =
                found.animals().stream()
                        .filter(animal -> form.has("fed", animal.id().toString()))
                        .toList();
        var refused =
                form.text("others").equals("refused")
                        ? found.animals().stream().filter(each -> !fed.contains(each)).toList()
                        : List.<Animal>of();
        var prey = form.text("prey");
        if (prey.length() > LONGEST_PREY) {
            return faulty(id, found, form, "prey", "Write at most 60 characters.");
        }
        if (fed.isEmpty() && refused.isEmpty()) {
            return faulty(id, found, form, "fed", "Tick at least one of them.");
        }
        var fields = new Fields(form);
        var on = fields.anyDate("on");
        return switch (fields.into(on::value)) {
            case Entry.Faulty<Optional<LocalDate>>(var faulty) ->
                    faulty(id, found, form, "fed", faulty.fault("on"));
            case Entry.Understood<Optional<LocalDate>>(var day) ->
                    write(
                            id,
                            found,
                            new Offered(fed, refused, prey, day.orElseGet(holding::today)),
                            form);
        };
    }

    private Reply write(long id, RackMeals found, Offered offered, Form form) {
        var written = Written.to(holding, "Fed " + found.name(), tx -> write(tx, offered));
        return written.result().isEmpty()
                ? written.going("/", said(found, offered.fed().size(), offered.refused().size()))
                : faulty(id, found, form, "fed", String.join(" ", written.result()));
    }

    /// All of them or none.
    ///
    /// @return what stands against it
    private List<String> write(Transaction tx, Offered offered) {
        var against = new ArrayList<String>();
        offered.fed().forEach(each -> against.addAll(write(tx, each, offered, true)));
        offered.refused().forEach(each -> against.addAll(write(tx, each, offered, false)));
        if (!against.isEmpty()) {
            tx.abandon();
        }
        return against;
    }

    private List<String> write(Transaction tx, Animal animal, Offered offered, boolean taken) {
        var meal = new Husbandry(tx).feed(animal.id(), offered.on(), offered.prey(), taken, "");
        return meal instanceof Edit.Refused<Happening.Meal>(var problems)
                ? List.of(HappeningWords.of(animal, problems, formats()))
                : List.of();
    }

    private String said(RackMeals found, int fed, int refused) {
        var others = found.animals().size() - fed;
        return "%s: %s fed%s."
                .formatted(
                        found.name(),
                        formats().count(fed, "animal", "animals"),
                        others == 0
                                ? ""
                                : refused > 0
                                        ? ", %d refused".formatted(refused)
                                        : ", %d left out".formatted(others));
    }

    private Reply faulty(long id, RackMeals found, Form form, String field, String fault) {
        return Reply.faulty(view(id, found, form.withFault(field, fault)));
    }

    private Optional<RackMeals> find(long id) {
        return holding.database().read(tx -> RackMeals.find(tx, new RackId(id)));
    }

    private RackFeedingView view(long id, RackMeals found, Form form) {
        return new RackFeedingView(id, found.name(), found.lines(holding.today(), formats()), form);
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    /// What a rack was offered, and who took it.
    private record Offered(List<Animal> fed, List<Animal> refused, String prey, LocalDate on) {}
}
