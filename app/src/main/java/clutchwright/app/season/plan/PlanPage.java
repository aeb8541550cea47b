package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.season.Seasons;
import clutchwright.app.steering.LongWork;
import clutchwright.app.steering.WorkDesk;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.PlanningWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Questions;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.plans.PlanId;
import clutchwright.records.plans.PlanWords;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.Prices;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.plans.SavedPlan.Pair;
import clutchwright.records.projects.Project;
import clutchwright.records.projects.Projects;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// The plan of a season: worked out, looked at, compared, and taken up into the season.
@Controller
public class PlanPage {

    static final String PATH = "/season/plan";
    private static final String GONE = "This plan is not on record any more.";

    private final Holding holding;
    private final Preferring preferring;
    private final PlanBoard board;
    private final WorkDesk desk;

    PlanPage(Holding holding, Preferring preferring, PlanBoard board, WorkDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.board = board;
        this.desk = desk;
    }

    /// What is read of the store at once.
    private record Found(
            List<SavedPlan> plans,
            List<clutchwright.records.plans.PlanWord> words,
            List<Pair> made,
            boolean ready) {}

    @GetMapping(PATH)
    public Reply show(Form query) {
        var season = season(query);
        var found = holding.database().read(tx -> find(tx, season));
        var asked = query.text("plan");
        var shown =
                found.plans().stream()
                        .filter(plan -> asked.isEmpty() || plan.id().toString().equals(asked))
                        .findFirst();
        if (!asked.isEmpty() && shown.isEmpty()) {
            return Reply.missing(GONE);
        }
        var sheet = new PlanSheet(holding, new Formats(preferring.preferences()));
        // A draft that knows an animal of the plan no more has nothing to say of it.
        var draft =
                board.draft(season)
                        .filter(
                                one ->
                                        shown.stream()
                                                .flatMap(plan -> plan.pairs().stream())
                                                .allMatch(one.candidates()::containsKey));
        return Reply.show(
                new PlanView(
                        season,
                        seasons(season),
                        found.ready(),
                        found.plans().stream()
                                .map(
                                        plan ->
                                                new PlanView.Link(
                                                        plan.id().value(),
                                                        plan.name(),
                                                        sheet.money(plan.worth()),
                                                        shown.filter(plan::equals).isPresent()))
                                .toList(),
                        shown.map(plan -> sheet.shown(plan, draft, found.words(), found.made())),
                        shown.flatMap(
                                plan ->
                                        draft.map(
                                                one ->
                                                        sheet.matrix(
                                                                plan,
                                                                one,
                                                                found.words(),
                                                                query.has("all", "yes")))),
                        shown.flatMap(
                                plan ->
                                        draft.flatMap(
                                                one ->
                                                        board.outlook(plan)
                                                                .map(
                                                                        outlook ->
                                                                                sheet.outlook(
                                                                                        one,
                                                                                        outlook)))),
                        stale(season, shown.isPresent(), draft.isPresent()),
                        draft.map(sheet::notReady).orElseGet(List::of),
                        draft.map(sheet::notes).orElseGet(List::of)));
    }

    /// This one, the next, and the one that is looked at.
    private List<Integer> seasons(int shown) {
        var now = Seasons.of(holding.today());
        return Stream.of(now, now + 1, shown).distinct().sorted().toList();
    }

    private String stale(int season, boolean shown, boolean drafted) {
        if (!shown) {
            return "";
        }
        if (!drafted) {
            return PlanningWords.NOT_DRAFTED;
        }
        return board.isOld(season) ? PlanningWords.CHANGED : "";
    }

    private Found find(Transaction tx, int season) {
        var species = holding.mainSpecies();
        return new Found(
                new Plans(tx).ofSeason(season),
                new PlanWords(tx).ofSeason(season),
                new Pairings(tx)
                        .ofSeason(season).stream()
                                .map(pairing -> new Pair(pairing.dam(), pairing.sire()))
                                .toList(),
                !new Prices(tx).of(species).isEmpty()
                        || new Projects(tx)
                                .all().stream()
                                        .anyMatch(
                                                project -> project.state() == Project.State.OPEN));
    }

    private int season(Form form) {
        var asked = form.text("season");
        return asked.matches("(19|20)\\d\\d")
                ? Integer.parseInt(asked)
                : Seasons.of(holding.today());
    }

