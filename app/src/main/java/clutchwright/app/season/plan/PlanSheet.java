package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.KinshipWords;
import clutchwright.app.wording.PlanningWords;
import clutchwright.app.wording.ReadinessWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.SeasonSimulation.Range;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWord.Word;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.plans.SavedPlan.Pair;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/// Sets a plan out for its page.
final class PlanSheet {

    private static final int OTHERS = 3;
    private static final int INKS = 6;

    private final Holding holding;
    private final Formats formats;

    PlanSheet(Holding holding, Formats formats) {
        this.holding = holding;
        this.formats = formats;
    }

    PlanView.Animal animal(AnimalId id) {
        return new PlanView.Animal(
                holding.knowledge().find(id).map(found -> found.tag().value()).orElse("?"),
                "/collection/" + id,
                holding.line(id).line());
    }

    String money(double amount) {
        return formats.whole(Math.round(amount));
    }

    PlanView.Shown shown(
            SavedPlan plan, Optional<PlanDraft> draft, List<PlanWord> words, List<Pair> made) {
        var rows = new ArrayList<PlanView.Row>();
        for (var pair : plan.pairs()) {
            rows.add(row(plan, pair, draft, words, made));
        }
        draft.ifPresent(
                found ->
                        found.females().stream()
                                .filter(
                                        female ->
                                                plan.pairs().stream()
                                                        .noneMatch(
                                                                pair ->
                                                                        pair.dam()
                                                                                .equals(
                                                                                        female
                                                                                                .id())))
                                .filter(female -> female.against().isEmpty())
                                .forEach(female -> rows.add(alone(plan, female, found))));
        return new PlanView.Shown(
                plan.id().value(),
                plan.name(),
                formats.date(plan.madeOn()),
                money(plan.worth()),
                PlanningWords.bound(plan.worth(), plan.bound(), money(plan.bound())),
                (int) plan.pairs().stream().filter(pair -> !made.contains(pair)).count(),
                rows);
    }

    private PlanView.Row row(
            SavedPlan plan,
            Pair pair,
            Optional<PlanDraft> draft,
            List<PlanWord> words,
            List<Pair> made) {
        var found = draft.flatMap(one -> one.find(pair));
        return new PlanView.Row(
                animal(pair.dam()),
                Optional.of(animal(pair.sire())),
                found.flatMap(one -> one.dam().laying()).map(this::laying).orElse(""),
                found.map(one -> formats.decimals(one.hatchlings(), 1)).orElse(""),
                found.map(one -> money(one.alone())).orElse(""),
                found.map(PlanSheet::projects).orElse(""),
                found.map(one -> KinshipWords.figure(one.kinship())).orElse(""),
                words(pair, words, made),
                path(plan, pair),
                draft.map(one -> others(plan, pair.dam(), pair, one, OTHERS)).orElseGet(List::of));
    }

    private PlanView.Row alone(SavedPlan plan, PlanAnimal female, PlanDraft draft) {
        return new PlanView.Row(
                animal(female.id()),
                Optional.empty(),
                "",
                "",
                "",
                "",
                "",
                List.of(),
                "",
                others(plan, female.id(), new Pair(female.id(), female.id()), draft, OTHERS));
    }

    /// Her next best males by what each pair is worth by itself.
    List<PlanView.Other> others(SavedPlan plan, AnimalId dam, Pair but, PlanDraft draft, int most) {
        return draft.malesFor(dam).stream()
                .filter(one -> !one.pair().equals(but))
                .limit(most)
                .map(
                        one ->
                                new PlanView.Other(
                                        one.sire().tag(),
                                        money(one.alone()),
                                        path(plan, one.pair())))
                .toList();
    }

    private String laying(PlanAnimal.Laying laying) {
        return PlanningWords.laying(
                formats.dayOfYear(laying.expected().about()),
                Chances.percent(laying.lays()),
                formats.decimals(laying.meanEggs(), 1));
    }

