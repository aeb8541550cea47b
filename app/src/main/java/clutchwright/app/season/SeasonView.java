package clutchwright.app.season;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The pairings of a season.
///
/// @param seasons that can be chosen, the last first
/// @param parts of the list, none of them empty
/// @param plan the form that plans a pairing
/// @param asks a question to be answered before it is planned; empty where there is none
public record SeasonView(
        int season,
        List<Integer> seasons,
        List<Part> parts,
        Form plan,
        String asks,
        List<Choice> dams,
        List<Choice> sires)
        implements View {

    public SeasonView {
        seasons = List.copyOf(seasons);
        parts = List.copyOf(parts);
        dams = List.copyOf(dams);
        sires = List.copyOf(sires);
    }

    /// Pairings that have come equally far.
    public record Part(String id, String title, List<PairingCard> pairings) {

        public Part {
            pairings = List.copyOf(pairings);
        }
    }

    @Override
    public String template() {
        return "season/season.jte";
    }

    @Override
    public String title() {
        return "Season " + season;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }

    public boolean isEmpty() {
        return parts.isEmpty();
    }

    public int count() {
        return parts.stream().mapToInt(part -> part.pairings().size()).sum();
    }

    /// Whether the form stands open.
    public boolean planning() {
        return plan.isFaulty() || !asks.isEmpty();
    }
}
