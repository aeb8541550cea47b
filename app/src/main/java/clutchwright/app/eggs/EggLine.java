package clutchwright.app.eggs;

import clutchwright.app.parts.EggGlyphs;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.Fate;
import java.util.List;
import java.util.Optional;

/// One egg on its clutch's page.
///
/// @param box where it is, or was last
public record EggLine(Egg egg, Optional<Box> box, List<Hatchling> hatchlings) {

    public EggLine {
        hatchlings = List.copyOf(hatchlings);
    }

    /// What came out.
    public record Hatchling(long id, String tag, GeneLineMarkup genes) {

        public String link() {
            return "/collection/" + id;
        }
    }

    public EggGlyphs.Look look() {
        return ClutchCard.look(egg);
    }

    public boolean isWaiting() {
        return egg.fate() instanceof Fate.Incubating;
    }

    /// Whether it may still be marked in any way.
    public boolean canBeMarked() {
        return !(egg.fate() instanceof Fate.Hatched);
    }

    /// What a form sends for it: its id, and its version as it was seen.
    public String value() {
        return egg.id().value() + "." + egg.version();
    }

    /// The last look through its shell, while it is waited for.
    public Optional<Candling> lastCandling() {
        return isWaiting() && !egg.candlings().isEmpty()
                ? Optional.of(egg.candlings().getLast())
                : Optional.empty();
    }

    /// What it was found to have died of, if that was written down.
    public String finding() {
        return egg.fate() instanceof Fate.Lost(_, var finding) ? finding : "";
    }
}
