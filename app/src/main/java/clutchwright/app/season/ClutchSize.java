package clutchwright.app.season;

import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SpeciesWords;
import clutchwright.engine.catalogue.Species;
import clutchwright.records.clutches.Clutch;
import java.util.Arrays;
import java.util.List;

/// Of how many eggs a prediction speaks, and why.
///
/// @param eggs all of which hatch
/// @param usual what it is unless the keeper says otherwise
/// @param basis where the usual number comes from, as a sentence
/// @param fault what is wrong with what was typed; empty where nothing is
public record ClutchSize(int eggs, int usual, String basis, String fault) {

    static final int MOST = 100;

    /// @param clutches that she laid
    static ClutchSize of(Form form, List<Clutch> clutches, Species species, Formats formats) {
        var good = clutches.stream().mapToInt(Clutch::goodEggs).filter(n -> n > 0).toArray();
        var mean = Arrays.stream(good).average();
        int usual =
                mean.isPresent()
                        ? Math.toIntExact(Math.round(mean.getAsDouble()))
                        : species.typicalClutch();
        var basis =
                mean.isPresent()
                        ? "Her own mean is %s good eggs, over %s."
                                .formatted(
                                        formats.decimals(mean.getAsDouble(), 1),
                                        formats.count(good.length, "clutch", "clutches"))
                        : "A usual clutch of a %s has %d eggs; none of hers is on record."
                                .formatted(SpeciesWords.within(species), usual);
        var typed = form.text("eggs");
        if (typed.isEmpty()) {
            return new ClutchSize(usual, usual, basis, "");
        }
        if (typed.matches("\\d{1,3}")) {
            int eggs = Integer.parseInt(typed);
            if (eggs >= 1 && eggs <= MOST) {
                return new ClutchSize(eggs, usual, basis, "");
            }
        }
        return new ClutchSize(
                usual,
                usual,
                basis,
                "Write a whole number from 1 to %d, not “%s”.".formatted(MOST, typed));
    }

    /// Where the slider ends: twice a usual clutch, and never before what is shown.
    public int sliderEnd() {
        return Math.max(eggs, Math.max(12, 2 * usual));
    }
}
