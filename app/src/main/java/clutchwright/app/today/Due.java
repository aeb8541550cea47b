package clutchwright.app.today;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/// One thing to do.
///
/// @param kind the more pressing come first
/// @param from the first day on which it is to be done; those of a group stand in its order
/// @param link the page on which it is done
/// @param name what it is about
/// @param what is to be done, as a sentence
/// @param basis on what that rests, or since when
/// @param grave whether it is overdue
/// @param atOnce what can be written down without leaving the page
/// @param spot where in the house it is done
public record Due(
        When when,
        Kind kind,
        LocalDate from,
        String link,
        String name,
        String what,
        String basis,
        boolean grave,
        Optional<AtOnce> atOnce,
        Spot spot) {

    /// The order in which things of one day are done.
    static final Comparator<Due> ORDER =
            Comparator.comparing(Due::grave)
                    .reversed()
                    .thenComparing(due -> due.when() == When.NOW ? due.kind() : Kind.WARMTH)
                    .thenComparing(Due::from);

    /// What there is to do, the most pressing first.
    public enum Kind {
        WARMTH,
        HATCHING,
        LAYING,
        NAMING,
        CANDLING,
        PAIRING,
        SHEDDING,
        FEEDING,
        WEIGHING
    }

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

    /// What a form of one line writes down.
    public sealed interface AtOnce {}

    /// @param prey as it took last
    public record Meal(long animal, String prey) implements AtOnce {}

    public record Weight(long animal) implements AtOnce {}

    public record FirstShed(long animal) implements AtOnce {}

    static Due of(
            Kind kind,
            LocalDate from,
            LocalDate today,
            String link,
            String name,
            String what,
            String basis,
            boolean grave) {
        return new Due(
                When.of(from, today),
                kind,
                from,
                link,
                name,
                what,
                basis,
                grave,
                Optional.empty(),
                new Spot.Nowhere());
    }

    Due at(Spot there) {
        return new Due(when, kind, from, link, name, what, basis, grave, atOnce, there);
    }

    /// With what can be written down of it at once.
    Due with(AtOnce form) {
        return new Due(when, kind, from, link, name, what, basis, grave, Optional.of(form), spot);
    }
}
