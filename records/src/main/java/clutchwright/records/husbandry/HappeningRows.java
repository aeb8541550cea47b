package clutchwright.records.husbandry;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.checks.Field;
import clutchwright.records.husbandry.Happening.HealthNote;
import clutchwright.records.husbandry.Happening.Meal;
import clutchwright.records.husbandry.Happening.Shed;
import clutchwright.records.husbandry.Happening.Weighing;
import clutchwright.records.store.Row;
import clutchwright.records.store.Values;

/// Happenings as rows, and back.
final class HappeningRows {

    private HappeningRows() {}

    static String table(Happening happening) {
        return switch (happening) {
            case Weighing _ -> "weighing";
            case Meal _ -> "meal";
            case Shed _ -> "shed";
            case HealthNote _ -> "health_note";
        };
    }

    static Field field(Happening happening) {
        return switch (happening) {
            case Weighing _ -> Field.WEIGHED;
            case Meal _ -> Field.FED;
            case Shed _ -> Field.SHED;
            case HealthNote _ -> Field.NOTED;
        };
    }

    static Values write(Happening happening) {
        var values =
                Values.of()
                        .set("animal", happening.animal().value())
                        .set("made_on", happening.on())
                        .set("notes", happening.notes().strip());
        return switch (happening) {
            case Weighing weighing -> values.set("grams", weighing.grams());
            case Meal meal ->
                    values.set("prey", meal.prey().strip())
                            .setIfAny("grams", meal.grams())
                            .set("taken", meal.taken());
            case Shed shed -> values.set("complete", shed.complete());
            case HealthNote _ -> values;
        };
    }

    static Happening read(String table, Row row) {
        long id = row.number("id");
        long version = row.number("version");
        var animal = new AnimalId(row.number("animal"));
        var on = row.day("made_on");
        var notes = row.text("notes");
        return switch (table) {
            case "weighing" -> new Weighing(id, version, animal, on, row.real("grams"), notes);
            case "meal" ->
                    new Meal(
                            id,
                            version,
                            animal,
                            on,
                            row.text("prey"),
                            row.findReal("grams"),
                            row.truth("taken"),
                            notes);
            case "shed" -> new Shed(id, version, animal, on, row.truth("complete"), notes);
            case "health_note" -> new HealthNote(id, version, animal, on, notes);
            case String other -> throw new IllegalArgumentException("no happenings in " + other);
        };
    }
}