    private static String projects(Candidate candidate) {
        return candidate.steps().stream()
                .map(step -> step.project().name())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    static List<String> words(Pair pair, List<PlanWord> words, List<Pair> made) {
        var said = new ArrayList<String>();
        if (made.contains(pair)) {
            said.add(PlanningWords.MADE);
        }
        words.stream()
                .filter(word -> PlanDraft.pair(word).equals(pair))
                .map(word -> PlanningWords.word(word.word(), word.reason()))
                .forEach(said::add);
        return said;
    }

    static String path(SavedPlan plan, Pair pair) {
        return "/season/plan/pair?plan=%s&dam=%s&sire=%s"
                .formatted(plan.id(), pair.dam(), pair.sire());
    }

    /// @param all with the animals that are not ready, too
    PlanView.Matrix matrix(SavedPlan plan, PlanDraft draft, List<PlanWord> words, boolean all) {
        var females = shown(draft.females(), plan, all);
        var males = shown(draft.males(), plan, all);
        var most =
                draft.candidates().values().stream()
                        .filter(one -> !draft.isHindered(one))
                        .mapToDouble(Candidate::alone)
                        .max()
                        .orElse(0);
        return new PlanView.Matrix(
                males.stream().map(male -> animal(male.id())).toList(),
                females.stream()
                        .map(
                                female ->
                                        new PlanView.Line(
                                                animal(female.id()),
                                                males.stream()
                                                        .flatMap(
                                                                male ->
                                                                        draft
                                                                                .find(
                                                                                        new Pair(
                                                                                                female
                                                                                                        .id(),
                                                                                                male
                                                                                                        .id()))
                                                                                .stream())
                                                        .map(
                                                                one ->
                                                                        cell(
                                                                                plan, draft, one,
                                                                                words, most))
                                                        .toList()))
                        .toList(),
                all
                        ? 0
                        : draft.females().size()
                                + draft.males().size()
                                - females.size()
                                - males.size());
    }

    private static List<PlanAnimal> shown(List<PlanAnimal> some, SavedPlan plan, boolean all) {
        return some.stream()
                .filter(
                        animal ->
                                all
                                        || animal.against().isEmpty()
                                        || plan.pairs().stream()
                                                .anyMatch(
                                                        pair ->
                                                                pair.dam().equals(animal.id())
                                                                        || pair.sire()
                                                                                .equals(
                                                                                        animal
                                                                                                .id())))
                .toList();
    }

    private PlanView.Cell cell(
            SavedPlan plan, PlanDraft draft, Candidate one, List<PlanWord> words, double most) {
        var pair = one.pair();
        var worth = money(one.alone());
        var names = one.dam().tag() + " × " + one.sire().tag();
        var said =
                words.stream()
                        .filter(word -> PlanDraft.pair(word).equals(pair))
                        .map(PlanWord::word)
                        .toList();
        if (plan.pairs().contains(pair)) {
            return new PlanView.Cell(
                    worth, "chosen", PlanningWords.chosen(names, worth), path(plan, pair));
        }
        if (said.contains(Word.FORBIDDEN)) {
            return new PlanView.Cell("×", "out", PlanningWords.forbidden(names), path(plan, pair));
        }
        if (draft.isHindered(one) && !said.contains(Word.OVERRULED)) {
            return new PlanView.Cell("–", "out", PlanningWords.hindered(names), path(plan, pair));
        }
        var ink =
                most <= 0
                        ? 0
                        : (int) Math.round((INKS - 1) * Math.sqrt(Math.max(0, one.alone()) / most));
        return new PlanView.Cell(
                worth, "ink-" + ink, PlanningWords.worth(names, worth), path(plan, pair));
    }

    PlanView.Outlook outlook(PlanDraft draft, PlanOutlook outlook) {
        var played = outlook.played();
        return new PlanView.Outlook(
                range(played.worth()),
                range(played.hatchlings()),
                PlanningWords.basis(
                        played.runs(),
                        draft.sizes().hatched(),
                        draft.sizes().finished(),
                        Chances.percent(draft.sizes().hatches())),
                kinds(draft, outlook),
                outlook.unpriced().entrySet().stream()
                        .filter(each -> each.getValue() >= 0.05)
                        .map(
                                each ->
                                        new PlanView.Kind(
                                                each.getKey(),
                                                formats.decimals(each.getValue(), 1),
                                                "",
                                                ""))
                        .toList(),
                outlook.projects().stream().map(this::aim).toList(),
                WeeksDrawing.draw(
                        outlook.weeks(),
                        PlanOutlook.Week::boxes,
                        draft.rules().boxes(),
                        PlanningWords.BOXES_BY_WEEK),
                WeeksDrawing.draw(
                        outlook.weeks(),
                        PlanOutlook.Week::places,
                        draft.rules().places(),
                        PlanningWords.PLACES_BY_WEEK),
                outlook.weeks().stream()
                        .filter(week -> week.boxes() >= 0.05 || week.places() >= 0.05)
                        .map(
                                week ->
                                        new PlanView.Week(
                                                formats.date(LocalDate.parse(week.monday())),
                                                formats.decimals(week.boxes(), 1),
                                                formats.decimals(week.places(), 1)))
                        .toList());
    }

    private List<PlanView.Kind> kinds(PlanDraft draft, PlanOutlook outlook) {
        var steps = draft.steps();
        return outlook.priced().entrySet().stream()
                .filter(each -> each.getValue() >= 0.05)
                .map(
                        each ->
                                new PlanView.Kind(
                                        each.getKey(),
                                        formats.decimals(each.getValue(), 1),
                                        Optional.ofNullable(
                                                        outlook.played().kinds().get(each.getKey()))
                                                .map(PlanSheet::between)
                                                .orElse("0"),
                                        steps.getOrDefault(each.getKey(), List.of()).stream()
                                                .map(step -> money(step.price()))
                                                .collect(Collectors.joining(", then "))))
                .toList();
    }

    private static String between(Range range) {
        var low = Math.round(range.low());
        var high = Math.round(range.high());
        return low == high ? Long.toString(low) : low + "–" + high;
    }

    String range(Range range) {
        return PlanningWords.range(money(range.mean()), money(range.low()), money(range.high()));
    }

    private PlanView.Aim aim(PlanOutlook.Kept kept) {
        var keeping = kept.step().keep().get(kept.keeping());
        return new PlanView.Aim(
                kept.step().project().name(),
                "/projects/" + kept.step().project().id(),
                PlanningWords.keep(keeping),
                Chances.percent(kept.chance()),
                kept.pairs().stream()
                        .map(pair -> animal(pair.dam()).tag() + " × " + animal(pair.sire()).tag())
                        .collect(Collectors.joining(", ")));
    }

    List<String> notReady(PlanDraft draft) {
        var words = new ReadinessWords(formats);
        var sentences = new ArrayList<String>();
        for (var some : List.of(draft.females(), draft.males())) {
            for (var animal : some) {
                animal.against().forEach(finding -> sentences.add(words.of(animal.tag(), finding)));
            }
        }
        return sentences;
    }

    List<String> notes(PlanDraft draft) {
        var notes = new ArrayList<String>();
        var cautioned =
                draft.candidates().values().stream()
                        .filter(one -> !one.cautions().isEmpty())
                        .count();
        var related =
                draft.candidates().values().stream()
                        .filter(one -> one.kinship() > draft.rules().kinship())
                        .count();
        if (cautioned > 0) {
            notes.add(PlanningWords.cautioned(cautioned));
        }
        if (related > 0) {
            notes.add(PlanningWords.related(related, KinshipWords.figure(draft.rules().kinship())));
        }
        if (draft.tooYoung() > 0) {
            notes.add(PlanningWords.tooYoung(draft.tooYoung()));
        }
        draft.unsearched().forEach((project, why) -> notes.add(PlanningWords.noStep(project, why)));
        return notes;
    }
}
