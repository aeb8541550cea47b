package clutchwright.app.season.plan;

import clutchwright.app.season.CautionCard;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// One pair of a season's plan: what it may bring, why it was chosen or not, and what the keeper
/// says of it.
///
/// @param parts what its worth is made of
/// @param kinds what its young sell as
/// @param instead what it costs to make it in any case; blank where nobody asked yet
/// @param against what speaks against it, as sentences
/// @param why why it is in the plan or not, as sentences
public record PlanPairView(
        int season,
        long plan,
        String planName,
        long dam,
        long sire,
        PlanView.Animal damAnimal,
        PlanView.Animal sireAnimal,
        boolean chosen,
        boolean made,
        boolean pinned,
        boolean forbidden,
        String overruled,
        String worth,
        List<Part> parts,
        List<Kind> kinds,
        List<String> why,
        String instead,
        List<String> against,
        List<CautionCard> cautions,
        String related,
        List<PlanView.Other> others,
        String predict,
        Form form)
        implements View {

    public PlanPairView {
        parts = List.copyOf(parts);
        kinds = List.copyOf(kinds);
        why = List.copyOf(why);
        against = List.copyOf(against);
        cautions = List.copyOf(cautions);
        others = List.copyOf(others);
    }

    /// @param basis how it comes about
    public record Part(String what, String worth, String basis) {}

    /// @param price blank where it has none
    public record Kind(String name, String chance, String expected, String price) {}

    public boolean isHindered() {
        return !against.isEmpty() || !cautions.isEmpty();
    }

    @Override
    public String template() {
        return "season/plan/pair.jte";
    }

    @Override
    public String title() {
        return damAnimal.tag() + " × " + sireAnimal.tag() + " in " + planName;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
