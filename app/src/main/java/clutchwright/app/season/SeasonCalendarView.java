package clutchwright.app.season;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// A season over its calendar, a row a female.
///
/// @param seasons that can be chosen, the last first
public record SeasonCalendarView(int season, List<Integer> seasons, Markup months, List<Row> rows)
        implements View {

    public SeasonCalendarView {
        seasons = List.copyOf(seasons);
        rows = List.copyOf(rows);
    }

    public record Row(Mate dam, String sires, Markup strip) {}

    @Override
    public String template() {
        return "season/calendar.jte";
    }

    @Override
    public String title() {
        return "Season " + season + " at a glance";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
