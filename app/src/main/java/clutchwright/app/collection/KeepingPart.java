package clutchwright.app.collection;

import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.records.husbandry.Happening;
import java.util.ArrayList;
import java.util.List;

/// What was done with the animal: weights, meals, sheds, notes on its health; newest first.
///
/// @param course the weights as a line over the days; empty for fewer than two
/// @param prey what it was fed last, to begin the next meal with
public record KeepingPart(
        Markup course,
        List<Line> weights,
        List<Line> meals,
        List<Line> sheds,
        List<Line> health,
        String prey) {

    public KeepingPart {
        weights = List.copyOf(weights);
        meals = List.copyOf(meals);
        sheds = List.copyOf(sheds);
        health = List.copyOf(health);
    }

    /// @param kind as its row is found again
    public record Line(String kind, long id, String when, String what, String notes) {}

    /// @param happenings newest first
    static KeepingPart of(List<Happening> happenings, Formats formats) {
        var weighings = new ArrayList<Happening.Weighing>();
        var weights = new ArrayList<Line>();
        var meals = new ArrayList<Line>();
        var sheds = new ArrayList<Line>();
        var health = new ArrayList<Line>();
        var prey = "";
        for (var happening : happenings) {
            switch (happening) {
                case Happening.Weighing weighing -> {
                    weighings.addFirst(weighing);
                    weights.add(
                            line("weighing", weighing, formats.weight(weighing.grams()), formats));
                }
                case Happening.Meal meal -> {
                    prey = prey.isEmpty() ? meal.prey() : prey;
                    meals.add(line("meal", meal, meal(meal, formats), formats));
                }
                case Happening.Shed shed ->
                        sheds.add(
                                line(
                                        "shed",
                                        shed,
                                        shed.complete() ? "in one piece" : "in pieces",
                                        formats));
                case Happening.HealthNote note -> health.add(line("health", note, "", formats));
            }
        }
        return new KeepingPart(
                WeightCourse.draw(weighings, formats), weights, meals, sheds, health, prey);
    }

    static String kind(Happening happening) {
        return switch (happening) {
            case Happening.Weighing _ -> "weighing";
            case Happening.Meal _ -> "meal";
            case Happening.Shed _ -> "shed";
            case Happening.HealthNote _ -> "health";
        };
    }

    private static Line line(String kind, Happening happening, String what, Formats formats) {
        return new Line(
                kind, happening.id(), formats.date(happening.on()), what, happening.notes());
    }

    static String meal(Happening.Meal meal, Formats formats) {
        var words = new ArrayList<String>();
        if (!meal.prey().isEmpty()) {
            words.add(meal.prey());
        }
        meal.grams().ifPresent(grams -> words.add(formats.weight(grams)));
        words.add(meal.taken() ? "taken" : "refused");
        return String.join(", ", words);
    }
}
