package clutchwright.engine.pedigree;

/// Puts things in the order of small numbers, those of one number as they stood before.
final class CountingSort {

    private CountingSort() {}

    static int[] asTheyStand(int count) {
        var order = new int[count];
        for (int i = 0; i < count; i++) {
            order[i] = i;
        }
        return order;
    }

    /// @param numbers of each thing, from 0 below the bound
    /// @param before  the order in which they stand
    static int[] order(int[] numbers, int bound, int[] before) {
        var starts = new int[bound + 1];
        for (int number : numbers) {
            starts[number + 1]++;
        }
        for (int number = 0; number < bound; number++) {
            starts[number + 1] += starts[number];
        }
        var order = new int[before.length];
        for (int thing : before) {
            order[starts[numbers[thing]]++] = thing;
        }
        return order;
    }
}
