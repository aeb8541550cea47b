package clutchwright.records.checks;

import java.util.List;
import java.util.Optional;

/// What became of something that a person wanted to write down or change.
///
/// @param <T> the thing
public sealed interface Edit<T> {

    /// It is on record, as given here.
    record Saved<T>(T value) implements Edit<T> {}

    /// Somebody else has changed it since it was read. Nothing was written.
    ///
    /// @param current as the other person left it
    record Stale<T>(T current) implements Edit<T> {}

    /// It cannot be so. Nothing was written.
    ///
    /// @param problems all of them, at least one
    record Refused<T>(List<Problem> problems) implements Edit<T> {

        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("refused without a problem");
            }
        }
    }

    static <T> Edit<T> refused(Problem problem) {
        return new Refused<>(List.of(problem));
    }

    /// The thing, if it was saved.
    default Optional<T> saved() {
        return this instanceof Saved<T>(var value) ? Optional.of(value) : Optional.empty();
    }

    /// The thing, where it is known that nothing can stand against it.
    ///
    /// @throws IllegalStateException if it was not saved
    default T theSaved() {
        return saved().orElseThrow(() -> new IllegalStateException("not saved: " + this));
    }
}
