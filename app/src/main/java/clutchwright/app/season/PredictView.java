package clutchwright.app.season;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.CautionWords;
import java.util.List;
import java.util.Optional;

/// What pairings give, before they are made.
///
/// @param species whose genes are typed
/// @param speciesName in words
/// @param lead what to do next where there is no prediction yet
/// @param dams what the field for the dam offers
/// @param sires what the fields for sires offer
/// @param size of how many eggs the figures speak
/// @param sought what is asked of the young
/// @param prospects none before a pair is chosen, one, or one a sire to be compared
/// @param moreKinds the address that lists more kinds
/// @param comparing whether fields for more sires stand open
public record PredictView(
        Form form,
        String species,
        String speciesName,
        String lead,
        List<Choice> speciesChoices,
        List<Choice> dams,
        List<Choice> sires,
        ClutchSize size,
        Sought sought,
        List<Prospect> prospects,
        String moreKinds,
        boolean comparing)
        implements View {

    public PredictView {
        speciesChoices = List.copyOf(speciesChoices);
        dams = List.copyOf(dams);
        sires = List.copyOf(sires);
        prospects = List.copyOf(prospects);
    }

    @Override
    public String template() {
        return "season/predict.jte";
    }

    @Override
    public String title() {
        return prospects.isEmpty() ? "Predict a pairing" : heading() + " · Prediction";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }

    /// `D-30 × E-11`, or what the page is for.
    public String heading() {
        return switch (prospects.size()) {
            case 0 -> "What would a pairing give?";
            case 1 ->
                    prospects.getFirst().dam().title()
                            + " × "
                            + prospects.getFirst().sire().title();
            default -> prospects.size() + " sires for " + prospects.getFirst().dam().title();
        };
    }

    /// Whether the fields for the pair stand open.
    public boolean choosing() {
        return prospects.isEmpty() || form.isFaulty() || comparing;
    }

    public boolean isComparison() {
        return prospects.size() > 1;
    }

    public Prospect only() {
        return prospects.getFirst();
    }

    public boolean hasCautions() {
        return prospects.stream().anyMatch(prospect -> !prospect.cautions().isEmpty());
    }

    public String askVeterinarian() {
        return CautionWords.ASK_A_VETERINARIAN;
    }

    public String localLaw() {
        return CautionWords.LOCAL_LAW;
    }

    /// The address that opens the fields for more sires.
    public String compare() {
        return Address.of(form.with("compare", "1")) + "#sire2";
    }

    /// `6 eggs`, for headings.
    public String eggs() {
        return size.eggs() == 1 ? "1 egg" : size.eggs() + " eggs";
    }
}
