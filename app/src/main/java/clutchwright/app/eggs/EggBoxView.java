package clutchwright.app.eggs;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// How warm eggs make their box.
///
/// @param found what follows; empty where the form is faulty
public record EggBoxView(Form form, Optional<EggBoxFound> found) implements View {

    @Override
    public String template() {
        return "eggs/box.jte";
    }

    @Override
    public String title() {
        return "Egg box";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public List<Choice> tubs() {
        return Arrays.stream(BoxAsked.Tub.values())
                .map(tub -> Choice.of(tub, tub.label()))
                .toList();
    }

    /// @param late the eggs' warmth in the last days
    /// @param judged what that means
    /// @param trouble from which day on it is too warm; or that it is never
    /// @param onDay the day that is asked for
    /// @param highest the set point that late eggs allow
    /// @param hatch when they hatch
    /// @param damp when the lid fogs
    /// @param air how long a sealed box lasts
    /// @param splits in one box, in two, in three
    /// @param cut hours after a power cut
    /// @param cutWords how long there is
    public record EggBoxFound(
            String late,
            String judged,
            boolean grave,
            String trouble,
            String onDay,
            String highest,
            String hatch,
            String damp,
            String air,
            Markup drawing,
            List<Split> splits,
            List<Hour> cut,
            String cutWords) {

        public EggBoxFound {
            splits = List.copyOf(splits);
            cut = List.copyOf(cut);
        }
    }

    /// @param rule whether it is what the keeper's rule asks for
    public record Split(String boxes, String warmth, String judged, boolean rule) {}

    public record Hour(int hours, String egg) {}
}
