package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// Lines in the shapes that labels, sale lists and spreadsheets have. Common practice, no source.
class MessyLinesTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource({"separators", "hets", "supers", "doubt", "animals", "remarks", "series"})
    void is_understood(String line, String expected) {
        assertThat(Shorthand.of(ShippedLines.ROYAL.read(line))).isEqualTo(expected);
    }

    static Stream<Arguments> separators() {
        return Table.of(
                """
                PASTEL   CLOWN => pastel Pastel/+; clown Clown/Clown
                pastel/clown => pastel Pastel/+; clown Clown/Clown
                pastel+enchi+clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                Pastel & Enchi => pastel Pastel/+; enchi Enchi/+
                Pastel - Enchi - Clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                pastel_enchi_clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                DesertGhost Pastel => pastel Pastel/+; desert-ghost Desert Ghost/Desert Ghost
                desert-ghost => desert-ghost Desert Ghost/Desert Ghost
                Desert, Ghost => desert Desert/+; hypo Ghost/Ghost
                OrangeDreamYellowBelly => orange-dream Orange Dream/+; yellow-belly Yellow Belly/+
                hetClown66%hetPied => clown het Clown 1/1; piebald het Piebald 2/3
                Pastel;Enchi|Clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                Pastel and Enchi with Clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                [Pastel Enchi] => pastel Pastel/+; enchi Enchi/+
                Pastel\u00a0Enchi\u2013Clown => pastel Pastel/+; enchi Enchi/+; clown Clown/Clown
                1.0Pastel => 1.0.0; pastel Pastel/+
                SUPERPASTELCLOWN => pastel Pastel/Pastel; clown Clown/Clown
                Pastel, ,, Enchi, => pastel Pastel/+; enchi Enchi/+
                8 ball => cinnamon Black Pastel/Cinnamon
                8ball => cinnamon Black Pastel/Cinnamon
                G-Stripe het tri stripe => genetic-stripe Genetic Stripe/Genetic Stripe; tri-stripe het Tri-Stripe 1/1
                """);
    }

    static Stream<Arguments> hets() {
        return Table.of(
                """
                het Clown, het Piebald => clown het Clown 1/1; piebald het Piebald 1/1
                het Clown, Piebald => clown het Clown 1/1; piebald het Piebald 1/1
                het for clown and pied => clown het Clown 1/1; piebald het Piebald 1/1
                66% poss het Clown => clown het Clown 2/3
                66% ph Clown Pied => clown het Clown 2/3; piebald het Piebald 2/3
                66%het clown => clown het Clown 2/3
                66 het clown => clown het Clown 2/3
                66% het clown, 50% pied => clown het Clown 2/3; piebald het Piebald 1/2
                het 66% clown => clown het Clown 2/3
                het 66 clown => clown het Clown 2/3
                het clown 66% => clown het Clown 2/3
                het clown 66%, pied 50% => clown het Clown 2/3; piebald het Piebald 1/2
                Clown (66% het) => clown het Clown 2/3
                Pastel Clown (het) => pastel Pastel/+; clown het Clown 1/1
                33% het Pied => piebald het Piebald 1/3
                25% het Pied 12.5% het Clown => clown het Clown 1/8; piebald het Piebald 1/4
                67% het Pied => piebald het Piebald 67/100
                2/3 het Clown => clown het Clown 2/3
                100 % het pied => piebald het Piebald 1/1
                100% het clown 66% het pied 50% het albino => albino het Albino 1/2; clown het Clown 1/1; piebald het Piebald 2/3
                double het Clown Pied => clown het Clown 1/1; piebald het Piebald 1/1
                66% double het Clown Pied => clown het Clown 2/3; piebald het Piebald 2/3
                TH clown pied DG => desert-ghost het Desert Ghost 1/1; clown het Clown 1/1; piebald het Piebald 1/1
                Pastel QH clown/pied/dg/lav => pastel Pastel/+; lavender het Lavender Albino 1/1; desert-ghost het Desert Ghost 1/1; clown het Clown 1/1; piebald het Piebald 1/1
                double het Dreamsicle => lavender het Lavender Albino 1/1; piebald het Piebald 1/1
                proven het clown => clown het Clown 1/1
                poss het clown 66% => clown het Clown 2/3
                shed tested het pied => piebald het Piebald 1/1
                Pied 50% het Clown => piebald Piebald/Piebald; clown het Clown 1/2
                het Clown super Pastel => pastel Pastel/Pastel; clown het Clown 1/1
                het clown visual pied => piebald Piebald/Piebald; clown het Clown 1/1
                66% clown => clown het Clown 2/3
                50% het Yellow Belly => yellow-belly het Yellow Belly 1/2
                100% het Ivory => yellow-belly Yellow Belly/+
                """);
    }

    static Stream<Arguments> supers() {
        return Table.of(
                """
                Super Pastel Super Enchi => pastel Pastel/Pastel; enchi Enchi/Enchi
                Pastel Pastel => pastel Pastel/Pastel
                Pastel/Pastel Clown => pastel Pastel/Pastel; clown Clown/Clown
                homo Pastel => pastel Pastel/Pastel
                homozygous clown => clown Clown/Clown
                Visual Clown Visual Pied => clown Clown/Clown; piebald Piebald/Piebald
                viz pied het clown => piebald Piebald/Piebald; clown het Clown 1/1
                visual Pastel => pastel Pastel/+
                Super Pinstripe => pinstripe Pinstripe/Pinstripe
                Suma => mahogany Mahogany/Mahogany
                Killer Bee => pastel Pastel/Pastel; spider Spider/+
                Bumblebee het Pied => pastel Pastel/+; spider Spider/+; piebald het Piebald 1/1
                Ivory Yellow Belly => yellow-belly Yellow Belly/Yellow Belly
                """);
    }

    static Stream<Arguments> doubt() {
        return Table.of(
                """
                Pastel maybe Enchi => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel, ?? Enchi => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel Enchi? => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel Enchi (?) => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel, Enchi maybe => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel prob. Enchi => pastel Pastel/+; enchi maybe Enchi/+ ?
                Pastel ~Enchi => pastel Pastel/+; enchi maybe Enchi/+ ?
                poss Yellow Belly Pastel => pastel Pastel/+; yellow-belly maybe Yellow Belly/+ ?
                50% Enchi => enchi maybe Enchi/+ 1/2
                maybe 50% Enchi Clown => enchi maybe Enchi/+ 1/2; clown Clown/Clown
                maybe Super Pastel => pastel maybe Pastel/Pastel ?
                maybe 100% Super Pastel => pastel Pastel/Pastel
                Pastel or Enchi => pastel maybe Pastel/+ ?; enchi maybe Enchi/+ ?
                Lesser or Butter => bel Lesser/+ or Butter/+
                Mojave Lesser or Butter => bel Lesser/Mojave or Butter/Mojave
                YB or Gravel het Clown => yellow-belly Yellow Belly/+ or Gravel/+; clown het Clown 1/1
                66% het clown ?? => clown het Clown 2/3
                maybe het red axanthic => cinnamon maybe Het Red Axanthic/+ ?
                """);
    }

    static Stream<Arguments> animals() {
        return Table.of(
                """
                male Pastel => 1.0.0; pastel Pastel/+
                Pastel Clown M => 1.0.0; pastel Pastel/+; clown Clown/Clown
                F Pastel => 0.1.0; pastel Pastel/+
                \u2642 Pastel => 1.0.0; pastel Pastel/+
                Pastel \u2640 => 0.1.0; pastel Pastel/+
                1.2 Pastel => 1.2.0; pastel Pastel/+
                0.0.3 Pastel => 0.0.3; pastel Pastel/+
                1,0 Pastel => 1.0.0; pastel Pastel/+
                1.0 male Pastel => 1.0.0; pastel Pastel/+
                unsexed Pastel => 0.0.1; pastel Pastel/+
                1.0 het Clown => 1.0.0; clown het Clown 1/1
                1.0 Banana MM => 1.0.0; banana Banana/+ on_limited
                Banana female maker male => 1.0.0; banana Banana/+ on_shared
                FM Coral Glow Pastel => banana Coral Glow/+ on_shared; pastel Pastel/+
                """);
    }

    static Stream<Arguments> remarks() {
        return Table.of(
                """
                Normal => normal
                WT => normal
                wild-type => normal
                classic => normal
                Normal het Clown => clown het Clown 1/1
                Pastel paradox => pastel Pastel/+; (Paradox)
                CBB Pastel F2 => pastel Pastel/+; (CBB); (F2)
                WC Normal => (WC)
                2021 Pastel => pastel Pastel/+; (2021)
                neg Clown Pastel => pastel Pastel/+; (neg Clown)
                Pastel tested negative for clown => pastel Pastel/+; (tested negative for clown)
                Pastel "the grumpy one" => pastel Pastel/+; (the grumpy one)
                Pastel (bought at the spring show) => pastel Pastel/+; (bought at the spring show)
                Pastel line 7 => pastel Pastel/+; (line 7)
                Pied high white => piebald Piebald/Piebald; (High White)
                """);
    }

    static Stream<Arguments> series() {
        return Table.of(
                """
                Lesser Mojave => bel Lesser/Mojave
                mojave/lesser => bel Lesser/Mojave
                Mojave BEL => bel Lesser/Mojave or Butter/Mojave or Het White Diamond/Mojave
                Super Mojave (BEL) => bel Mojave/Mojave
                Fire Vanilla => fire Fire/Vanilla
                Candino => albino Albino/Candy
                Albino Candy => albino Albino/Candy
                het Albino het Candy => albino Albino/Candy
                Clown Cryptic => clown Clown/Cryptic
                Cryptic het Clown => clown Clown/Cryptic
                Cryptic 50% het Clown => clown Cryptic/+; clown het Clown 1/2
                Mojave het Daddy => bel Mojave/+; bel het Daddy 1/1
                Lesser het Daddy => bel Daddy/Lesser
                BEL 100% het Enchi => bel Lesser/Lesser or Butter/Lesser or Lesser/Mojave or Het White Diamond/Lesser or Butter/Butter or Butter/Mojave or Butter/Het White Diamond or Het White Diamond/Mojave; enchi het Enchi 1/1
                """);
    }
}
