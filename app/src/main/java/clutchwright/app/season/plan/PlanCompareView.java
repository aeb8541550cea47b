package clutchwright.app.season.plan;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// Two plans of a season side by side.
///
/// @param rows females whose male differs
/// @param figures hatchlings expected of kinds that differ
public record PlanCompareView(
        int season, Side one, Side other, List<Row> rows, List<Figure> figures) implements View {

    public PlanCompareView {
        rows = List.copyOf(rows);
        figures = List.copyOf(figures);
    }

    /// @param range of its worth; blank where it was not worked out since the program began
    public record Side(String name, String path, String worth, int pairings, String range) {}

    public record Row(PlanView.Animal dam, String one, String other) {}

    public record Figure(String kind, String one, String other) {}

    @Override
    public String template() {
        return "season/plan/compare.jte";
    }

    @Override
    public String title() {
        return one.name() + " and " + other.name();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
