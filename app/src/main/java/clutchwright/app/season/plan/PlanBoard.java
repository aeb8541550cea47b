package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.solver.BranchAndCut;
import clutchwright.app.steering.LongWork;
import clutchwright.app.steering.ProjectRoutes;
import clutchwright.app.wording.PlanningWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.IntegerProgramme.Answer;
import clutchwright.engine.planning.IntegerProgramme.Effort;
import clutchwright.engine.planning.SeasonPlan;
import clutchwright.records.plans.PlanId;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWords;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.plans.SavedPlan.Pair;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.concurrent.ConcurrentHashMap;

/// What was worked out for the plans of the seasons: held until the program ends. The plans
/// themselves are on record.
final class PlanBoard {

    /// So close to the bound it is called the best.
    private static final double PROVEN = 1e-6;

    private final Holding holding;
    private final ProjectRoutes routes;
    private final Map<Integer, Drafted> drafts = new ConcurrentHashMap<>();
    private final Map<PlanId, PlanOutlook> outlooks = new ConcurrentHashMap<>();
    private final Map<Instead, Optional<Double>> losses = new ConcurrentHashMap<>();

    PlanBoard(Holding holding, ProjectRoutes routes) {
        this.holding = holding;
        this.routes = routes;
    }

    /// @param revision of the records, what was said of single pairs aside
    private record Drafted(PlanDraft draft, long revision) {}

    private record Instead(PlanId plan, Pair pair) {}

    /// What came of working a plan out.
    sealed interface Worked {

        record Done(SavedPlan plan) implements Worked {}

        /// No set of pairings keeps all limits.
        record Impossible() implements Worked {}

        /// It was stopped, or its time was over, before any plan was found.
        record Nothing() implements Worked {}
    }

    /// What a plan was chosen from; empty where nothing was worked out since the program began.
    Optional<PlanDraft> draft(int season) {
        return Optional.ofNullable(drafts.get(season)).map(Drafted::draft);
    }

    /// Whether something else than words on pairs was written down since.
    boolean isOld(int season) {
        return Optional.ofNullable(drafts.get(season))
                .filter(drafted -> drafted.revision() != holding.database().revision())
                .isPresent();
    }

    Optional<PlanOutlook> outlook(SavedPlan plan) {
        return Optional.ofNullable(outlooks.get(plan.id()))
                .or(
                        () ->
                                draft(plan.season())
                                        .filter(draft -> holdsAll(draft, plan))
                                        .map(draft -> outlook(draft, plan)));
    }

    private static boolean holdsAll(PlanDraft draft, SavedPlan plan) {
        return plan.pairs().stream().allMatch(draft.candidates()::containsKey);
    }

    private PlanOutlook outlook(PlanDraft draft, SavedPlan plan) {
        return outlooks.computeIfAbsent(plan.id(), _ -> PlanOutlook.of(draft, plan.pairs()));
    }

    /// What it costs to make a pair in any case; empty where nobody asked, and within it where
    /// the limits do not allow it.
    Optional<Optional<Double>> loss(PlanId plan, Pair pair) {
        return Optional.ofNullable(losses.get(new Instead(plan, pair)));
    }

    /// Does something that only concerns plans, after which what was worked out still holds.
    <R> Written<R> write(int season, String what, clutchwright.records.store.Work<R> work) {
        var fresh = !isOld(season);
        var written = Written.to(holding, what, work);
        if (fresh) {
            drafts.computeIfPresent(
                    season,
                    (_, drafted) -> new Drafted(drafted.draft(), holding.database().revision()));
        }
        return written;
    }

    /// Works a plan out and keeps it under a name of its own.
    Worked work(int season, LongWork.Watch watch) {
        var draft = fresh(season, watch);
        if (draft.isEmpty()) {
            return new Worked.Nothing();
        }
        var plan = draft.get().plan(words(season));
        return switch (solve(plan, draft.get(), watch)) {
            case Answer.Impossible() -> new Worked.Impossible();
            case Answer.OutOfTime() -> new Worked.Nothing();
            case Answer.Found found -> keep(draft.get(), plan, found);
        };
    }

