package clutchwright.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/// How many eggs until enough of something has hatched.
class WaitingTest {

    private static int eggs(double sure, IntToDoubleFunction chance) {
        var eggs = 1;
        while (chance.applyAsDouble(eggs) < sure) {
            eggs++;
        }
        return eggs;
    }

    private static List<Integer> forOne(double perEgg) {
        return List.of(
                eggs(0.95, eggs -> Waiting.atLeast(1, perEgg, eggs)),
                eggs(0.99, eggs -> Waiting.atLeast(1, perEgg, eggs)));
    }

    private static List<Integer> forPair(double perEgg) {
        IntToDoubleFunction pair =
                eggs -> Waiting.atLeastBoth(1, perEgg / 2, eggs, 1, perEgg / 2, eggs);
        return List.of(eggs(0.9, pair), eggs(0.95, pair), eggs(0.99, pair));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "1 - (1 - P)^n at least 95 % and 99 %, k unlinked recessives",
            locator =
                    "(1/4)^k: 11, 17; 47, 72; 191, 293; 766, 1177; 3067, 4714. (1/2)^k: 5, 7; 11,"
                            + " 17; 23, 35; 47, 72; 95, 146; 19/80 and 1/80: 12 and 239 for 95 %")
    void eggs_until_one_is_nearly_sure() {
        assertThat(forOne(1.0 / 4)).containsExactly(11, 17);
        assertThat(forOne(1.0 / 16)).containsExactly(47, 72);
        assertThat(forOne(1.0 / 64)).containsExactly(191, 293);
        assertThat(forOne(1.0 / 256)).containsExactly(766, 1177);
        assertThat(forOne(1.0 / 1024)).containsExactly(3067, 4714);
        assertThat(forOne(1.0 / 2)).containsExactly(5, 7);
        assertThat(forOne(1.0 / 8)).containsExactly(23, 35);
        assertThat(forOne(1.0 / 32)).containsExactly(95, 146);
        assertThat(forOne(19.0 / 80).getFirst()).isEqualTo(12);
        assertThat(forOne(1.0 / 80).getFirst()).isEqualTo(239);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "at least one male and one female, 1 - 2 (1 - q/2)^n + (1 - q)^n",
            locator =
                    "90, 95, 99 %: q 1 5, 6, 8; 1/2 11, 13, 19; 1/4 23, 28, 40; 1/8 47, 58, 83;"
                            + " 1/16 94, 116, 167; 1/32 189, 234, 337")
    void eggs_until_a_pair_is_nearly_sure() {
        assertThat(forPair(1)).containsExactly(5, 6, 8);
        assertThat(forPair(1.0 / 2)).containsExactly(11, 13, 19);
        assertThat(forPair(1.0 / 4)).containsExactly(23, 28, 40);
        assertThat(forPair(1.0 / 8)).containsExactly(47, 58, 83);
        assertThat(forPair(1.0 / 16)).containsExactly(94, 116, 167);
        assertThat(forPair(1.0 / 32)).containsExactly(189, 234, 337);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "negative binomial, second success",
            locator = "P(2nd success at egg 8 or earlier, q = 1/4) = 41479/65536")
    void two_of_a_kind() {
        assertThat(Waiting.atLeast(2, 0.25, 8)).isEqualTo(41479.0 / 65536, within(1e-12));
    }

    @Test
    void males_and_females_may_have_had_different_numbers_of_clutches() {
        // Two eggs looked at for males, one of them for females; each is one or the other.
        // Female first, then male: the only way.
        assertThat(Waiting.atLeastBoth(1, 0.5, 2, 1, 0.5, 1)).isEqualTo(0.25, within(1e-12));
        assertThat(Waiting.atLeastBoth(1, 0.5, 1, 1, 0.5, 2)).isEqualTo(0.25, within(1e-12));
    }

    @Test
    void a_number_wanted_counts_animals_of_either_sex_beyond_those_of_one() {
        var goal = Projects.goal(1, 1, 1, "a", "A/A");
        // Three eggs, all hatch, half males: all but three of one sex.
        assertThat(Waiting.enough(goal, 0.5, 0.5, 3)).isEqualTo(0.75, within(1e-12));
        assertThat(Waiting.enough(goal, 0.5, 0.5, 2)).isEqualTo(0, within(1e-12));
    }
}
