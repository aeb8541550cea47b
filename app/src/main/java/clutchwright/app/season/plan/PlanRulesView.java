package clutchwright.app.season.plan;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// What a plan has to keep to in this house.
public record PlanRulesView(Form form) implements View {

    @Override
    public String template() {
        return "season/plan/rules.jte";
    }

    @Override
    public String title() {
        return "Rules of the season's plan";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
