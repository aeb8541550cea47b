package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// A female has laid.
@Controller
public class LayingPage {

    /// Pairings of so many seasons back may have left sperm: common practice.
    private static final int SEASONS_BACK = 1;

    static final String SURE = "sure";

    private final Holding holding;
    private final Preferring preferring;

    LayingPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/new")
    public Reply ask(Form query) {
        var today = holding.today();
        var values = new LinkedHashMap<String, List<String>>();
        values.put("laid", List.of(today.toString()));
        values.put("slugs", List.of("0"));
        values.putAll(query.values());
        fromPairing(query).forEach(values::putIfAbsent);
        var form = new Form(values, new LinkedHashMap<>());
        var dam = damOf(form);
        if (!form.values().containsKey(SireChoice.TICKED)) {
            values.put(SireChoice.TICKED, preselected(dam));
        }
        return Reply.show(view(new Form(values, form.faults()), ""));
    }

    /// Who they are, where the season's list of pairings led here.
    private Map<String, List<String>> fromPairing(Form query) {
        return holding.database()
                .read(tx -> LayingForm.pairing(tx, query))
                .flatMap(
                        pairing ->
                                holding.knowledge()
                                        .find(pairing.dam())
                                        .map(
                                                dam ->
                                                        Map.of(
                                                                "dam",
                                                                List.of(dam.tag().value()),
                                                                SireChoice.TICKED,
                                                                List.of(
                                                                        pairing.sire()
                                                                                .toString()))))
                .orElseGet(Map::of);
    }

    /// The males that she was with; fetched when her tag has been typed.
    @GetMapping("/eggs/new/sires")
    public Reply sires(Form query) {
        var dam = damOf(query);
        var values = new LinkedHashMap<>(query.values());
        values.put(SireChoice.TICKED, preselected(dam));
        return Reply.show(new SiresView(new Form(values, new LinkedHashMap<>()), males(dam)));
    }

    @PostMapping("/eggs/new")
    public Reply lay(Form form) {
        var questions = form.text(SURE).isEmpty() ? Questions.ASK : Questions.ALL_THE_SAME;
        return switch (holding.database().read(tx -> LayingForm.read(holding, tx, form))) {
            case Entry.Faulty<Laying>(var faulty) -> Reply.faulty(view(faulty, ""));
            case Entry.Understood<Laying>(var laying) -> {
                var written =
                        Written.to(
                                holding,
                                "recorded a clutch",
                                tx -> new Clutches(tx).lay(laying, questions));
                yield switch (written.result()) {
                    case Edit.Saved<Clutch>(var clutch) ->
                            written.going(
                                    "/eggs/" + clutch.id().value(),
                                    "Clutch %s is on record.".formatted(clutch.number()));
                    case Edit.Refused<Clutch>(var problems) -> refused(form, problems);
                    case Edit.Stale<Clutch> _ -> Reply.conflict("The clutch was changed.");
                };
            }
        };
    }

    private Reply refused(Form form, List<Problem> problems) {
        var words =
                new ProblemWords(id -> Tags.of(holding, id), new Formats(preferring.preferences()));
        if (problems.stream().allMatch(Problem::isQuestion)) {
            return Reply.faulty(
                    view(form, String.join(" ", problems.stream().map(words::of).toList())));
        }
        var faulty = form;
        for (var problem : problems) {
            if (!problem.isQuestion()) {
                faulty =
                        faulty.withFault(
                                LayingForm.place(ProblemWords.fieldOf(problem)), words.of(problem));
            }
        }
        return Reply.faulty(view(faulty, ""));
    }

    private LayingView view(Form form, String asks) {
        var season = holding.today().getYear();
        var next = holding.database().read(tx -> new Clutches(tx).nextNumber(season).toString());
        return new LayingView(form, females(), males(damOf(form)), next, asks);
    }

    private List<Choice> females() {
        var season = holding.today().getYear();
        var ids =
                holding.database().read(tx -> new Pairings(tx).ofSeason(season)).stream()
                        .map(Pairing::dam)
                        .distinct()
                        .toList();
        return ids.stream()
                .flatMap(id -> holding.knowledge().find(id).stream())
                .map(animal -> new Choice(animal.tag().value(), describe(animal)))
                .toList();
    }

    private List<Choice> males(List<AnimalId> dam) {
        var males = new LinkedHashMap<AnimalId, Choice>();
        for (var pairing : pairings(dam)) {
            holding.knowledge()
                    .find(pairing.sire())
                    .ifPresent(
                            male ->
                                    males.putIfAbsent(
                                            male.id(),
                                            new Choice(
                                                    male.id().toString(),
                                                    "%s · %s"
                                                            .formatted(
                                                                    describe(male),
                                                                    when(pairing)))));
        }
        return new ArrayList<>(males.values());
    }

    /// The males of this season that were really put to her, else those that were planned.
    private List<String> preselected(List<AnimalId> dam) {
        var season = holding.today().getYear();
        // Late in the year a pairing may count for the next.
        var now = pairings(dam).stream().filter(pairing -> pairing.season() >= season).toList();
        var together = now.stream().filter(each -> each.state() != Pairing.State.PLANNED).toList();
        return (together.isEmpty() ? now : together)
                .stream().map(pairing -> pairing.sire().toString()).toList();
    }

    private List<Pairing> pairings(List<AnimalId> dam) {
        var earliest = holding.today().getYear() - SEASONS_BACK;
        return dam.stream()
                .flatMap(id -> holding.database().read(tx -> new Pairings(tx).of(id)).stream())
                .filter(pairing -> dam.contains(pairing.dam()))
                .filter(pairing -> pairing.season() >= earliest)
                .toList();
    }

    private String when(Pairing pairing) {
        return pairing.season()
                + switch (pairing.state()) {
                    case PLANNED -> ", only planned";
                    case ACTIVE, DONE -> "";
                };
    }

    private List<AnimalId> damOf(Form form) {
        return holding.database().read(tx -> damOf(tx, form)).stream().map(Animal::id).toList();
    }

    private static List<Animal> damOf(Transaction tx, Form form) {
        return new Animals(tx).byTag(form.text("dam")).stream().toList();
    }

    private String describe(Animal animal) {
        var name = animal.name().isEmpty() ? "" : " " + animal.name();
        return animal.tag() + name + ", " + holding.line(animal.id()).inWords();
    }
}
