package clutchwright.app.holding;

import clutchwright.app.web.Figures;
import clutchwright.app.web.View;

/// @param state how far the figures have come
public record FiguresView(Figures.State state) implements View {

    @Override
    public String template() {
        return "web/figuresNow.jte";
    }

    @Override
    public String title() {
        return "Figures";
    }
}
