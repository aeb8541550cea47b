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
import clutchwright.records.checks.Edit;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Eggs;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// Candling one egg after the other, with buttons that gloves can hit.
@Controller
public class CandlePage {

    private final Holding holding;
    private final Preferring preferring;

    CandlePage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/{id:\\d+}/candle")
    public Reply show(@PathVariable("id") long id, Form query) {
        var values = new LinkedHashMap<String, List<String>>();
        values.put("on", List.of(holding.today().toString()));
        values.putAll(query.values());
        var form = new Form(values, new LinkedHashMap<>());
        return ClutchReading.find(holding, id)
                .map(found -> show(found, form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private Reply show(ClutchReading found, Form form) {
        var after = number(form.text("after"));
        var left = left(found, form.text("on"), after);
        return left.isEmpty()
                ? Reply.go(path(found)).saying("Every waiting egg has been looked at.")
                : Reply.show(view(found, left.getFirst(), left, form));
    }

    @PostMapping("/eggs/{id:\\d+}/candle")
    public Reply look(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .map(found -> look(found, form))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private Reply look(ClutchReading found, Form form) {
        var number = number(form.text("number"));
        var line =
                found.lines(holding).stream()
                        .filter(each -> each.egg().number() == number)
                        .findFirst();
        if (line.isEmpty()) {
            return Reply.missing("Clutch %s has no such egg.".formatted(found.clutch().number()));
        }
        var fields = new Fields(form);
        var on = fields.date("on");
        var finding = fields.choice("finding", Candling.Finding.class);
        return switch (fields.into(
                () -> new Looked(finding.value(), on.value(), form.text("notes")))) {
            case Entry.Faulty<Looked>(var faulty) -> faulty(found, line.get(), faulty);
            case Entry.Understood<Looked>(var looked) -> write(found, line.get(), looked, form);
        };
    }

    private Reply write(ClutchReading found, EggLine line, Looked looked, Form form) {
        var number = line.egg().number();
        var written =
                Written.to(
                        holding,
                        "candled egg %d of %s".formatted(number, found.clutch().number()),
                        tx ->
                                new Eggs(tx)
                                        .candle(
                                                line.egg().id(),
                                                looked.on(),
                                                looked.finding(),
                                                looked.notes()));
        return switch (written.result()) {
            case Edit.Saved<Egg> _ ->
                    written.going(next(found, number, looked), said(number, looked));
            case Edit.Stale<Egg> _ ->
                    Reply.conflict("Somebody else has marked egg %d.".formatted(number));
            case Edit.Refused<Egg>(var problems) -> {
                var words =
                        new ProblemWords(
                                id -> Tags.of(holding, id), new Formats(preferring.preferences()));
                var faulty = form;
                for (var problem : problems) {
                    faulty = faulty.withFault("on", words.of(problem));
                }
                yield faulty(found, line, faulty);
            }
        };
    }

    private Reply faulty(ClutchReading found, EggLine line, Form form) {
        var left = left(found, form.text("on"), line.egg().number() - 1);
        return Reply.faulty(view(found, line, left, form));
    }

    /// The next egg, or the clutch after the last.
    private String next(ClutchReading found, int number, Looked looked) {
        return left(found, looked.on().toString(), number).isEmpty()
                ? path(found)
                : "%s/candle?after=%d&on=%s".formatted(path(found), number, looked.on());
    }

    private static String said(int number, Looked looked) {
        return "Egg %d %s."
                .formatted(number, new EggDeed.Candle(looked.finding(), looked.on(), "").what());
    }

    /// The waiting eggs after that one that were not looked at on that day.
    private List<EggLine> left(ClutchReading found, String on, int after) {
        return found.lines(holding).stream()
                .filter(EggLine::isWaiting)
                .filter(line -> line.egg().number() > after)
                .filter(
                        line ->
                                line.egg().candlings().stream()
                                        .noneMatch(look -> look.on().toString().equals(on)))
                .toList();
    }

    private CandleView view(ClutchReading found, EggLine line, List<EggLine> left, Form form) {
        return new CandleView(
                found.clutch(),
                Couple.of(holding, found.clutch().parentage()),
                line,
                left.stream().map(each -> each.egg().number()).toList(),
                found.incubation(holding),
                form);
    }

    private static String path(ClutchReading found) {
        return "/eggs/" + found.clutch().id().value();
    }

    /// 0 where it is none.
    private static int number(String text) {
        return Optional.of(text)
                .filter(digits -> digits.matches("\\d{1,4}"))
                .map(Integer::parseInt)
                .orElse(0);
    }

    private record Looked(Candling.Finding finding, LocalDate on, String notes) {}
}
