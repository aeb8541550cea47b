package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// The pairings of a season: planned, followed by their signs, until the female lays.
@Controller
public class SeasonPage {

    private final Holding holding;
    private final Preferring preferring;

    SeasonPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/season")
    public Reply list(Form form) {
        var asked = form.text("season");
        var season = asked.matches("(19|20)\\d\\d") ? Integer.parseInt(asked) : list().current();
        return Reply.show(list().view(season, Form.EMPTY, "", PairingCard.Slip.NONE));
    }

    @PostMapping("/season/pairings")
    public Reply plan(Form form) {
        return switch (holding.database().read(tx -> PairingForm.read(tx, form))) {
            case Entry.Faulty<PairingForm.Plan>(var faulty) -> refused(faulty, "");
            case Entry.Understood<PairingForm.Plan>(var plan) -> plan(form, plan);
        };
    }

    private Reply plan(Form form, PairingForm.Plan plan) {
        var questions =
                form.text(PairingForm.SURE).isEmpty() ? Questions.ASK : Questions.ALL_THE_SAME;
        var written =
                Written.to(
                        holding,
                        "Planned a pairing",
                        tx ->
                                new Pairings(tx)
                                        .plan(
                                                plan.season(),
                                                plan.dam(),
                                                plan.sire(),
                                                plan.notes(),
                                                questions));
        return switch (written.result()) {
            case Edit.Saved<Pairing>(var pairing) ->
                    written.going(
                            address(pairing),
                            "%s is planned for %d.".formatted(pair(pairing), pairing.season()));
            case Edit.Refused<Pairing>(var problems) ->
                    refused(
                            PairingForm.withProblems(
                                    tagged(form, plan), problems, holding, formats()),
                            PairingForm.questions(problems, holding, formats()));
            case Edit.Stale<Pairing> _ -> Reply.conflict("The pairing was changed.");
        };
    }

    /// A link names animals by their numbers; whoever is asked sees their tags.
    private Form tagged(Form form, PairingForm.Plan plan) {
        return form.with("damTag", Mate.of(holding, plan.dam()).tag())
                .with("sireTag", Mate.of(holding, plan.sire()).tag());
    }

    private Reply refused(Form form, String asks) {
        var season = form.text("season");
        var year =
                season.matches("(19|20)\\d\\d")
                        ? Integer.parseInt(season)
                        : Seasons.of(holding.today());
        return Reply.faulty(list().view(year, form, asks, PairingCard.Slip.NONE));
    }

    /// Writes down what happened to a pairing on a day.
    @PostMapping("/season/pairings/{id}/happened")
    public Reply happened(@PathVariable long id, Form form) {
        var pairing = holding.database().read(tx -> new Pairings(tx).find(new PairingId(id)));
        var what = happening(form.text("what"));
        if (pairing.isEmpty() || what.isEmpty()) {
            return Reply.missing("This pairing is not on record any more.");
        }
        var typed = form.text("on");
        try {
            return happened(pairing.get(), what.get(), LocalDate.parse(typed), typed);
        } catch (DateTimeParseException e) {
            return slip(
                    pairing.get(),
                    typed,
                    "Write a day as year-month-day, such as 2026-06-14, not “%s”."
                            .formatted(typed));
        }
    }

    private Reply happened(Pairing pairing, Happening what, LocalDate on, String typed) {
        Written<Edit<?>> written =
                Written.to(
                        holding,
                        "%s: %s".formatted(pair(pairing), what.button().toLowerCase(Locale.ROOT)),
                        tx -> {
                            Edit<?> edit = what.write(tx, pairing, on);
                            if (edit.saved().isEmpty()) {
                                tx.abandon();
                            }
                            return edit;
                        });
        return switch (written.result()) {
            case Edit.Saved<?> _ ->
                    written.going(
                            address(pairing),
                            written.change().isPresent()
                                    ? "%s: %s."
                                            .formatted(pair(pairing), what.done(formats().date(on)))
                                    : "That was written down already.");
            case Edit.Refused<?>(var problems) -> slip(pairing, typed, sentences(problems));
            case Edit.Stale<?> _ ->
                    slip(
                            pairing,
                            typed,
                            "Somebody else changed this pairing just now: look, and try again.");
        };
    }

    private static Optional<Happening> happening(String name) {
        for (var what : Happening.values()) {
            if (what.name().equals(name)) {
                return Optional.of(what);
            }
        }
        return Optional.empty();
    }

    private String sentences(List<Problem> problems) {
        return String.join(
                " ",
                problems.stream()
                        .map(problem -> PairingForm.sentence(problem, holding, formats()))
                        .toList());
    }

    private Reply slip(Pairing pairing, String on, String fault) {
        return Reply.faulty(
                list().view(
                                pairing.season(),
                                Form.EMPTY,
                                "",
                                new PairingCard.Slip(pairing.id().value(), on, fault)));
    }

    private String pair(Pairing pairing) {
        return Mate.of(holding, pairing.dam()).tag()
                + " × "
                + Mate.of(holding, pairing.sire()).tag();
    }

    static String address(Pairing pairing) {
        return "/season?season=" + pairing.season();
    }

    private SeasonList list() {
        return new SeasonList(holding, formats());
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
