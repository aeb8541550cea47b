package clutchwright.engine.notation;

import clutchwright.engine.probability.Fraction;
import java.util.Optional;

/// A status that governs names: `66% het`, `poss het`, `DH`. A number may still come after it.
final class HetStatus {

    final int start;
    int end;

    /// Whether the word `het` stands there, or only a number.
    boolean worded;

    boolean possible;
    boolean proven;
    int count;
    boolean governs;
    private Optional<Fraction> number = Optional.empty();

    HetStatus(int start, int end) {
        this.start = start;
        this.end = end;
    }

    /// @return whether the number agrees with one that stands there already
    boolean say(Fraction chance) {
        boolean agrees = number.isEmpty() || number.get().equals(chance);
        number = Optional.of(chance);
        return agrees;
    }

    boolean hasNumber() {
        return number.isPresent();
    }

    /// The chance of each name; empty where the line says `possible` and no number.
    Optional<Fraction> chance() {
        if (proven) {
            return Optional.of(Fraction.WHOLE);
        }
        return number.isPresent() || possible ? number : Optional.of(Fraction.WHOLE);
    }
}
