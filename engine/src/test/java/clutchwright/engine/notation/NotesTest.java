package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// What is understood and still deserves a word. Common practice, no source.
class NotesTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void is_remarked_on(String line, String expected) {
        var expectedNotes = expected.isEmpty() ? List.of() : List.of(expected.split("; "));

        assertThat(Shorthand.notes(ShippedLines.ROYAL.read(line))).isEqualTo(expectedNotes);
    }

    /// Mendel: of two carriers, two of three that do not show it carry it.
    @Test
    void hets_that_follow_from_a_note_are_proposed_and_not_set() {
        var reading = ShippedLines.ROYAL.read("Normal (from het clown x het clown)");

        assertThat(Shorthand.notes(reading)).containsExactly("PROPOSAL 66% het Clown");
        assertThat(Shorthand.of(reading)).isEqualTo("(from het clown x het clown)");
    }

    static Stream<Arguments> lines() {
        return Table.of(
                """
                Pastel =>
                Clown het Clown => HET_OF_WHAT_SHOWS Clown
                Super Clown => SUPER_OF_RECESSIVE Clown
                homo Clown =>
                Mojave Lesser (BEL) => SAID_TWICE Blue-Eyed Leucistic
                Super Mojave (BEL) => SAID_TWICE Blue-Eyed Leucistic
                Pastel Clown Pastel => SAID_TWICE Pastel
                het Clown het Clown => SAID_TWICE Clown
                het Ivory => HET_THAT_SHOWS Yellow Belly
                66% DH clown pied Enchi => HET_THAT_SHOWS Enchi
                het Pastel => HET_THAT_SHOWS Pastel
                1.0 Banana => PHASE_NOT_GIVEN Banana
                1.0 Banana MM =>
                0.1 Banana =>
                1.0 Super Banana =>
                axanthic => WHICH_LINE Axanthic, Axanthic Line 1, Axanthic Line 2, Axanthic Line 3, Black Axanthic
                axanthic line 2 =>
                Super Spider => REPORTED_NOT_TO_LIVE Super Spider; CAUTION Super Spider
                Spider => CAUTION Spider
                Spider Champagne => REPORTED_NOT_TO_LIVE Spider, Champagne; CAUTION Spider; CAUTION Spider, Champagne; CAUTION Champagne
                (from clown x pied) => PROPOSAL het Clown, het Piebald
                (from clown x het clown) Pastel => PROPOSAL het Clown
                """);
    }
}
