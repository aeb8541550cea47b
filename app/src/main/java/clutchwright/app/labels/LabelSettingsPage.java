package clutchwright.app.labels;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.OwnerPassword;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.records.settings.Settings;
import jakarta.servlet.http.HttpServletRequest;
import java.net.InetAddress;
import java.util.List;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// Which sheet the labels are on, and by which address a phone finds this computer.
@Controller
public class LabelSettingsPage {

    private static final String PATH = "/settings/labels";

    private final Holding holding;
    private final Preferring preferring;
    private final OwnerPassword password;
    private final boolean listens;

    LabelSettingsPage(
            Holding holding,
            Preferring preferring,
            OwnerPassword password,
            Environment environment) {
        this.holding = holding;
        this.preferring = preferring;
        this.password = password;
        this.listens = listens(environment.getProperty("server.address", "127.0.0.1"));
    }

    @GetMapping(PATH)
    public Reply show(HttpServletRequest request) {
        return Reply.show(view(form().of(now(), offered(request)), request));
    }

    @PostMapping(PATH)
    public Reply save(Form form, HttpServletRequest request) {
        return switch (form().read(form, now())) {
            case Entry.Understood<LabelSettings>(var settings) ->
                    Written.to(
                                    holding,
                                    "Changed the labels",
                                    tx -> {
                                        settings.put(new Settings(tx));
                                        return settings;
                                    })
                            .going(PATH, "Saved. " + LabelWords.sheet(settings) + ".");
            case Entry.Faulty<LabelSettings>(var faulty) -> Reply.faulty(view(faulty, request));
        };
    }

    private LabelSettingsView view(Form form, HttpServletRequest request) {
        var address = now().address();
        return new LabelSettingsView(
                form,
                offered(request),
                address.filter(OwnAddresses::isOfThisComputerAlone).isPresent(),
                password.isSet(),
                listens,
                request.getLocalPort());
    }

    private static List<String> offered(HttpServletRequest request) {
        return OwnAddresses.at(request.getLocalPort());
    }

    private LabelSettings now() {
        return holding.database().read(tx -> LabelSettings.read(new Settings(tx)));
    }

    private SheetForm form() {
        return new SheetForm(new Formats(preferring.preferences()));
    }

    /// Whether the process can be reached from outside of this computer at all.
    private static boolean listens(String address) {
        try {
            return !InetAddress.ofLiteral(address).isLoopbackAddress();
        } catch (IllegalArgumentException e) {
            return true;
        }
    }
}
