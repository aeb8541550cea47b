package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.OwnerPassword;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Preferences;
import clutchwright.engine.inference.Assumptions;
import clutchwright.records.Assumed;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Dialect;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// How figures, dates and pages look, and who may come in from elsewhere.
@Controller
public class SettingsPage {

    private final Preferring preferring;
    private final OwnerPassword password;
    private final Holding holding;

    SettingsPage(Preferring preferring, OwnerPassword password, Holding holding) {
        this.preferring = preferring;
        this.password = password;
        this.holding = holding;
    }

    @GetMapping("/settings")
    public Reply show() {
        return Reply.show(view(preferences(), assumed(), Form.EMPTY));
    }

    @PostMapping("/settings")
    public Reply save(Form form) {
        return switch (PreferencesForm.read(form)) {
            case Entry.Understood<Preferences>(var preferences) -> {
                preferring.prefer(preferences);
                yield Reply.go("/settings").saying("Settings saved.");
            }
            case Entry.Faulty<Preferences>(var faulty) ->
                    Reply.faulty(view(faulty, assumed(), Form.EMPTY));
        };
    }

    @PostMapping("/settings/assumed")
    public Reply assume(Form form) {
        return switch (AssumptionsForm.read(form, assumptions())) {
            case Entry.Understood<Assumptions>(var assumptions) -> {
                var written =
                        Written.to(
                                holding,
                                "Changed what is assumed",
                                tx -> {
                                    Assumed.put(new Settings(tx), assumptions);
                                    return assumptions;
                                });
                yield written.going("/settings", "Saved. The figures are worked out anew.");
            }
            case Entry.Faulty<Assumptions>(var faulty) ->
                    Reply.faulty(view(preferences(), faulty, Form.EMPTY));
        };
    }

    @PostMapping("/settings/password")
    public Reply setPassword(Form form) {
        return switch (PasswordForm.read(form)) {
            case Entry.Understood<String>(var typed) -> {
                password.set(typed);
                yield Reply.go("/settings")
                        .saying("Password set. Other devices can sign in with it.");
            }
            case Entry.Faulty<String>(var faulty) ->
                    Reply.faulty(view(preferences(), assumed(), faulty));
        };
    }

    @PostMapping("/settings/password/remove")
    public Reply removePassword() {
        password.remove();
        return Reply.go("/settings").saying("Password removed. Other devices are shut out.");
    }

    private Form preferences() {
        return PreferencesForm.of(preferring.preferences());
    }

    private Form assumed() {
        return AssumptionsForm.of(assumptions());
    }

    private Assumptions assumptions() {
        return holding.database().read(tx -> Assumed.read(new Settings(tx)));
    }

    private SettingsView view(Form preferences, Form assumed, Form passwordForm) {
        return new SettingsView(
                preferences,
                assumed,
                passwordForm,
                password.isSet(),
                holding.database().dialect() == Dialect.SQLITE);
    }
}
