package clutchwright.engine.pedigree;

import java.util.Arrays;
import java.util.OptionalInt;

/// Which number stands for which animal: a map without an object for every entry.
final class AnimalNumbers {

    private static final int FREE = -1;

    private final long[] ids;
    private final int[] numbers;
    private final int shift;

    /// @param most animals that will be put in
    AnimalNumbers(int most) {
        int bits = 33 - Integer.numberOfLeadingZeros(Math.max(1, most));
        ids = new long[1 << bits];
        numbers = new int[1 << bits];
        Arrays.fill(numbers, FREE);
        shift = Long.SIZE - bits;
    }

    /// @param animal not there yet
    void put(AnimalId animal, int number) {
        int slot = slot(animal.value());
        ids[slot] = animal.value();
        numbers[slot] = number;
    }

    OptionalInt find(AnimalId animal) {
        int number = numbers[slot(animal.value())];
        return number == FREE ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /// @throws IllegalArgumentException if the animal has none
    int theNumber(AnimalId animal) {
        int number = numbers[slot(animal.value())];
        if (number == FREE) {
            throw new IllegalArgumentException("animal " + animal + " is not in the pedigree");
        }
        return number;
    }

    /// Where the animal is, or the free place where it would be.
    private int slot(long id) {
        // The golden ratio's bits: neighbouring numbers fall far apart.
        int slot = (int) ((id * 0x9E3779B97F4A7C15L) >>> shift);
        while (numbers[slot] != FREE && ids[slot] != id) {
            slot = (slot + 1) & (numbers.length - 1);
        }
        return slot;
    }
}
