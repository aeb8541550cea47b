package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.EggGlyphs;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Fate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// One clutch on the list.
///
/// @param boxes where eggs of it are waiting
public record ClutchCard(
        Clutch clutch, Couple couple, EggGlyphs eggs, List<Box> boxes, Incubation incubation) {

    public ClutchCard {
        boxes = List.copyOf(boxes);
    }

    /// What is to be done with a clutch.
    public enum Stage {
        HATCHING,
        INCUBATING,
        FINISHED
    }

    static ClutchCard of(Holding holding, Clutch clutch, Map<BoxId, Box> boxes) {
        return new ClutchCard(
                clutch,
                Couple.of(holding, clutch.parentage()),
                new EggGlyphs(clutch.eggs().stream().map(ClutchCard::look).toList()),
                clutch.incubating().stream()
                        .map(Egg::box)
                        .flatMap(Optional::stream)
                        .distinct()
                        .flatMap(id -> Optional.ofNullable(boxes.get(id)).stream())
                        .toList(),
                new Incubation(clutch.laid(), holding.today()));
    }

    public String link() {
        return "/eggs/" + clutch.id().value();
    }

    public Stage stage() {
        if (clutch.isComplete()) {
            return Stage.FINISHED;
        }
        return hatched() > 0 || incubation.isDue() ? Stage.HATCHING : Stage.INCUBATING;
    }

    public int waiting() {
        return clutch.incubating().size();
    }

    /// Eggs, not hatchlings.
    public long hatched() {
        return clutch.eggs().stream().filter(egg -> egg.fate() instanceof Fate.Hatched).count();
    }

    static EggGlyphs.Look look(Egg egg) {
        return switch (egg.fate()) {
            case Fate.Incubating() ->
                    isDoubtful(egg) ? EggGlyphs.Look.DOUBTFUL : EggGlyphs.Look.WAITING;
            case Fate.Slug() -> EggGlyphs.Look.SLUG;
            case Fate.Lost _ -> EggGlyphs.Look.LOST;
            case Fate.Hatched(_, var hatchlings) ->
                    hatchlings.size() > 1 ? EggGlyphs.Look.TWINS : EggGlyphs.Look.HATCHED;
        };
    }

    private static boolean isDoubtful(Egg egg) {
        return !egg.candlings().isEmpty()
                && egg.candlings().getLast().finding() != Candling.Finding.GOOD;
    }
}
