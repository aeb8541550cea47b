package clutchwright.app.today;

import java.time.LocalDate;
import java.util.Optional;

/// One thing to do.
///
/// @param from the first day on which it is to be done; those of a group stand in its order
/// @param link the page on which it is done
/// @param name what it is about
/// @param what is to be done, as a sentence
/// @param basis on what that rests, or since when
/// @param grave whether it is overdue
/// @param meal a meal that can be written down at once
public record Due(
        When when,
        LocalDate from,
        String link,
        String name,
        String what,
        String basis,
        boolean grave,
        Optional<Meal> meal) {

    /// How soon.
    public enum When {
        NOW("Now"),
        THIS_WEEK("This week"),
        LATER("Later");

        private final String title;

        When(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }

        static When of(LocalDate from, LocalDate today) {
            if (!from.isAfter(today)) {
                return NOW;
            }
            return from.isAfter(today.plusDays(RulesOfThumb.WEEK)) ? LATER : THIS_WEEK;
        }
    }

    /// @param prey as it took last
    public record Meal(long animal, String prey) {}

    static Due of(
            LocalDate from,
            LocalDate today,
            String link,
            String name,
            String what,
            String basis,
            boolean grave) {
        return new Due(
                When.of(from, today), from, link, name, what, basis, grave, Optional.empty());
    }
}
