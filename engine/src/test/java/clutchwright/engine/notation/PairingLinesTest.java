package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// `A x B` on a clutch label: the sire usually stands first, unless the line says otherwise.
/// Common practice, no source.
class PairingLinesTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void has_a_dam_and_a_sire(String line, String expected) {
        assertThat(of(ShippedLines.ROYAL.readPairing(line))).isEqualTo(expected);
    }

    static Stream<Arguments> lines() {
        return Table.of(
                """
                Coral Glow (male maker) Black Pastel x 0.1 Pinstripe => dam 0.1.0; pinstripe Pinstripe/+ BY banana Coral Glow/+ on_limited; cinnamon Black Pastel/+ (said)
                Pastel x Clown => dam clown Clown/Clown BY pastel Pastel/+ (taken)
                0.1 Pastel X 1.0 Clown => dam 0.1.0; pastel Pastel/+ BY 1.0.0; clown Clown/Clown (said)
                Pastel × female het Clown => dam 0.1.0; clown het Clown 1/1 BY pastel Pastel/+ (said)
                Normal (from het pied x pied) x Clown => dam clown Clown/Clown BY (from het pied x pied) (taken)
                1.0 Pastel x 1.0 Clown => CONTRADICTION at 0
                Pastel x Clown x Pied => IS_A_PAIRING at 15
                Pastel => NOTHING_FOLLOWS at 6
                Pastel x Clwn => dam clown Clown/Clown BY pastel Pastel/+ (taken)
                Pastle x Enchii => UNKNOWN_NAME at 9
                """);
    }

    private static String of(PairingReading reading) {
        return switch (reading) {
            case PairingReading.Understood(var dam, var sire, var said) ->
                    "dam %s BY %s (%s)"
                            .formatted(
                                    Shorthand.of(dam), Shorthand.of(sire), said ? "said" : "taken");
            case PairingReading.Unclear(var faults, var _) ->
                    faults.getFirst().kind() + " at " + faults.getFirst().start();
        };
    }
}
