package clutchwright.app.incubators;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.records.incubators.Sensor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Asks which columns of a logger's file are meant.
public record ColumnsView(Sensor sensor, LogDesk.InHand held, Form form) implements View {

    @Override
    public String template() {
        return "incubators/columns.jte";
    }

    @Override
    public String title() {
        return "Columns of " + held.name();
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public String file() {
        return held.name();
    }

    public String action() {
        return SensorPage.path(sensor) + "/log/" + held.mark();
    }

    public List<String> headings() {
        return held.sheet().headings();
    }

    public List<List<String>> rows() {
        return held.sheet().first();
    }

    public List<Choice> columns() {
        return headings().stream().map(heading -> new Choice(heading, heading)).toList();
    }

    public List<Choice> dates() {
        var all = new ArrayList<Choice>();
        all.add(new Choice("", "The same column"));
        all.addAll(columns());
        return all;
    }

    public List<Choice> scales() {
        return SensorForm.scales();
    }

    public List<Choice> orders() {
        return List.of(
                new Choice("DAY_FIRST", "31/12/2024, day first"),
                new Choice("MONTH_FIRST", "12/31/2024, month first"));
    }
}
