package clutchwright.engine.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/// A smallest set of things that cannot go together: none of them can be spared.
///
/// QuickXplain: U. Junker (2004), Preferred explanations and relaxations for over-constrained
/// problems, AAAI 2004:167-172.
final class MinimalConflict {

    private MinimalConflict() {}

    /// @param all preferred first: of several such sets one of early members is found
    /// @param possible whether some of them can go together; fewer always can if more can
    /// @return empty if all can go together
    static <T> List<T> of(List<T> all, Predicate<List<T>> possible) {
        return possible.test(all) || all.isEmpty()
                ? List.of()
                : within(List.of(), false, all, possible);
    }

    /// What of `some` is needed beside `kept` so that all is impossible.
    ///
    /// @param grown whether `kept` has changed since it was last found possible
    private static <T> List<T> within(
            List<T> kept, boolean grown, List<T> some, Predicate<List<T>> possible) {
        if (grown && !possible.test(kept)) {
            return List.of();
        }
        if (some.size() == 1) {
            return some;
        }
        var half = some.size() / 2;
        var early = some.subList(0, half);
        var late = some.subList(half, some.size());
        var ofLate = within(joined(kept, early), true, late, possible);
        var ofEarly = within(joined(kept, ofLate), !ofLate.isEmpty(), early, possible);
        return joined(ofEarly, ofLate);
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        var all = new ArrayList<>(some);
        all.addAll(others);
        return all;
    }
}
