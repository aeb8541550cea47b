package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// One clutch, egg by egg: candled, boxed, lost.
@Controller
public class ClutchPage {

    private final Holding holding;
    private final Preferring preferring;

    ClutchPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/{id:\\d+}")
    public Reply show(@PathVariable("id") long id) {
        var values = new LinkedHashMap<String, List<String>>();
        values.put("on", List.of(holding.today().toString()));
        var form = new Form(values, new LinkedHashMap<>());
        return ClutchReading.find(holding, id)
                .<Reply>map(found -> Reply.show(found.view(holding, form)))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    @PostMapping("/eggs/{id:\\d+}/eggs")
    public Reply mark(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .map(found -> mark(found, form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private Reply mark(ClutchReading found, Form form) {
        return switch (EggDeedForm.read(found.clutch(), form)) {
            case Entry.Faulty<EggDeedForm>(var faulty) -> Reply.faulty(found.view(holding, faulty));
            case Entry.Understood<EggDeedForm>(var asked) -> marked(found, form, asked);
        };
    }

    private Reply marked(ClutchReading found, Form form, EggDeedForm asked) {
        var what = asked.deed().what();
        var written =
                Written.to(
                        holding,
                        "eggs of %s %s".formatted(found.clutch().number(), what),
                        tx -> asked.deed().to(tx, asked.eggs()));
        return switch (written.result()) {
            case EggDeed.Result.Done(var eggs) ->
                    written.going(
                            "/eggs/"
                                    + found.clutch().id().value()
                                    + (form.text("back").equals("hatch") ? "/hatch" : ""),
                            "%s %s.".formatted(formats().count(eggs, "egg", "eggs"), what));
            case EggDeed.Result.Refused(var problems) ->
                    Reply.faulty(found.view(holding, withFaults(form, problems)));
            case EggDeed.Result.Stale(var egg) ->
                    Reply.conflict(
                            "Somebody else has marked egg %d of clutch %s in the meantime."
                                    .formatted(egg, found.clutch().number()));
        };
    }

    private Form withFaults(Form form, List<Problem> problems) {
        var words = new ProblemWords(id -> Tags.of(holding, id), formats());
        var faulty = form;
        for (var problem : problems) {
            faulty =
                    faulty.withFault(
                            EggDeedForm.place(ProblemWords.fieldOf(problem)), words.of(problem));
        }
        return faulty;
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
