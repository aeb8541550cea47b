package clutchwright.app.season;

import clutchwright.app.parts.ChanceLine;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Chances;
import clutchwright.engine.probability.Fraction;

/// A chance per egg, and of at least one in the clutch.
public record Odds(Fraction perEgg, Fraction inClutch) {

    public boolean isNone() {
        return perEgg.isNone();
    }

    public String fraction() {
        return perEgg.isNone() ? "none" : Chances.fraction(perEgg);
    }

    /// Beside the fraction; blank where the fraction is too long to be shown, and this stands for
    /// it.
    public String besides() {
        var percent = percent();
        return fraction().equals(percent) ? "" : percent;
    }

    public String percent() {
        return Chances.percent(perEgg.value());
    }

    public String atLeastOne() {
        return Chances.percent(inClutch.value());
    }

    public Markup line() {
        return ChanceLine.of(perEgg.value());
    }
}
