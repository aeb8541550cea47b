package clutchwright.app.web;

import java.util.List;

/// A page that says in plain words why something was not done.
///
/// @param paragraphs what happened, and what can be done about it
public record Notice(String title, List<String> paragraphs) implements View {

    public Notice {
        paragraphs = List.copyOf(paragraphs);
    }

    static Notice missing(String what) {
        return new Notice(
                "Not found",
                List.of(what, "It may have been renamed or moved. The box at the top finds it."));
    }

    static Notice conflict(String what) {
        return new Notice(
                "Changed by somebody else",
                List.of(
                        what,
                        "Nothing was saved. Go back to copy what you typed, then open the page"
                                + " anew to see what is there now."));
    }

    static Notice notAllowed() {
        return new Notice(
                "Not done",
                List.of(
                        "The page was open for too long, or it came from another program, so what"
                                + " it sent was not accepted. Nothing was changed.",
                        "Go back, reload the page and try again."));
    }

    static Notice fault() {
        return new Notice(
                "Something went wrong here",
                List.of(
                        "This is a fault of the program, not of what you entered. Nothing was half"
                                + " saved.",
                        "The terminal in which Clutchwright runs says more."));
    }

    static Notice badRequest() {
        return new Notice(
                "Not understood",
                List.of("The address or the form could not be read. Nothing was changed."));
    }

    static Notice tooLarge() {
        return new Notice(
                "Too large", List.of("The file is larger than 200 MB. Nothing was changed."));
    }

    static Notice onlyHere() {
        return new Notice(
                "Only open on its own computer",
                List.of(
                        "Clutchwright runs here, but its owner has not yet allowed other devices in.",
                        "To allow them: on the computer itself open Settings, set a password, and"
                                + " start Clutchwright with --listen. Then reload this page."));
    }

    @Override
    public String template() {
        return "web/notice.jte";
    }
}
