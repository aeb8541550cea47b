package clutchwright.app.eggs;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.View;
import java.util.List;

/// The males that may have sired a clutch: a piece of the page.
public record SiresView(Form form, List<Choice> males) implements View {

    public SiresView {
        males = List.copyOf(males);
    }

    @Override
    public String template() {
        return "eggs/sires.jte";
    }

    @Override
    public String title() {
        return "Sires";
    }
}
