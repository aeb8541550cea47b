package clutchwright.app.settings;

import clutchwright.app.settings.ImportJob.State.Running;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// How far an import is.
///
/// @param percent from 0 to 100
/// @param said how far it is, in words
/// @param stopping whether it was asked to stop
/// @param piece whether only the bar is shown
public record ImportProgressView(
        String id, String name, int percent, String said, boolean stopping, boolean piece)
        implements View {

    static ImportProgressView of(FileInHand file, Running running, boolean piece) {
        var percent = running.total() == 0 ? 0 : (int) (100L * running.done() / running.total());
        return new ImportProgressView(
                file.id(), file.name(), percent, said(running, percent), running.stopping(), piece);
    }

    private static String said(Running running, int percent) {
        if (running.stopping()) {
            return "Stopping";
        }
        return running.total() == 0 ? "Beginning" : percent + " %";
    }

    @Override
    public String template() {
        return piece ? "settings/importBar.jte" : "settings/importProgress.jte";
    }

    @Override
    public String title() {
        return "Bringing in";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }
}