    @PostMapping(PATH + "/work")
    public Reply work(Form form) {
        var season = season(form);
        return desk.start(
                "plan " + season,
                "Working out a plan for " + season,
                Section.SEASON,
                watch -> work(season, watch));
    }

    private Reply.Go work(int season, LongWork.Watch watch) {
        var page = Reply.go(PATH + "?season=" + season);
        return switch (board.work(season, watch)) {
            case PlanBoard.Worked.Done(var plan) -> Reply.go(path(plan));
            case PlanBoard.Worked.Impossible() -> page.saying(PlanningWords.IMPOSSIBLE);
            case PlanBoard.Worked.Nothing() -> page.saying(PlanningWords.NOTHING_FOUND);
        };
    }

    static String path(SavedPlan plan) {
        return PATH + "?season=" + plan.season() + "&plan=" + plan.id();
    }

    /// All pairings of the plan that are not in the season yet, in one change.
    @PostMapping(PATH + "/{id}/accept")
    public Reply accept(@PathVariable long id) {
        return find(id).map(this::accept).orElseGet(() -> Reply.missing(GONE));
    }

    private Reply accept(SavedPlan plan) {
        var written =
                board.write(
                        plan.season(),
                        "Took up %s into the season %d".formatted(plan.name(), plan.season()),
                        tx -> accept(tx, plan));
        var refused = written.result();
        if (refused.isPresent()) {
            var pair = refused.get();
            return Reply.conflict(
                    "%s × %s cannot be planned any more, so nothing was: work the plan out anew."
                            .formatted(tag(pair.dam()), tag(pair.sire())));
        }
        return written.going(
                "/season?season=" + plan.season(),
                "%s is taken up: its pairings stand in the season %d as planned."
                        .formatted(plan.name(), plan.season()));
    }

    /// @return the first pair that cannot be planned, for which all is abandoned
    private static Optional<Pair> accept(Transaction tx, SavedPlan plan) {
        var pairings = new Pairings(tx);
        var made =
                pairings.ofSeason(plan.season()).stream()
                        .map(pairing -> new Pair(pairing.dam(), pairing.sire()))
                        .toList();
        for (var pair : plan.pairs()) {
            if (!made.contains(pair)
                    && !(pairings.plan(
                                    plan.season(),
                                    pair.dam(),
                                    pair.sire(),
                                    "",
                                    Questions.ALL_THE_SAME)
                            instanceof Edit.Saved<?>)) {
                tx.abandon();
                return Optional.of(pair);
            }
        }
        return Optional.empty();
    }

    private String tag(clutchwright.engine.pedigree.AnimalId id) {
        return holding.knowledge().find(id).map(found -> found.tag().value()).orElse("?");
    }

    @PostMapping(PATH + "/{id}/rename")
    public Reply rename(@PathVariable long id, Form form) {
        return find(id).map(plan -> rename(plan, form)).orElseGet(() -> Reply.missing(GONE));
    }

    private Reply rename(SavedPlan plan, Form form) {
        var written =
                board.write(
                        plan.season(),
                        "Renamed " + plan.name(),
                        tx -> new Plans(tx).rename(plan.id(), plan.version(), form.text("name")));
        return switch (written.result()) {
            case Edit.Saved<SavedPlan>(var saved) ->
                    written.going(path(saved), "It is called %s now.".formatted(saved.name()));
            case Edit.Refused<SavedPlan> _ ->
                    Reply.go(path(plan))
                            .saying("Write a name that no other plan of this season has.");
            case Edit.Stale<SavedPlan> _ ->
                    Reply.go(path(plan)).saying("Somebody else renamed it just now.");
        };
    }

    @PostMapping(PATH + "/{id}/remove")
    public Reply remove(@PathVariable long id) {
        return find(id).<Reply>map(
                        plan ->
                                board.write(
                                                plan.season(),
                                                "Removed " + plan.name(),
                                                tx -> new Plans(tx).remove(plan.id()))
                                        .going(
                                                PATH + "?season=" + plan.season(),
                                                plan.name()
                                                        + " is removed; what was taken up of it"
                                                        + " stays."))
                .orElseGet(() -> Reply.missing(GONE));
    }

    private Optional<SavedPlan> find(long id) {
        return holding.database().read(tx -> new Plans(tx).find(new PlanId(id)));
    }
}
