package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.PairingWords;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// One pairing: changed, or taken off the record.
@Controller
public class PairingPage {

    private final Holding holding;
    private final Preferring preferring;

    PairingPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/season/pairings/{id}")
    public Reply show(@PathVariable long id) {
        return find(id).<Reply>map(
                        found -> Reply.show(view(found, formOf(found.pairing()), "", List.of())))
                .orElseGet(PairingPage::missing);
    }

    @PostMapping("/season/pairings/{id}")
    public Reply save(@PathVariable long id, Form form) {
        var found = find(id);
        if (found.isEmpty()) {
            return missing();
        }
        var entry = holding.database().read(tx -> PairingForm.read(tx, form, new PairingId(id)));
        return switch (entry) {
            case Entry.Faulty<Pairing>(var faulty) ->
                    Reply.faulty(view(found.get(), faulty, "", List.of()));
            case Entry.Understood<Pairing>(var changed) -> save(found.get(), changed, form);
        };
    }

    private Reply save(Found found, Pairing changed, Form form) {
        var questions =
                form.text(PairingForm.SURE).isEmpty() ? Questions.ASK : Questions.ALL_THE_SAME;
        var written =
                Written.to(
                        holding,
                        "Changed the pairing " + pair(changed),
                        tx -> new Pairings(tx).update(changed, questions));
        return switch (written.result()) {
            case Edit.Saved<Pairing>(var saved) ->
                    written.going(SeasonPage.address(saved), pair(saved) + " is saved.");
            case Edit.Refused<Pairing>(var problems) ->
                    Reply.faulty(
                            view(
                                    found,
                                    PairingForm.withProblems(form, problems, holding, formats()),
                                    PairingForm.questions(problems, holding, formats()),
                                    List.of()));
            case Edit.Stale<Pairing>(var current) ->
                    new Reply.Show(
                            HttpStatus.CONFLICT,
                            view(
                                    found,
                                    form.with("version", Long.toString(current.version())),
                                    "",
                                    theirs(current)));
        };
    }

    @PostMapping("/season/pairings/{id}/remove")
    public Reply remove(@PathVariable long id, Form form) {
        var found = find(id);
        if (found.isEmpty()) {
            return missing();
        }
        var pairing = found.get().pairing();
        var written =
                Written.to(
                        holding,
                        "Removed the pairing " + pair(pairing),
                        tx -> new Pairings(tx).remove(pairing.id(), version(form)));
        return switch (written.result()) {
            case Edit.Saved<Pairing> _ ->
                    written.going(
                            SeasonPage.address(pairing),
                            "%s is no longer in the season %d."
                                    .formatted(pair(pairing), pairing.season()));
            case Edit.Refused<Pairing>(var problems) ->
                    Reply.faulty(
                            view(
                                    found.get(),
                                    formOf(pairing).withFault("season", sentences(problems)),
                                    "",
                                    List.of()));
            case Edit.Stale<Pairing>(var current) ->
                    new Reply.Show(
                            HttpStatus.CONFLICT,
                            view(found.get(), formOf(current), "", theirs(current)));
        };
    }

    @PostMapping("/season/pairings/{id}/signs/{sign}/remove")
    public Reply removeSign(@PathVariable long id, @PathVariable long sign) {
        var seen =
                find(id).flatMap(
                                found ->
                                        found.signs().stream()
                                                .filter(one -> one.id() == sign)
                                                .findFirst());
        if (seen.isEmpty()) {
            return missing();
        }
        var words = words(seen.get());
        var written =
                Written.to(holding, "Removed: " + words, tx -> new Pairings(tx).remove(seen.get()));
        return written.going("/season/pairings/" + id, "Removed: " + words + ".");
    }

    private Optional<Found> find(long id) {
        return holding.database().read(tx -> find(tx, new PairingId(id)));
    }

    private static Optional<Found> find(Transaction tx, PairingId id) {
        var pairings = new Pairings(tx);
        return pairings.find(id)
                .map(
                        pairing ->
                                new Found(
                                        pairing,
                                        pairings.signs(id),
                                        Math.toIntExact(
                                                new Clutches(tx)
                                                        .of(pairing.dam()).stream()
                                                                .filter(
                                                                        clutch ->
                                                                                clutch.pairing()
                                                                                        .filter(
                                                                                                id
                                                                                                        ::equals)
                                                                                        .isPresent())
                                                                .count()),
                                        AnimalOptions.find(tx, "", Sex.FEMALE),
                                        AnimalOptions.find(tx, "", Sex.MALE)));
    }

    private record Found(
            Pairing pairing,
            List<SignSeen> signs,
            int clutches,
            List<Animal> dams,
            List<Animal> sires) {}

    private PairingView view(Found found, Form form, String asks, List<String> theirs) {
        var pairing = found.pairing();
        return new PairingView(
                pairing.id().value(),
                pairing.version(),
                pairing.season(),
                Mate.of(holding, pairing.dam()),
                Mate.of(holding, pairing.sire()),
                form,
                found.signs().stream()
                        .map(sign -> new PairingView.Sign(sign.id(), words(sign)))
                        .toList(),
                asks,
                theirs,
                found.clutches(),
                AnimalOptions.choices(holding, found.dams()),
                AnimalOptions.choices(holding, found.sires()));
    }

    private Form formOf(Pairing pairing) {
        return PairingForm.of(
                pairing,
                Mate.of(holding, pairing.dam()).tag(),
                Mate.of(holding, pairing.sire()).tag());
    }

    private List<String> theirs(Pairing current) {
        var theirs = new ArrayList<String>();
        theirs.add("Season " + current.season());
        theirs.add(pair(current));
        theirs.add(
                current.putTogether()
                        .map(day -> "Together from " + formats().date(day))
                        .orElse("Not together yet"));
        current.separated().ifPresent(day -> theirs.add("Separated " + formats().date(day)));
        theirs.add(current.notes().isEmpty() ? "No notes" : "Notes: " + current.notes());
        return theirs;
    }

    private String words(SignSeen sign) {
        return PairingWords.sign(sign.kind()) + ", " + formats().date(sign.on());
    }

    private String sentences(List<Problem> problems) {
        return String.join(
                " ",
                problems.stream()
                        .map(problem -> PairingForm.sentence(problem, holding, formats()))
                        .toList());
    }

    private String pair(Pairing pairing) {
        return Mate.of(holding, pairing.dam()).tag()
                + " × "
                + Mate.of(holding, pairing.sire()).tag();
    }

    private static long version(Form form) {
        var text = form.text("version");
        return text.matches("\\d{1,18}") ? Long.parseLong(text) : 0;
    }

    private static Reply missing() {
        return Reply.missing("This pairing is not on record any more.");
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }
}
