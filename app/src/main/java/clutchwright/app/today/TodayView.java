package clutchwright.app.today;

import clutchwright.app.today.Due.When;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HatchWords;
import clutchwright.records.animals.Status;
import clutchwright.records.clutches.Clutch;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// What is due today.
///
/// @param due in the order of their days
/// @param racks that can be fed at once
/// @param meals who goes without a meal for long, longest first
/// @param moreMeals how many more of those there are
/// @param weights females that are paired or expected to lay and were not weighed for long
/// @param young what hatchlings ask for in their first weeks, the oldest first
/// @param house how many animals and eggs there are; blank where there is nothing
public record TodayView(
        LocalDate today,
        boolean empty,
        List<Due> due,
        List<Rack> racks,
        List<Due> meals,
        int moreMeals,
        List<Due> weights,
        List<Due> young,
        int unsexed,
        int forSale,
        String house)
        implements View {

    public TodayView {
        due = List.copyOf(due);
        racks = List.copyOf(racks);
        meals = List.copyOf(meals);
        weights = List.copyOf(weights);
        young = List.copyOf(young);
    }

    private static final int FEW = 6;

    /// @param animals how many live in it
    public record Rack(long id, String name, int animals) {}

    static TodayView of(Found found, Formats formats, ZoneId zone) {
        var due = new ArrayList<Due>();
        due.addAll(new DueWarmth(found, formats, zone).all());
        due.addAll(new DueClutches(found, formats).all());
        due.addAll(new DuePairings(found, formats).all());
        due.removeIf(each -> each.from().isAfter(found.today().plusDays(RulesOfThumb.HORIZON)));
        due.sort(Due.ORDER);
        var meals = new DueMeals(found, formats).all();
        return new TodayView(
                found.today(),
                found.isEmpty(),
                due,
                found.racks().stream()
                        .map(rack -> new Rack(rack.id(), rack.name(), rack.animals()))
                        .toList(),
                meals,
                found.countHungry() - meals.size(),
                new DueWeights(found, formats).all(),
                new DueYoung(found, formats).all(),
                found.unsexed(),
                found.count(Status.FOR_SALE),
                house(found, formats));
    }

    private static String house(Found found, Formats formats) {
        var living =
                found.count(Status.KEPT)
                        + found.count(Status.HOLD_BACK)
                        + found.count(Status.FOR_SALE);
        var incubating = found.clutches().stream().filter(c -> !c.isComplete()).toList();
        var eggs = incubating.stream().map(Clutch::incubating).mapToInt(List::size).sum();
        return formats.count(living, "animal", "animals")
                + " in the house"
                + (incubating.isEmpty()
                        ? ", no eggs incubating"
                        : ", %s incubating with %s"
                                .formatted(
                                        formats.count(incubating.size(), "clutch", "clutches"),
                                        formats.count(eggs, "egg", "eggs")))
                + ".";
    }

    public List<When> groups() {
        return List.of(When.values());
    }

    public List<Due> at(When when) {
        return due.stream().filter(each -> each.when() == when).toList();
    }

    public boolean nothingDue() {
        return due.isEmpty()
                && meals.isEmpty()
                && weights.isEmpty()
                && young.isEmpty()
                && unsexed == 0;
    }

    /// On what the times rest.
    public String basis(Formats formats) {
        return "When a female lays and when eggs pip is forecast; her pairing under Season and their clutch under Eggs say why. %s The other times are rules of thumb, common practice for royal pythons."
                .formatted(HatchWords.usual(formats));
    }

    /// The first of them, and the others.
    public List<List<Due>> inTwo(List<Due> all) {
        int few = Math.min(FEW, all.size());
        return List.of(all.subList(0, few), all.subList(few, all.size()));
    }

    public String youngBasis() {
        return "A first shed is usual from day %d on, the first meal after it or on day %d: common practice. One that eats nothing for weeks needs a reptile veterinarian."
                .formatted(RulesOfThumb.SHED_FIRST, RulesOfThumb.FIRST_MEAL);
    }

    public String weightBasis() {
        return "Asked for after %d days, of the females that are paired or expected to lay: common practice. One that loses weight while she should build needs a reptile veterinarian."
                .formatted(RulesOfThumb.WEIGHED);
    }

    /// When a meal is asked for.
    public String mealBasis() {
        return "Asked for after %d days, of the young after %d. Your own rhythm decides; many fast in the breeding season. One that loses weight needs a reptile veterinarian."
                .formatted(RulesOfThumb.ADULT_HUNGRY, RulesOfThumb.YOUNG_HUNGRY);
    }

    @Override
    public String template() {
        return "today/today.jte";
    }

    @Override
    public String title() {
        return "Today";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.TODAY);
    }
}
