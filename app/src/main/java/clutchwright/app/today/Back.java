package clutchwright.app.today;

import clutchwright.app.web.Form;

/// To which page one comes back from a tap: one of the two orders of the day's work, or the season.
final class Back {

    static final String ROUND = "/today/round";

    private Back() {}

    static String from(Form form) {
        return switch (form.text("back")) {
            case "round" -> ROUND;
            case "season" -> "/season";
            default -> "/";
        };
    }
}
