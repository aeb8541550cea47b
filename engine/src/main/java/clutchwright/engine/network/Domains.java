package clutchwright.engine.network;

import clutchwright.engine.network.Solution.Where;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// Which states of each variable are possible at all (arc consistency): a state that no
/// combination of a tie supports is struck out, until nothing changes.
///
/// Ties of one table whose variables have the same possible states narrow them alike; that is
/// worked out once.
final class Domains {

    private static final int SWEEPS = 12;

    /// A bit a state that is possible. A variable of more than 64 states has all bits: its
    /// states are never struck out.
    final long[] masks;

    private final FactorNetwork network;
    private final Memo memo = new Memo();
    private final List<long[]> narrowed = new ArrayList<>();
    private final long[] before;
    private final int[] states;

    Domains(FactorNetwork network) {
        this.network = network;
        masks = new long[network.variables()];
        for (var v = 0; v < masks.length; v++) {
            masks[v] = full(network.states(v));
        }
        var most = 1;
        for (var tie = 0; tie < network.ties(); tie++) {
            most = Math.max(most, network.scopeStart(tie + 1) - network.scopeStart(tie));
        }
        before = new long[most];
        states = new int[most];
    }

    static long full(int states) {
        return states >= Long.SIZE ? -1L : (1L << states) - 1;
    }

    /// How many states of a variable are possible.
    int size(int variable) {
        var count = network.states(variable);
        return count > Long.SIZE ? count : Long.bitCount(masks[variable]);
    }

    boolean isSettled(int variable) {
        return size(variable) == 1;
    }

    /// The number of a state among the possible ones; negative if it is not possible.
    int placeOf(int variable, int state) {
        if (network.states(variable) > Long.SIZE) {
            return state;
        }
        var bit = 1L << state;
        return (masks[variable] & bit) == 0 ? -1 : Long.bitCount(masks[variable] & bit - 1);
    }

    /// The one possible state of a settled variable.
    int settledState(int variable) {
        return network.states(variable) == 1 ? 0 : Long.numberOfTrailingZeros(masks[variable]);
    }

    /// The most variables that one tie has.
    int mostTied() {
        return before.length;
    }

    /// Strikes out all that is impossible.
    ///
    /// @return where nothing was left, if so
    Optional<Where> narrow() {
        var support = supportOfTables();
        for (var i = 0; i < network.weighings(); i++) {
            var v = network.weighedVariable(i);
            masks[v] &= support[network.weightNumber(i)];
            if (masks[v] == 0) {
                return Optional.of(new Where.AtVariable(v));
            }
        }
        // Up and down, since a sweep carries news only one way. What is not struck out in a
        // few sweeps stays: it costs time, not truth.
        var changed = true;
        for (var sweep = 0; sweep < SWEEPS && changed; sweep++) {
            changed = false;
            for (var i = 0; i < network.ties(); i++) {
                var tie = sweep % 2 == 0 ? i : network.ties() - 1 - i;
                if (revise(tie)) {
                    changed = true;
                    if (masks[network.tied(network.scopeStart(tie))] == 0) {
                        return Optional.of(new Where.AtTie(tie));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private long[] supportOfTables() {
        var support = new long[network.tables()];
        for (var number = 0; number < support.length; number++) {
            var table = network.table(number);
            if (table.length > Long.SIZE) {
                support[number] = -1L;
            } else {
                for (var i = 0; i < table.length; i++) {
                    support[number] |= table[i] > 0 ? 1L << i : 0;
                }
            }
        }
        return support;
    }

    /// Narrows the variables of one tie by it.
    ///
    /// @return whether anything changed
    private boolean revise(int tie) {
        var start = network.scopeStart(tie);
        var arity = network.scopeStart(tie + 1) - start;
        var key = 0L;
        var bits = 0;
        for (var i = 0; i < arity; i++) {
            var v = network.tied(start + i);
            before[i] = masks[v];
            states[i] = network.states(v);
            if (bits < Long.SIZE) {
                key |= before[i] << bits;
            }
            bits += states[i];
        }
        var after = bits <= Long.SIZE ? remembered(tie, key, arity) : work(tie, arity);
        var changed = false;
        for (var i = 0; i < arity; i++) {
            if (after[i] != before[i]) {
                masks[network.tied(start + i)] = after[i];
                changed = true;
            }
        }
        return changed;
    }

    private long[] remembered(int tie, long key, int arity) {
        var place = memo.get(key, network.formNumber(tie));
        if (place != Memo.ABSENT) {
            return narrowed.get(place);
        }
        var after = work(tie, arity);
        memo.put(key, network.formNumber(tie), narrowed.size());
        narrowed.add(after);
        return after;
    }

    private long[] work(int tie, int arity) {
        var table = network.table(network.form(network.formNumber(tie)).table);
        var after = new long[arity];
        var state = new int[arity];
        for (var weight : table) {
            if (weight > 0 && allowed(state, arity)) {
                for (var i = 0; i < arity; i++) {
                    after[i] |= 1L << state[i];
                }
            }
            for (var i = arity - 1; i >= 0 && ++state[i] == states[i]; i--) {
                state[i] = 0;
            }
        }
        if (Arrays.stream(after).anyMatch(mask -> mask == 0)) {
            return new long[arity];
        }
        for (var i = 0; i < arity; i++) {
            after[i] = states[i] > Long.SIZE ? -1L : after[i];
        }
        return after;
    }

    private boolean allowed(int[] state, int arity) {
        for (var i = 0; i < arity; i++) {
            if (states[i] <= Long.SIZE && (before[i] >>> state[i] & 1) == 0) {
                return false;
            }
        }
        return true;
    }
}
