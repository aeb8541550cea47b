package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.season.AtStake;
import clutchwright.app.season.CautionCard;
import clutchwright.app.steering.WorkDesk;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import clutchwright.app.wording.Chances;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.KinshipWords;
import clutchwright.app.wording.PlanningWords;
import clutchwright.app.wording.ReadinessWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.plans.PlanId;
import clutchwright.records.plans.PlanWord;
import clutchwright.records.plans.PlanWord.Word;
import clutchwright.records.plans.PlanWords;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.SavedPlan;
import clutchwright.records.plans.SavedPlan.Pair;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// One pair of a season's plan: why it, what another would cost, and what the keeper says of it.
@Controller
public class PlanPairPage {

    private static final String GONE =
            "This pair was not looked at in this plan: work the plan out anew.";
    private static final int OTHERS = 5;

    private final Holding holding;
    private final Preferring preferring;
    private final PlanBoard board;
    private final WorkDesk desk;

    PlanPairPage(Holding holding, Preferring preferring, PlanBoard board, WorkDesk desk) {
        this.holding = holding;
        this.preferring = preferring;
        this.board = board;
        this.desk = desk;
    }

    /// A pair, with the plan that it is looked at in.
    private record Asked(SavedPlan plan, PlanDraft draft, Candidate candidate) {

        Pair pair() {
            return candidate.pair();
        }

        String path() {
            return PlanSheet.path(plan, pair());
        }
    }

    @GetMapping(PlanPage.PATH + "/pair")
    public Reply show(Form query) {
        return asked(query)
                .<Reply>map(asked -> Reply.show(view(asked, Form.EMPTY)))
                .orElseGet(() -> Reply.missing(GONE));
    }

    private Optional<Asked> asked(Form form) {
        var plan =
                number(form, "plan")
                        .flatMap(
                                id ->
                                        holding.database()
                                                .read(tx -> new Plans(tx).find(new PlanId(id))));
        return plan.flatMap(
                saved ->
                        board.draft(saved.season())
                                .flatMap(
                                        draft ->
                                                number(form, "dam")
                                                        .flatMap(
                                                                dam ->
                                                                        number(form, "sire")
                                                                                .flatMap(
                                                                                        sire ->
                                                                                                draft
                                                                                                        .find(
                                                                                                                new Pair(
                                                                                                                        new AnimalId(
                                                                                                                                dam),
                                                                                                                        new AnimalId(
                                                                                                                                sire)))))
                                                        .map(
                                                                candidate ->
                                                                        new Asked(
                                                                                saved, draft,
                                                                                candidate))));
    }

    private static Optional<Long> number(Form form, String field) {
        var text = form.text(field);
        return text.matches("\\d{1,18}") ? Optional.of(Long.parseLong(text)) : Optional.empty();
    }

    /// Pins, forbids or overrules, or takes that back.
    @PostMapping(PlanPage.PATH + "/say")
    public Reply say(Form form) {
        return asked(form).map(asked -> say(asked, form)).orElseGet(() -> Reply.missing(GONE));
    }

    private Reply say(Asked asked, Form form) {
        var word =
                List.of(Word.values()).stream()
                        .filter(each -> each.name().equals(form.text("word")))
                        .findFirst();
        if (word.isEmpty()) {
            return Reply.missing(GONE);
        }
        var reason = form.text("reason");
        var back = form.has("back", "yes");
        if (!back && word.get() == Word.OVERRULED && reason.isBlank()) {
            return Reply.faulty(
                    view(
                            asked,
                            form.withFault(
                                    "reason",
                                    "Write why it is to be made although something speaks"
                                            + " against it.")));
        }
        var pair = asked.pair();
        var season = asked.plan().season();
        var names = names(asked.candidate());
        var words = PlanningWords.word(word.get(), "");
        var written =
                board.write(
                        season,
                        back
                                ? "%s is no longer %s in the plan for %d"
                                        .formatted(names, words, season)
                                : "%s is %s in the plan for %d".formatted(names, words, season),
                        tx -> {
                            var said = new PlanWords(tx);
                            if (back) {
                                return said.takeBack(season, pair.dam(), pair.sire(), word.get());
                            }
                            said.say(season, pair.dam(), pair.sire(), word.get(), reason);
                            return true;
                        });
        return written.going(
                asked.path(),
                "%s is %s%s. Work the plan out anew to see what that changes."
                        .formatted(names, back ? "no longer " : "", words));
    }

