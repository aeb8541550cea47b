package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// What a hurried hand types into the royal python's catalogue. The slips are made up.
class MisspeltNamesTest {

    private static final Catalogue ROYALS = Catalogue.shipped("python-regius");

    @ParameterizedTest
    @CsvSource({
        "Cinamonn, Cinnamon",
        "Enchii, Enchi",
        "Pinstirpe, Pinstripe",
        "Clwon, Clown",
        "pieblad, Piebald",
        "hihgway, Highway",
        "desert gohst, Desert Ghost",
        "supr pastel, Super Pastel",
        "super orange dreem, Super Orange Dream",
        "bumblbeee, Bumblebee",
        "champange, Champagne",
        "lavnder albino, Lavender Albino"
    })
    void the_name_that_was_meant_comes_first(String written, String meant) {
        assertThat(ROYALS.find(written)).isEmpty();
        assertThat(ROYALS.nearest(written, 3)).startsWith(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "zz", "qqq", "lorem ipsum", "1234567", "%%%%"})
    void what_is_like_no_gene_is_given_none(String written) {
        assertThat(ROYALS.nearest(written, 3)).isEmpty();
    }

    @Test
    void typing_finds_the_common_genes_first() {
        assertThat(ROYALS.beginning("past", 3)).startsWith("Pastel");
        assertThat(ROYALS.beginning("b", 8)).contains("Banana", "Black Pastel");
        assertThat(ROYALS.beginning("super p", 8)).contains("Super Pastel", "Super Pinstripe");
        assertThat(ROYALS.beginning("gho", 8)).contains("Ghost", "Desert Ghost");
        assertThat(ROYALS.beginning("yb", 3)).startsWith("Yellow Belly");
    }

    @Test
    void completion_and_correction_offer_only_names_that_are_found() {
        for (var start : new String[] {"", "s", "super", "b", "t", "a", "white", "clwon"}) {
            assertThat(ROYALS.beginning(start, 2_000))
                    .allSatisfy(name -> assertThat(ROYALS.find(name)).as(name).isPresent());
            assertThat(ROYALS.nearest(start, 2_000))
                    .allSatisfy(name -> assertThat(ROYALS.find(name)).as(name).isPresent());
        }
    }
}
