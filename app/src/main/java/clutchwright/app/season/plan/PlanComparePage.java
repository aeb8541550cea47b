package clutchwright.app.season.plan;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.plans.PlanId;
import clutchwright.records.plans.Plans;
import clutchwright.records.plans.SavedPlan;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// Two plans side by side: where they differ, and what that brings.
@Controller
public class PlanComparePage {

    private static final String NO_MALE = "no male";

    private final Holding holding;
    private final Preferring preferring;
    private final PlanBoard board;

    PlanComparePage(Holding holding, Preferring preferring, PlanBoard board) {
        this.holding = holding;
        this.preferring = preferring;
        this.board = board;
    }

    @GetMapping(PlanPage.PATH + "/compare")
    public Reply show(Form query) {
        var one = find(query.text("one"));
        var other = find(query.text("other"));
        return one.isPresent() && other.isPresent()
                ? Reply.show(view(one.get(), other.get()))
                : Reply.missing("One of the two plans is not on record any more.");
    }

    private Optional<SavedPlan> find(String id) {
        return id.matches("\\d{1,18}")
                ? holding.database().read(tx -> new Plans(tx).find(new PlanId(Long.parseLong(id))))
                : Optional.empty();
    }

    private PlanCompareView view(SavedPlan one, SavedPlan other) {
        var sheet = new PlanSheet(holding, new Formats(preferring.preferences()));
        var rows = new ArrayList<PlanCompareView.Row>();
        PlanBoard.differences(one, other)
                .forEach(
                        (dam, pairs) ->
                                rows.add(
                                        new PlanCompareView.Row(
                                                sheet.animal(dam),
                                                sire(sheet, pairs.getFirst()),
                                                sire(sheet, pairs.getLast()))));
        return new PlanCompareView(
                one.season(),
                side(sheet, one),
                side(sheet, other),
                rows,
                figures(one, other, new Formats(preferring.preferences())));
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static String sire(PlanSheet sheet, Optional<SavedPlan.Pair> pair) {
        return pair.map(found -> sheet.animal(found.sire()).tag()).orElse(NO_MALE);
    }

    private PlanCompareView.Side side(PlanSheet sheet, SavedPlan plan) {
        return new PlanCompareView.Side(
                plan.name(),
                PlanPage.path(plan),
                sheet.money(plan.worth()),
                plan.pairs().size(),
                board.outlook(plan)
                        .map(outlook -> sheet.range(outlook.played().worth()))
                        .orElse(""));
    }

    /// Hatchlings expected of each kind, where the two differ.
    private List<PlanCompareView.Figure> figures(SavedPlan one, SavedPlan other, Formats formats) {
        var here = board.outlook(one);
        var there = board.outlook(other);
        if (here.isEmpty() || there.isEmpty()) {
            return List.of();
        }
        var kinds = new LinkedHashSet<>(here.get().priced().keySet());
        kinds.addAll(there.get().priced().keySet());
        var figures = new ArrayList<PlanCompareView.Figure>();
        for (var kind : kinds) {
            var first = formats.decimals(here.get().priced().getOrDefault(kind, 0.0), 1);
            var second = formats.decimals(there.get().priced().getOrDefault(kind, 0.0), 1);
            if (!first.equals(second)) {
                figures.add(new PlanCompareView.Figure(kind, first, second));
            }
        }
        return figures;
    }
}