    private Optional<PlanDraft> fresh(int season, LongWork.Watch watch) {
        if (drafts.containsKey(season) && !isOld(season)) {
            return draft(season);
        }
        var revision = holding.database().revision();
        var drafted = new PlanDrafting(holding, routes, season, watch).draft();
        drafted.ifPresent(draft -> drafts.put(season, new Drafted(draft, revision)));
        return drafted;
    }

    List<PlanWord> words(int season) {
        return holding.database().read(tx -> new PlanWords(tx).ofSeason(season));
    }

    private static Answer solve(SeasonPlan plan, PlanDraft draft, LongWork.Watch watch) {
        var seconds = draft.rules().seconds();
        watch.lasting(
                PlanningWords.choosing(plan.admissible().size()), Duration.ofSeconds(seconds));
        try {
            return new BranchAndCut()
                    .solve(plan.programme(), new Effort(seconds, PROVEN), watch::whenStopped);
        } finally {
            watch.isPast();
        }
    }

    private Worked keep(PlanDraft draft, SeasonPlan plan, Answer.Found found) {
        var chosen = plan.chosen(found);
        var pairs = chosen.stream().map(PlanDraft::pair).toList();
        var worth = plan.worth(chosen);
        var season = draft.season();
        var written =
                write(
                        season,
                        "Worked out a plan for " + season,
                        tx -> {
                            var plans = new Plans(tx);
                            return plans.add(
                                            season,
                                            nextName(plans.ofSeason(season)),
                                            worth,
                                            Math.max(worth, found.bound()),
                                            pairs)
                                    .theSaved();
                        });
        outlook(draft, written.result());
        return new Worked.Done(written.result());
    }

    private static String nextName(List<SavedPlan> plans) {
        var names = plans.stream().map(SavedPlan::name).toList();
        var number = plans.size() + 1;
        while (names.contains(PlanningWords.planName(number))) {
            number++;
        }
        return PlanningWords.planName(number);
    }

    /// Works out what it costs to make a pair in any case, all else chosen anew.
    void workInstead(SavedPlan saved, Pair pair, LongWork.Watch watch) {
        var draft = fresh(saved.season(), watch);
        if (draft.isEmpty()) {
            return;
        }
        var said = new ArrayList<>(words(saved.season()));
        var before = worth(draft.get().plan(said), draft.get(), watch);
        said.removeIf(
                word ->
                        word.dam().equals(pair.dam())
                                && (word.word() == PlanWord.Word.PINNED
                                        || PlanDraft.pair(word).equals(pair)));
        said.add(
                new PlanWord(0, saved.season(), pair.dam(), pair.sire(), PlanWord.Word.PINNED, ""));
        said.add(
                new PlanWord(
                        0,
                        saved.season(),
                        pair.dam(),
                        pair.sire(),
                        PlanWord.Word.OVERRULED,
                        PlanningWords.ASKED));
        var with = worth(draft.get().plan(said), draft.get(), watch);
        if (before.isPresent() && !watch.isStopped()) {
            losses.put(new Instead(saved.id(), pair), with.map(value -> before.get() - value));
        }
    }

    private static Optional<Double> worth(SeasonPlan plan, PlanDraft draft, LongWork.Watch watch) {
        return solve(plan, draft, watch) instanceof Answer.Found found
                ? Optional.of(plan.worth(plan.chosen(found)))
                : Optional.empty();
    }

    /// Which pairs of two plans differ: by female, the male of each where it has one.
    static SequencedMap<AnimalId, List<Optional<Pair>>> differences(
            SavedPlan one, SavedPlan other) {
        var differences = new LinkedHashMap<AnimalId, List<Optional<Pair>>>();
        for (var plan : List.of(one, other)) {
            for (var pair : plan.pairs()) {
                var here = find(one, pair);
                var there = find(other, pair);
                if (!here.equals(there)) {
                    differences.put(pair.dam(), List.of(here, there));
                }
            }
        }
        return differences;
    }

    private static Optional<Pair> find(SavedPlan plan, Pair pair) {
        return plan.pairs().stream().filter(each -> each.dam().equals(pair.dam())).findFirst();
    }
}