    private static String names(Candidate candidate) {
        return candidate.dam().tag() + " × " + candidate.sire().tag();
    }

    /// What it costs to make the pair in any case.
    @PostMapping(PlanPage.PATH + "/instead")
    public Reply instead(Form form) {
        return asked(form)
                .<Reply>map(
                        asked ->
                                desk.start(
                                        "plan " + asked.path(),
                                        "What %s would cost".formatted(names(asked.candidate())),
                                        Section.SEASON,
                                        watch -> {
                                            board.workInstead(asked.plan(), asked.pair(), watch);
                                            return Reply.go(asked.path());
                                        }))
                .orElseGet(() -> Reply.missing(GONE));
    }

    private PlanPairView view(Asked asked, Form form) {
        var formats = new Formats(preferring.preferences());
        var sheet = new PlanSheet(holding, formats);
        var one = asked.candidate();
        var pair = one.pair();
        var words =
                board.words(asked.plan().season()).stream()
                        .filter(word -> PlanDraft.pair(word).equals(pair))
                        .toList();
        var made =
                holding.database()
                        .read(
                                tx ->
                                        new Pairings(tx)
                                                .ofSeason(asked.plan().season()).stream()
                                                        .anyMatch(
                                                                pairing ->
                                                                        pairing.dam()
                                                                                        .equals(
                                                                                                pair
                                                                                                        .dam())
                                                                                && pairing.sire()
                                                                                        .equals(
                                                                                                pair
                                                                                                        .sire())));
        return new PlanPairView(
                asked.plan().season(),
                asked.plan().id().value(),
                asked.plan().name(),
                pair.dam().value(),
                pair.sire().value(),
                sheet.animal(pair.dam()),
                sheet.animal(pair.sire()),
                asked.plan().pairs().contains(pair),
                made,
                has(words, Word.PINNED),
                has(words, Word.FORBIDDEN),
                words.stream()
                        .filter(word -> word.word() == Word.OVERRULED)
                        .map(PlanWord::reason)
                        .findFirst()
                        .orElse(""),
                sheet.money(one.alone()),
                parts(asked, sheet, formats),
                kinds(one, sheet, formats),
                why(asked, sheet, formats),
                loss(asked, sheet),
                against(asked, formats),
                one.cautions().stream()
                        .map(
                                caution ->
                                        CautionCard.of(
                                                caution,
                                                new AtStake(
                                                        asked.draft().model(),
                                                        one.dam().genotype(),
                                                        one.sire().genotype()),
                                                formats))
                        .toList(),
                KinshipWords.young(one.kinship()),
                sheet.others(asked.plan(), pair.dam(), pair, asked.draft(), OTHERS),
                "/season/predict?damTag="
                        + URLEncoder.encode(one.dam().tag(), StandardCharsets.UTF_8)
                        + "&sireTag="
                        + URLEncoder.encode(one.sire().tag(), StandardCharsets.UTF_8),
                form);
    }

    private static boolean has(List<PlanWord> words, Word word) {
        return words.stream().anyMatch(each -> each.word() == word);
    }

    private static List<PlanPairView.Part> parts(Asked asked, PlanSheet sheet, Formats formats) {
        var one = asked.candidate();
        var parts = new ArrayList<PlanPairView.Part>();
        var looks = one.alone() - one.worth().sum();
        var hatchlings = formats.decimals(one.hatchlings(), 1);
        parts.add(
                new PlanPairView.Part(
                        "What shows",
                        sheet.money(looks),
                        PlanningWords.looksBasis(
                                hatchlings,
                                formats.decimals(
                                        one.dam()
                                                .laying()
                                                .map(PlanAnimal.Laying::meanEggs)
                                                .orElse(0.0),
                                        1),
                                one.dam().laying().map(PlanAnimal.Laying::clutches).orElse(0),
                                Chances.percent(
                                        one.dam()
                                                .laying()
                                                .map(PlanAnimal.Laying::lays)
                                                .orElse(0.0)),
                                Chances.percent(asked.draft().sizes().hatches()),
                                Chances.percent(one.dying()))));
        if (one.worth().hets() > 0) {
            parts.add(
                    new PlanPairView.Part(
                            "What is carried unseen",
                            sheet.money(one.worth().hets()),
                            PlanningWords.HETS_BASIS));
        }
        if (!one.steps().isEmpty()) {
            parts.add(
                    new PlanPairView.Part(
                            "Projects",
                            sheet.money(one.worth().projects()),
                            PlanningWords.stepOf(
                                    one.steps().stream()
                                            .map(step -> step.project().name())
                                            .distinct()
                                            .collect(Collectors.joining(", ")))));
        }
        if (one.bits() > 0.005) {
            parts.add(
                    new PlanPairView.Part(
                            "Open questions",
                            sheet.money(one.worth().questions()),
                            PlanningWords.questions(formats.decimals(one.bits(), 2))));
        }
        return parts;
    }

