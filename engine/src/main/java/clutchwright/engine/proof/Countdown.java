package clutchwright.engine.proof;

import clutchwright.engine.proof.TestMating.Case;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/// Hatchlings without the trait, one after the other, until the chance of carrying is down.
///
/// Each multiplies the weight of every case by its chance of such a hatchling. The chance of
/// carrying need not fall at every step, so none is skipped; it ends where nothing moves any
/// more.
final class Countdown {

    /// Weights that small beside the others no longer move a chance.
    private static final double NOTHING = 1e-18;

    private final boolean[] carries;
    private final double[] plain;
    private final double[] weights;

    /// Those that still count come first.
    private int left;

    Countdown(List<Case> cases) {
        carries = new boolean[cases.size()];
        plain = new double[cases.size()];
        weights = new double[cases.size()];
        for (var i = 0; i < cases.size(); i++) {
            carries[i] = cases.get(i).carries();
            plain[i] = 1 - cases.get(i).tells();
            weights[i] = cases.get(i).chance();
        }
        left = weights.length;
    }

    /// The fewest hatchlings for each chance, the largest chance first; once only.
    List<OptionalInt> hatchlingsUntil(double... chances) {
        var found = new ArrayList<OptionalInt>();
        var moves = true;
        for (var n = 0; n <= TestMating.MOST_HATCHLINGS && moves; n++) {
            var chance = chance();
            while (found.size() < chances.length
                    && chance <= chances[found.size()] * (1 + TestMating.ROUNDING)) {
                found.add(OptionalInt.of(n));
            }
            moves = found.size() < chances.length && step();
        }
        while (found.size() < chances.length) {
            found.add(OptionalInt.empty());
        }
        return found;
    }

    private double chance() {
        var with = 0.0;
        var all = 0.0;
        for (var i = 0; i < left; i++) {
            all += weights[i];
            with += carries[i] ? weights[i] : 0;
        }
        return with / all;
    }

    /// One more hatchling; whether that can still change anything.
    private boolean step() {
        var sum = 0.0;
        var slowest = 0.0;
        var fastest = 1.0;
        for (var i = 0; i < left; i++) {
            weights[i] *= plain[i];
            sum += weights[i];
            slowest = Math.max(slowest, plain[i]);
            fastest = Math.min(fastest, plain[i]);
        }
        if (sum == 0 || slowest - fastest <= TestMating.ROUNDING) {
            return false;
        }
        for (var i = left - 1; i >= 0; i--) {
            // Kept at sum one, so that nothing runs out of range.
            weights[i] /= sum;
            if (weights[i] < NOTHING && plain[i] < slowest) {
                drop(i);
            }
        }
        return true;
    }

    private void drop(int i) {
        left--;
        carries[i] = carries[left];
        plain[i] = plain[left];
        weights[i] = weights[left];
    }
}
