package clutchwright.engine.network;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/// Tables by number: equal ones have one number, and what follows from a table is worked out
/// once.
@SuppressWarnings("ReferenceEquality")
final class DistinctTables {

    private double[][] tables = new double[16][];
    private int count;
    private double[][] seen = new double[64][];
    private int[] seenNumbers = new int[64];
    private int seenCount;
    private final Map<Content, Integer> byContent = new HashMap<>();

    /// The same array is recognised without a look into it.
    int numberOf(double[] table) {
        var slot = slotOf(seen, table);
        if (seen[slot] == table) {
            return seenNumbers[slot];
        }
        requireWeights(table);
        var number = byContent.computeIfAbsent(new Content(table), _ -> add(table));
        seen[slot] = table;
        seenNumbers[slot] = number;
        if (2 * ++seenCount > seen.length) {
            grow();
        }
        return number;
    }

    double[][] all() {
        return Arrays.copyOf(tables, count);
    }

    private int add(double[] table) {
        if (count == tables.length) {
            tables = Arrays.copyOf(tables, 2 * count);
        }
        tables[count] = table;
        return count++;
    }

    private void grow() {
        var arrays = new double[2 * seen.length][];
        var numbers = new int[2 * seen.length];
        for (var i = 0; i < seen.length; i++) {
            if (seen[i] != null) {
                var slot = slotOf(arrays, seen[i]);
                arrays[slot] = seen[i];
                numbers[slot] = seenNumbers[i];
            }
        }
        seen = arrays;
        seenNumbers = numbers;
    }

    private static int slotOf(double[][] arrays, double[] table) {
        var slot = System.identityHashCode(table) & arrays.length - 1;
        while (arrays[slot] != null && arrays[slot] != table) {
            slot = slot + 1 & arrays.length - 1;
        }
        return slot;
    }

    private static void requireWeights(double[] weights) {
        for (var weight : weights) {
            // Written so that NaN fails.
            if (!(weight >= 0 && weight < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("weight " + weight);
            }
        }
    }

    /// An array that is equal where its cells are.
    private static final class Content {

        private final double[] cells;
        private final int hash;

        Content(double[] cells) {
            this.cells = cells;
            hash = Arrays.hashCode(cells);
        }

        @Override
        public boolean equals(Object that) {
            return that instanceof Content other && Arrays.equals(cells, other.cells);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }
}
