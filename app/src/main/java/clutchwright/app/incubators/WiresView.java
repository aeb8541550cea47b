package clutchwright.app.incubators;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// @param broker form of where messages are fetched
/// @param mail form of where alarms are mailed
/// @param brokerState how it stands with the broker, as a sentence
/// @param mailState how it stands with the mail; blank where nothing is wrong
public record WiresView(
        Form broker,
        Form mail,
        String brokerState,
        String mailState,
        boolean brokerPassword,
        boolean mailPassword)
        implements View {

    @Override
    public String template() {
        return "incubators/wires.jte";
    }

    @Override
    public String title() {
        return "Live readings and mail";
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }

    public List<Choice> ways() {
        return List.of(
                new Choice("STARTTLS", "Encrypted after greeting (STARTTLS, port 587)"),
                new Choice("TLS", "Encrypted from the start (TLS, port 465)"),
                new Choice("OPEN", "Not encrypted: only in your own network"));
    }
}
