package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// Lines as sellers and keepers write them, with the reading that the trade intends.
/// Common practice, no source.
class TradeLinesTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void is_read_as_the_trade_means_it(String line, String expected) {
        assertThat(Shorthand.of(ShippedLines.ROYAL.read(line))).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lines")
    void what_is_written_of_it_reads_the_same(String line, String expected) {
        if (ShippedLines.ROYAL.read(line) instanceof Reading.Understood understood) {
            var written = ShippedLines.ROYAL.write(understood.genes());
            assertThat(Shorthand.of(ShippedLines.ROYAL.read(written)))
                    .as(written)
                    .isEqualTo(expected);
        } else {
            assertThat(expected).contains("' at ");
        }
    }

    static Stream<Arguments> lines() {
        return Table.of(
                """
                1.0 Pastel Clown => 1.0.0; pastel Pastel/+; clown Clown/Clown
                0.1 Super Pastel 100% het Pied => 0.1.0; pastel Pastel/Pastel; piebald het Piebald 1/1
                Mojave Lesser (BEL) female => 0.1.0; bel Lesser/Mojave
                Banana Enchi YB 66% het clown => banana Banana/+; enchi Enchi/+; yellow-belly Yellow Belly/+; clown het Clown 2/3
                pastel het clown 50% het pied => pastel Pastel/+; clown het Clown 1/1; piebald het Piebald 1/2
                DH Clown/Pied => clown het Clown 1/1; piebald het Piebald 1/1
                triple het snow pied => albino het Albino 1/1; axanthic het Axanthic 1/1; piebald het Piebald 1/1
                0.1 Super Mojave => 0.1.0; bel Mojave/Mojave
                crystal => bel Mojave/Special
                Killer Bee 1.0 ph albino => CHANCE_MISSING 'ph' at 15: Albino
                BEL poss mojave lesser or butter => bel Lesser/Lesser or Butter/Lesser or Lesser/Mojave or Butter/Butter or Butter/Mojave
                het red axanthic leopard => leopard Leopard/+; cinnamon Het Red Axanthic/+
                Axanthic (line tag 2) het dg => axanthic-2 Axanthic Line 2/Axanthic Line 2; desert-ghost het Desert Ghost 1/1
                axanthic pied 0.0.1 => 0.0.1; axanthic Axanthic/Axanthic; piebald Piebald/Piebald
                66% DH clown pied Enchi => enchi Enchi/+; clown het Clown 2/3; piebald het Piebald 2/3
                100% het clown, 66% het pied & 50% het dg, OD YB => orange-dream Orange Dream/+; yellow-belly Yellow Belly/+; desert-ghost het Desert Ghost 1/2; clown het Clown 1/1; piebald het Piebald 2/3
                highway => yellow-belly Gravel/Yellow Belly
                Ivory het Lav => yellow-belly Yellow Belly/Yellow Belly; lavender het Lavender Albino 1/1
                normal F (hatched 2021, from het clown x het clown) => 0.1.0; (hatched 2021, from het clown x het clown)
                8-ball maybe super cinny => cinnamon Cinnamon/Cinnamon or Black Pastel/Cinnamon
                pstl enchi ghi poss od ?? => pastel Pastel/+; enchi Enchi/+; orange-dream maybe Orange Dream/+ ?; ghi GHI/+
                SuperPastel-Enchi_HETpied => pastel Pastel/Pastel; enchi Enchi/+; piebald het Piebald 1/1
                Lesser Pastel Spider Champagne => pastel Pastel/+; bel Lesser/+; spider Spider/+; champagne Champagne/+
                Mojave Mystic Phantom => TOO_MANY_ALLELES 'Mojave Mystic Phantom' at 0: Mojave, Mystic, Phantom
                het pos clown => CHANCE_MISSING 'het pos' at 0: Clown
                50/50 het pied => piebald het Piebald 1/2
                66 % HET clown => clown het Clown 2/3
                Hypo => hypo Ghost/Ghost
                VIS clown => clown Clown/Clown
                Clown het clown => clown Clown/Clown
                Super Spider => spider Spider/Spider
                Super Clown => clown Clown/Clown
                leucistic => SEVERAL_MEANINGS 'leucistic' at 0: Super Fire, Blue-Eyed Leucistic
                paradox pastel => pastel Pastel/+; (Paradox)
                ringer => (Ringer)
                dinker => (Dinker)
                Desert => desert Desert/+
                Desert Ghost => desert-ghost Desert Ghost/Desert Ghost
                Red => SEVERAL_MEANINGS 'Red' at 0: Red Axanthic, Red Stripe, Red Gene
                Cinni => cinnamon Cinnamon/+
                Cinny => cinnamon Cinnamon/+
                BlkPastel => cinnamon Black Pastel/+
                b pastel => cinnamon Black Pastel/+
                Bananna => banana Banana/+
                Mojo => bel Mojave/+
                yelow belly => yellow-belly Yellow Belly/+
                """);
    }
}
