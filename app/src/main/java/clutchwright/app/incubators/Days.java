package clutchwright.app.incubators;

import clutchwright.app.web.Form;
import java.util.List;

/// How many days of a trace are shown.
final class Days {

    static final List<Integer> CHOICES = List.of(1, 3, 14, 60);

    private static final int USUAL = 3;

    private Days() {}

    static int of(Form query) {
        return CHOICES.stream()
                .filter(days -> query.text("days").equals(days.toString()))
                .findFirst()
                .orElse(USUAL);
    }
}
