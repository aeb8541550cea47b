package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// Day, parents and notes of a clutch, eggs that were overlooked, and taking it off the record.
@Controller
public class ClutchEditPage {

    private final Holding holding;
    private final Preferring preferring;

    ClutchEditPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/{id:\\d+}/edit")
    public Reply show(@PathVariable("id") long id) {
        return ClutchReading.find(holding, id)
                .<Reply>map(found -> Reply.show(view(found.clutch(), opened(found.clutch()), "")))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    @PostMapping("/eggs/{id:\\d+}/edit")
    public Reply save(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .map(found -> save(found.clutch(), form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    /// Eggs that were found later.
    @PostMapping("/eggs/{id:\\d+}/more")
    public Reply more(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .map(found -> more(found.clutch(), form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    @PostMapping("/eggs/{id:\\d+}/remove")
    public Reply remove(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .map(found -> remove(found.clutch(), form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private Reply save(Clutch clutch, Form form) {
        var fields = new Fields(form);
        var laid = fields.date("laid");
        var sires = holding.database().read(tx -> SireChoice.read(fields, form, tx));
        var version = fields.whole("version", 0, Integer.MAX_VALUE);
        var entry =
                fields.into(
                        () ->
                                new Changed(
                                        version.value(),
                                        laid.value(),
                                        sires.value().parentage(clutch.dam())));
        return switch (entry) {
            case Entry.Faulty<Changed>(var faulty) -> Reply.faulty(view(clutch, faulty, ""));
            case Entry.Understood<Changed>(var changed) -> {
                var asked =
                        new Clutch(
                                clutch.id(),
                                changed.version(),
                                clutch.number(),
                                changed.parentage(),
                                clutch.pairing(),
                                changed.laid(),
                                clutch.species(),
                                form.text("notes"),
                                clutch.eggs());
                yield answer(
                        clutch,
                        form,
                        Written.to(
                                holding,
                                "changed clutch " + clutch.number(),
                                tx -> new Clutches(tx).update(asked, questions(form))),
                        "Clutch %s changed.".formatted(clutch.number()));
            }
        };
    }

    private Reply more(Clutch clutch, Form form) {
        var fields = new Fields(form);
        var good = fields.whole("good", 0, LayingForm.MOST);
        var slugs = fields.whole("slugs", 0, LayingForm.MOST);
        return switch (fields.into(() -> List.of(good.value(), slugs.value()))) {
            case Entry.Faulty<List<Integer>>(var faulty) ->
                    Reply.faulty(view(clutch, merged(clutch, faulty), ""));
            case Entry.Understood<List<Integer>>(var counts) ->
                    answer(
                            clutch,
                            merged(clutch, form),
                            Written.to(
                                    holding,
                                    "counted more eggs of " + clutch.number(),
                                    tx ->
                                            new Clutches(tx)
                                                    .addEggs(
                                                            clutch.id(),
                                                            counts.getFirst(),
                                                            counts.getLast())),
                            "Eggs added.");
        };
    }

    private Reply remove(Clutch clutch, Form form) {
        var version = form.text("version");
        var written =
                Written.to(
                        holding,
                        "removed clutch " + clutch.number(),
                        tx ->
                                new Clutches(tx)
                                        .remove(
                                                clutch.id(),
                                                version.matches("\\d{1,18}")
                                                        ? Long.parseLong(version)
                                                        : -1));
        return written.result() instanceof Edit.Saved<Clutch>
                ? written.going("/eggs", "Clutch %s removed.".formatted(clutch.number()))
                : answer(clutch, merged(clutch, form), written, "");
    }

    private Reply answer(Clutch clutch, Form form, Written<Edit<Clutch>> written, String sentence) {
        return switch (written.result()) {
            case Edit.Saved<Clutch> _ -> written.going("/eggs/" + clutch.id().value(), sentence);
            case Edit.Stale<Clutch>(var current) -> both(current, form);
            case Edit.Refused<Clutch>(var problems) -> refused(clutch, form, problems);
        };
    }

    /// What was typed, beside what somebody else has saved meanwhile; saving again lets it stand.
    private Reply both(Clutch current, Form typed) {
        var saved = opened(current);
        var form = typed.with("version", saved.text("version"));
        for (var field : List.of("laid", SireChoice.OTHER, "notes")) {
            if (!saved.text(field).equals(typed.text(field))) {
                form =
                        form.withFault(
                                field,
                                "Somebody else has changed the clutch. Saved is: “%s”."
                                        .formatted(saved.text(field)));
            }
        }
        return Reply.conflictWith(view(current, form, ""));
    }

    private Reply refused(Clutch clutch, Form form, List<Problem> problems) {
        var words =
                new ProblemWords(id -> Tags.of(holding, id), new Formats(preferring.preferences()));
        if (problems.stream().allMatch(Problem::isQuestion)) {
            return Reply.faulty(
                    view(
                            clutch,
                            form,
                            String.join(" ", problems.stream().map(words::of).toList())));
        }
        var faulty = form;
        for (var problem : problems) {
            if (!problem.isQuestion()) {
                faulty =
                        faulty.withFault(
                                LayingForm.place(ProblemWords.fieldOf(problem)), words.of(problem));
            }
        }
        return Reply.faulty(view(clutch, faulty, ""));
    }

    private ClutchEditView view(Clutch clutch, Form form, String asks) {
        var values = new LinkedHashMap<>(form.values());
        values.putIfAbsent("good", List.of("0"));
        values.putIfAbsent("slugs", List.of("0"));
        return new ClutchEditView(
                clutch,
                Couple.of(holding, clutch.parentage()),
                new Form(values, form.faults()),
                asks);
    }

    private Form opened(Clutch clutch) {
        var couple = Couple.of(holding, clutch.parentage());
        var values = new LinkedHashMap<String, List<String>>();
        values.put("version", List.of(Long.toString(clutch.version())));
        values.put("laid", List.of(clutch.laid().toString()));
        values.put(SireChoice.OTHER, List.of(SireChoice.text(couple)));
        values.put("notes", List.of(clutch.notes()));
        if (couple.withoutMale()) {
            values.put(SireChoice.WITHOUT, List.of("yes"));
        }
        return new Form(values, new LinkedHashMap<>());
    }

    /// One of the small forms of the page together with what stands in the large one.
    private Form merged(Clutch clutch, Form small) {
        var values = new LinkedHashMap<>(opened(clutch).values());
        values.putAll(small.values());
        return new Form(values, small.faults());
    }

    private static Questions questions(Form form) {
        return form.text(LayingPage.SURE).isEmpty() ? Questions.ASK : Questions.ALL_THE_SAME;
    }

    private record Changed(long version, LocalDate laid, Parentage parentage) {}
}