    private static List<PlanPairView.Kind> kinds(Candidate one, PlanSheet sheet, Formats formats) {
        var kinds = new ArrayList<PlanPairView.Kind>();
        one.kinds()
                .priced()
                .forEach(
                        (kind, chance) ->
                                kinds.add(
                                        new PlanPairView.Kind(
                                                kind,
                                                Chances.percent(chance),
                                                formats.decimals(one.hatchlings() * chance, 1),
                                                one
                                                        .kinds()
                                                        .steps()
                                                        .getOrDefault(kind, List.of())
                                                        .stream()
                                                        .map(step -> sheet.money(step.price()))
                                                        .collect(Collectors.joining(", then ")))));
        one.kinds()
                .unpriced()
                .forEach(
                        (kind, chance) ->
                                kinds.add(
                                        new PlanPairView.Kind(
                                                kind,
                                                Chances.percent(chance),
                                                formats.decimals(one.hatchlings() * chance, 1),
                                                "")));
        return kinds;
    }

    private List<String> why(Asked asked, PlanSheet sheet, Formats formats) {
        var one = asked.candidate();
        var draft = asked.draft();
        var sentences = new ArrayList<String>();
        var hers = draft.malesFor(one.damId());
        var place = hers.indexOf(one);
        if (place >= 0) {
            sentences.add(
                    PlanningWords.place(one.sire().tag(), place + 1, hers.size(), one.dam().tag()));
        }
        var used =
                asked.plan().pairs().stream()
                        .filter(pair -> pair.sire().equals(one.sireId()))
                        .count();
        sentences.add(
                PlanningWords.used(
                        one.sire().tag(),
                        used,
                        draft.rules().females(),
                        formats.count(used, "female", "females")));
        asked.plan().pairs().stream()
                .filter(pair -> pair.dam().equals(one.damId()))
                .filter(pair -> !pair.equals(one.pair()))
                .findFirst()
                .flatMap(draft::find)
                .ifPresent(
                        other ->
                                sentences.add(
                                        PlanningWords.hasAnother(
                                                one.dam().tag(),
                                                other.sire().tag(),
                                                sheet.money(other.alone()))));
        sentences.add(PlanningWords.TOGETHER);
        return sentences;
    }

    private String loss(Asked asked, PlanSheet sheet) {
        return board.loss(asked.plan().id(), asked.pair())
                .map(
                        loss ->
                                loss.map(
                                                value ->
                                                        PlanningWords.costs(
                                                                names(asked.candidate()),
                                                                sheet.money(value),
                                                                value < 0.5))
                                        .orElseGet(
                                                () ->
                                                        PlanningWords.cannot(
                                                                names(asked.candidate()))))
                .orElse("");
    }

    private static List<String> against(Asked asked, Formats formats) {
        var words = new ReadinessWords(formats);
        var one = asked.candidate();
        var sentences = new ArrayList<String>();
        for (var animal : List.of(one.dam(), one.sire())) {
            animal.against().forEach(finding -> sentences.add(words.of(animal.tag(), finding)));
        }
        if (one.kinship() > asked.draft().rules().kinship()) {
            sentences.add(
                    PlanningWords.tooClose(
                            KinshipWords.figure(one.kinship()),
                            KinshipWords.figure(asked.draft().rules().kinship())));
        }
        return sentences;
    }
}
