package clutchwright.app.today;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// The calendar that a phone subscribes to.
///
/// @param made whether there is an address
/// @param address the whole of it, shown once when it is made; blank else
public record CalendarView(boolean made, String address) implements View {

    @Override
    public String template() {
        return "today/calendar.jte";
    }

    @Override
    public String title() {
        return "Calendar";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.TODAY);
    }
}
