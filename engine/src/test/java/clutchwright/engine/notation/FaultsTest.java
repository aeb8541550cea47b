package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// What is not understood is named with its place, and nothing is guessed.
class FaultsTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void is_refused_with_place_and_names(String line, String expected) {
        assertThat(Shorthand.of(ShippedLines.ROYAL.read(line))).startsWith(expected);
    }

    @Test
    void every_fault_of_a_line_is_listed() {
        var reading =
                ShippedLines.ROYAL.read(
                        "Pastell Enchii, poss het Clown 1.0 female 0% het Pied Xyzzy");

        assertThat(Shorthand.of(reading).split("; "))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("UNKNOWN_NAME 'Enchii' at 8: Enchi"),
                        one -> assertThat(one).startsWith("CHANCE_MISSING 'poss het' at 16"),
                        one -> assertThat(one).startsWith("CONTRADICTION 'female' at 35"),
                        one -> assertThat(one).startsWith("BAD_CHANCE '0%' at 42"),
                        one -> assertThat(one).startsWith("UNKNOWN_NAME 'Xyzzy' at 54"));
    }

    @Test
    void what_is_understood_is_read_back_beside_the_fault() {
        var reading = ShippedLines.ROYAL.read("Pastel Wobbler 66% het Clown");

        assertThat(reading.parts())
                .extracting(Reading.Part::readAs)
                .containsExactly("Pastel", "66% het", "66% het Clown");
    }

    static Stream<Arguments> lines() {
        return Table.of(
                """
                Enchii => UNKNOWN_NAME 'Enchii' at 0: Enchi
                Pastel Dessert Ghoast => UNKNOWN_NAME 'Dessert Ghoast' at 7: Desert Ghost
                Pastel Dessert Ghost => UNKNOWN_NAME 'Dessert' at 7: Desert Ghost
                het Clwoon => UNKNOWN_NAME 'Clwoon' at 4: Clown
                Pastel 😀 => UNKNOWN_NAME '😀' at 7:
                Pastel 7 => UNKNOWN_NAME '7' at 7:
                ph Clown => CHANCE_MISSING 'ph' at 0: Clown
                poss het Clown Pied => CHANCE_MISSING 'poss het' at 0: Clown, Piebald
                het maybe Clown => CHANCE_MISSING 'het maybe' at 0: Clown
                het Clown? => CHANCE_MISSING 'het' at 0: Clown
                het Clown or Pied => CHANCE_MISSING 'het' at 0: Piebald
                0% het Clown => BAD_CHANCE '0%' at 0:
                120% het Clown => BAD_CHANCE '120%' at 0:
                3/2 het Clown => BAD_CHANCE '3/2' at 0:
                1/0 het Clown => BAD_CHANCE '1/0' at 0:
                Pastel het => NOTHING_FOLLOWS 'het' at 7:
                maybe => NOTHING_FOLLOWS 'maybe' at 0:
                Super => NOTHING_FOLLOWS 'Super' at 0:
                neg => NOTHING_FOLLOWS 'neg' at 0:
                double het Clown => COUNT_DOES_NOT_FIT 'double het' at 0: Clown
                DH Clown Pied Albino => COUNT_DOES_NOT_FIT 'DH' at 0: Clown, Piebald, Albino
                Normal Pastel => CONTRADICTION 'Normal' at 0: Pastel
                1.0 Pastel female => CONTRADICTION 'female' at 11: 1.0
                1.0 0.1 Pastel => CONTRADICTION '0.1' at 4: 1.0
                het Clown 66% het Clown => CONTRADICTION
                female Banana (male maker) => CONTRADICTION 'male maker' at 15: Banana
                Pastel male maker => CONTRADICTION 'male maker' at 7: Pastel
                Mojave Lesser Special => TOO_MANY_ALLELES 'Mojave Lesser Special' at 0: Mojave, Lesser, Special
                Super Mojave Lesser => TOO_MANY_ALLELES 'Super Mojave Lesser' at
                Super Crystal => TOO_MANY_ALLELES 'Crystal' at 6: Mojave, Special
                het Albino het Candy het Toffee => TOO_MANY_ALLELES
                het Crystal => SEVERAL_MEANINGS 'Crystal' at 4: Mojave, Special
                Lucy => UNKNOWN_NAME
                Leucy => SEVERAL_MEANINGS 'Leucy' at 0: Super Fire, Blue-Eyed Leucistic
                Super Bumblebee => SEVERAL_MEANINGS 'Bumblebee' at 6: Super Pastel Spider, Pastel Super Spider
                Pastel x Clown => IS_A_PAIRING 'x' at 7:
                Pastel × Clown => IS_A_PAIRING '×' at 7:
                """);
    }
}
