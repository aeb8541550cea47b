package clutchwright.app.labels;

/// What is said of labels.
final class LabelWords {

    private LabelWords() {}

    static String sheet(LabelSettings settings) {
        var own = settings.own();
        return settings.size()
                .map(SheetSize::title)
                .orElseGet(
                        () ->
                                "Your own sheet, %d labels of %s × %s mm (%d × %d)"
                                        .formatted(
                                                own.perSheet(),
                                                SheetForm.text(own.labelWidth()),
                                                SheetForm.text(own.labelHeight()),
                                                own.columns(),
                                                own.rows()));
    }

    static String none(Wanted wanted) {
        return switch (wanted) {
            case Wanted.OneAnimal _ -> "That animal is not on record any more.";
            case Wanted.AnimalsOfRoom _ -> "Nobody lives in that room.";
            case Wanted.AnimalsOfRack _ -> "Nobody lives in that rack.";
            case Wanted.Filtered _ -> "No animal fits those filters.";
            case Wanted.TubsOfRoom _ -> "That room has no tub.";
            case Wanted.TubsOfRack _ -> "That rack has no tub.";
            case Wanted.BoxesOfSeason _, Wanted.BoxesOfClutch _ ->
                    "None of those eggs is waited for in a box. A clutch's page puts them into one.";
        };
    }
}
