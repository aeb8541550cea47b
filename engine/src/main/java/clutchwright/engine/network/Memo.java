package clutchwright.engine.network;

import java.util.Arrays;

/// What was worked out already, by two numbers that name it.
final class Memo {

    /// What an absent entry answers.
    static final int ABSENT = Integer.MIN_VALUE;

    private long[] keys = new long[32];
    private long[] others = new long[32];
    private int[] values = new int[32];
    private int count;

    Memo() {
        Arrays.fill(values, ABSENT);
    }

    int get(long key, long other) {
        var slot = slotOf(key, other);
        return values[slot];
    }

    void put(long key, long other, int value) {
        var slot = slotOf(key, other);
        if (values[slot] == ABSENT) {
            count++;
        }
        keys[slot] = key;
        others[slot] = other;
        values[slot] = value;
        if (2 * count > keys.length) {
            grow();
        }
    }

    private int slotOf(long key, long other) {
        var mixed = (key * 0x9E3779B97F4A7C15L ^ other) * 0xC2B2AE3D27D4EB4FL;
        var slot = (int) (mixed >>> 32) & keys.length - 1;
        while (values[slot] != ABSENT && (keys[slot] != key || others[slot] != other)) {
            slot = slot + 1 & keys.length - 1;
        }
        return slot;
    }

    private void grow() {
        var oldKeys = keys;
        var oldOthers = others;
        var oldValues = values;
        keys = new long[2 * oldKeys.length];
        others = new long[keys.length];
        values = new int[keys.length];
        Arrays.fill(values, ABSENT);
        for (var i = 0; i < oldKeys.length; i++) {
            if (oldValues[i] != ABSENT) {
                var slot = slotOf(oldKeys[i], oldOthers[i]);
                keys[slot] = oldKeys[i];
                others[slot] = oldOthers[i];
                values[slot] = oldValues[i];
            }
        }
    }
}
