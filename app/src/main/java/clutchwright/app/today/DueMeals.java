package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.records.husbandry.Happening;
import java.time.temporal.ChronoUnit;
import java.util.List;

/// Who goes without a meal for longer than is usual.
record DueMeals(Found found, Formats formats) {

    List<Due> all() {
        return found.hungry().stream().map(this::due).toList();
    }

    private Due due(Happening.Meal last) {
        return Due.of(
                        Due.Kind.FEEDING,
                        last.on(),
                        found.today(),
                        "/collection/" + last.animal().value(),
                        found.called(last.animal()),
                        "No meal taken for %s."
                                .formatted(
                                        formats.count(
                                                ChronoUnit.DAYS.between(last.on(), found.today()),
                                                "day",
                                                "days")),
                        "last %s%s"
                                .formatted(
                                        formats.dayOfYear(last.on()),
                                        last.prey().isBlank() ? "" : ", " + last.prey()),
                        false)
                .with(new Due.Meal(last.animal().value(), last.prey()))
                .at(found.spot(last.animal()));
    }
}
