package clutchwright.app.holding;

import clutchwright.engine.incubation.ClutchSplit;
import clutchwright.engine.incubation.Conductance;
import clutchwright.records.settings.Settings;
import java.util.Optional;

/// What the keeper goes by when eggs are put into boxes.
///
/// @param mostInBox eggs that share a box at most, from 1 to 60
/// @param usualBox what the house's usual box lets out; empty where it is a tub of 20 litres
@SuppressWarnings("OptionalUsedAsFieldOrParameterType")
public record EggRules(int mostInBox, Optional<Conductance> usualBox) {

    private static final String MOST = "eggs/most-in-box";
    private static final String BOX = "eggs/box-watts-per-kelvin";

    public static EggRules read(Settings settings) {
        return new EggRules(
                settings.find(MOST).map(Integer::parseInt).orElse(ClutchSplit.MOST_IN_A_BOX),
                settings.find(BOX).map(Double::parseDouble).map(Conductance::new));
    }

    public void write(Settings settings) {
        settings.put(MOST, Integer.toString(mostInBox));
        usualBox.ifPresentOrElse(
                box -> settings.put(BOX, Double.toString(box.wattsPerKelvin())),
                () -> settings.remove(BOX));
    }

    public Conductance box() {
        return usualBox.orElse(Conductance.STANDARD);
    }
}
