package clutchwright.app.eggs;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.web.View;
import java.util.Optional;

/// What was tapped, read back with its chance: a piece of the page.
///
/// @param genes    empty where nothing was tapped yet
/// @param sentence its chance, or why it is a surprise; may be blank
public record JudgedView(Optional<GeneLineMarkup> genes, String sentence, boolean surprising)
        implements View {

    static JudgedView nothing() {
        return new JudgedView(Optional.empty(), "", false);
    }

    @Override
    public String template() {
        return "eggs/judged.jte";
    }

    @Override
    public String title() {
        return "Read back";
    }
}
