package clutchwright.app.eggs;

import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EmbryoHeat.Shape;

/// A box by both curves that the published figures allow for the eggs' heat.
///
/// @param logistic by the curve that flattens at the end
/// @param exponential by the one that does not
record BoxBand(EggBox.Warmth logistic, EggBox.Warmth exponential) {

    static BoxBand of(BoxAsked asked, int eggs, double development, Celsius setPoint) {
        return new BoxBand(
                asked.box(Shape.LOGISTIC).steady(eggs, development, setPoint),
                asked.box(Shape.EXPONENTIAL).steady(eggs, development, setPoint));
    }

    EggBox.Warmth cooler() {
        return logistic.egg().compareTo(exponential.egg()) <= 0 ? logistic : exponential;
    }

    EggBox.Warmth warmer() {
        return logistic.egg().compareTo(exponential.egg()) <= 0 ? exponential : logistic;
    }
}
