package clutchwright.app.labels;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// The labels' sheet and address.
///
/// @param offered addresses by which other devices may reach this computer
/// @param onlyHere whether a phone cannot open the address that is set
/// @param passwordSet whether another device could sign in
/// @param listens whether another device reaches this process
public record LabelSettingsView(
        Form form,
        List<String> offered,
        boolean onlyHere,
        boolean passwordSet,
        boolean listens,
        int port)
        implements View {

    private static final int USUAL_PORT = 8420;

    public LabelSettingsView {
        offered = List.copyOf(offered);
    }

    @Override
    public String template() {
        return "labels/settings.jte";
    }

    @Override
    public String title() {
        return "Label sheets";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SETTINGS);
    }

    public List<Choice> sizes() {
        var sizes = new ArrayList<Choice>();
        Arrays.stream(SheetSize.values())
                .map(size -> Choice.of(size, size.title()))
                .forEach(sizes::add);
        sizes.add(new Choice(SheetForm.OWN, "My own sheet, by the numbers below"));
        return sizes;
    }

    public List<Choice> addresses() {
        var addresses = new ArrayList<Choice>();
        offered.stream().map(each -> new Choice(each, each)).forEach(addresses::add);
        addresses.add(new Choice(SheetForm.ANOTHER, "Another one"));
        return addresses;
    }

    /// What lets phones in.
    public String command() {
        return "clutchwright serve --listen 0.0.0.0"
                + (port == USUAL_PORT ? "" : " --port " + port);
    }
}
