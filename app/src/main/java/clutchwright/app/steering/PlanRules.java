package clutchwright.app.steering;

import clutchwright.records.settings.Settings;
import java.util.Optional;
import java.util.function.Function;

/// What a house's plan of a season has to keep to, and what else counts in it.
///
/// @param clutches that it can take altogether; empty for as many as there are females
/// @param kinship of a pair at most, which is the inbreeding of their young
/// @param females of a male at most
/// @param boxes for eggs that there are; empty where they are no limit
/// @param places for hatchlings that there are; empty where they are no limit
/// @param placeWeeks that a hatchling needs its place
/// @param questionWorth what an open question of a gene, settled, is worth
/// @param seconds to look for the best plan at most
@SuppressWarnings("OptionalUsedAsFieldOrParameterType")
public record PlanRules(
        Optional<Integer> clutches,
        double kinship,
        int females,
        Optional<Integer> boxes,
        Optional<Integer> places,
        int placeWeeks,
        double questionWorth,
        int seconds) {

    private static final String PLAN = "plan/";
    private static final String CLUTCHES = PLAN + "clutches";
    private static final String KINSHIP = PLAN + "kinship";
    private static final String FEMALES = PLAN + "females-of-a-male";
    private static final String BOXES = PLAN + "boxes";
    private static final String PLACES = PLAN + "places";
    private static final String PLACE_WEEKS = PLAN + "place-weeks";
    private static final String QUESTION = PLAN + "question-worth";
    private static final String SECONDS = PLAN + "seconds";

    /// Closer kin than half-siblings are left out, and a male has five females at most: common
    /// practice, no source.
    public static final PlanRules USUAL =
            new PlanRules(
                    Optional.empty(), 0.125, 5, Optional.empty(), Optional.empty(), 12, 0, 60);

    /// The same with limits of its own.
    public PlanRules within(int mostClutches, int eggBoxes, int youngPlaces) {
        return new PlanRules(
                Optional.of(mostClutches),
                kinship,
                females,
                Optional.of(eggBoxes),
                Optional.of(youngPlaces),
                placeWeeks,
                questionWorth,
                seconds);
    }

    public static PlanRules read(Settings settings) {
        return new PlanRules(
                settings.find(CLUTCHES).map(Integer::parseInt),
                read(settings, KINSHIP, USUAL.kinship, Double::parseDouble),
                read(settings, FEMALES, USUAL.females, Integer::parseInt),
                settings.find(BOXES).map(Integer::parseInt),
                settings.find(PLACES).map(Integer::parseInt),
                read(settings, PLACE_WEEKS, USUAL.placeWeeks, Integer::parseInt),
                read(settings, QUESTION, USUAL.questionWorth, Double::parseDouble),
                read(settings, SECONDS, USUAL.seconds, Integer::parseInt));
    }

    private static <T> T read(Settings settings, String name, T usual, Function<String, T> as) {
        return settings.find(name).map(as).orElse(usual);
    }

    public void write(Settings settings) {
        put(settings, CLUTCHES, clutches);
        put(settings, KINSHIP, Optional.of(kinship));
        put(settings, FEMALES, Optional.of(females));
        put(settings, BOXES, boxes);
        put(settings, PLACES, places);
        put(settings, PLACE_WEEKS, Optional.of(placeWeeks));
        put(settings, QUESTION, Optional.of(questionWorth));
        put(settings, SECONDS, Optional.of(seconds));
    }

    private static void put(Settings settings, String name, Optional<?> value) {
        value.ifPresentOrElse(
                held -> settings.put(name, held.toString()), () -> settings.remove(name));
    }
}
