package clutchwright.app.today;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.time.LocalDate;
import java.util.Optional;

/// What is due today.
public record TodayView(LocalDate today) implements View {

    @Override
    public String template() {
        return "today/today.jte";
    }

    @Override
    public String title() {
        return "Today";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.TODAY);
    }
}
