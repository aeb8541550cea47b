package clutchwright.app.settings;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.web.OwnerPassword;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;

/// The form of the owner's password: typed twice, never shown again.
final class PasswordForm {

    private PasswordForm() {}

    static Entry<String> read(Form form) {
        var fields = new Fields(form);
        var typed = form.values().getOrDefault("password", List.of("")).getFirst();
        var again = form.values().getOrDefault("again", List.of("")).getFirst();
        if (typed.codePointCount(0, typed.length()) < OwnerPassword.LEAST_LENGTH) {
            fields.faulty(
                    "password",
                    "Write at least %d characters.".formatted(OwnerPassword.LEAST_LENGTH));
        }
        if (typed.getBytes(StandardCharsets.UTF_8).length > OwnerPassword.MOST_LENGTH) {
            fields.faulty(
                    "password",
                    "Write at most %d characters.".formatted(OwnerPassword.MOST_LENGTH));
        }
        if (!typed.equals(again)) {
            fields.faulty("again", "This differs from the password above.");
        }
        return switch (fields.into(() -> typed)) {
            case Entry.Understood<String> understood -> understood;
            // What was typed must not travel back into the page.
            case Entry.Faulty<String>(var faulty) ->
                    new Entry.Faulty<>(new Form(new LinkedHashMap<>(), faulty.faults()));
        };
    }
}
