package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue.Near;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// A name is found however it is written, and a name with two meanings is never guessed.
class NamesTest {

    private final Catalogue catalogue = Catalogue.of(InventedSpecies.species());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "the white one",
                "The-White_One",
                "THEWHITEONE",
                " the  'white'\u00a0one ",
                "the white\u2013one",
                "pale"
            })
    void case_spaces_hyphens_underscores_and_apostrophes_do_not_matter(String written) {
        assertThat(means(written)).isEqualTo("form Pale [Chalk/Chalk, Chalk/Slate]");
    }

    @Test
    void a_slash_matters() {
        assertThat(means("the/white/one")).isEqualTo("nothing");
    }

    @Test
    void a_hyphen_after_a_single_letter_matters() {
        var text = InventedSpecies.TEXT.replace("het mist", "m-; n+");
        var lettered = Catalogue.of(InventedSpecies.loaded(CatalogueText.read("letters", text)));
        assertThat(means(lettered, "M-")).isEqualTo("allele Fog");
        assertThat(means(lettered, "M")).isEqualTo("nothing");
        assertThat(means(lettered, "N")).isEqualTo("nothing");
    }

    @Test
    void synonyms_lead_to_the_allele() {
        assertThat(means("blackboard")).isEqualTo("allele Chalk");
        assertThat(means("het mist")).isEqualTo("allele Fog");
    }

    @Test
    void super_before_any_name_of_an_allele_that_shows_is_two_copies_of_it() {
        assertThat(means("super slate")).isEqualTo("form Super Slate [Slate/Slate]");
        assertThat(means("Super CHK")).isEqualTo("form Super Chalk [Chalk/Chalk]");
        assertThat(means("super tin")).isEqualTo("form Super Tin [Tin/Tin]");
        assertThat(means("super rosy")).isEqualTo("form Super Tin [Tin/Tin]");
        assertThat(means("super fog")).isEqualTo("nothing");
    }

    @Test
    void a_name_that_two_loci_use_is_asked_even_if_it_is_the_own_name_in_one_of_them() {
        assertThat(means("rosy")).isEqualTo("one of allele Tin, allele Fog");
        assertThat(means("echo")).isEqualTo("one of form Echo [Chalk/Whisper], allele Dew");
    }

    @Test
    void an_allele_goes_before_the_form_of_its_own_name_in_the_same_locus() {
        assertThat(means("fog")).isEqualTo("allele Fog");
    }

    @Test
    void combinations_and_remarks_are_found_by_every_name() {
        assertThat(means("heath")).isEqualTo("combination Moor");
        assertThat(means("odd one")).isEqualTo("remark Oddity");
    }

    @Test
    void nothing_and_what_is_not_a_name_is_not_found() {
        assertThat(means("")).isEqualTo("nothing");
        assertThat(means(" - ")).isEqualTo("nothing");
        assertThat(means("+")).isEqualTo("nothing");
        assertThat(means("Normal")).isEqualTo("nothing");
    }

    @Test
    void two_forms_of_one_name_in_a_locus_are_one_look() {
        var text =
                InventedSpecies.TEXT.replace(
                        "  form Chalk/Whisper\n    name      Echo",
                        "  form Chalk/Whisper\n    name      Pale\n    also      half moon");
        var merged = Catalogue.of(InventedSpecies.loaded(CatalogueText.read("merged", text)));
        assertThat(means(merged, "pale"))
                .isEqualTo("form Pale [Chalk/Chalk, Chalk/Slate, Chalk/Whisper]");
        assertThat(means(merged, "half moon")).isEqualTo("form half moon [Chalk/Whisper]");
    }

    @Test
    void a_swap_a_lost_and_a_doubled_letter_are_one_slip_each() {
        assertThat(catalogue.near("chlak", 1)).containsExactly(new Near("Chalk", 1));
        assertThat(catalogue.near("chak", 1)).containsExactly(new Near("Chalk", 1));
        assertThat(catalogue.near("chalkk", 1)).containsExactly(new Near("Chalk", 1));
        assertThat(catalogue.near("super slat", 1)).containsExactly(new Near("Super Slate", 1));
        assertThat(catalogue.near("odditty", 1)).containsExactly(new Near("Oddity", 1));
    }

    @Test
    void what_resembles_nothing_has_no_nearest_name() {
        assertThat(catalogue.nearest("xylophone", 5)).isEmpty();
        assertThat(catalogue.nearest("", 5)).isEmpty();
        assertThat(catalogue.nearest("q", 5)).isEmpty();
    }

    @Test
    void a_misspelt_synonym_is_corrected_to_the_name_itself_and_an_ambiguous_one_stays() {
        assertThat(catalogue.nearest("blackbord", 3)).containsExactly("Chalk");
        assertThat(catalogue.nearest("rosyy", 3)).containsExactly("rosy");
    }

    @Test
    void completion_offers_own_names_then_synonyms_then_inner_words() {
        assertThat(catalogue.beginning("s", 9))
                .startsWith("Slate", "Super Slate")
                .doesNotContain("Chalk");
        assertThat(catalogue.beginning("bla", 9)).containsExactly("Chalk", "Super Chalk");
        assertThat(catalogue.beginning("whi", 9)).startsWith("Whisper").endsWith("Pale");
        assertThat(catalogue.beginning("ro", 9)).containsExactly("Tin", "Fog", "Super Tin");
        assertThat(catalogue.beginning("s", 1)).hasSize(1);
    }

    @Test
    void the_longest_name_bounds_what_need_be_looked_up() {
        assertThat(catalogue.longestNameWords()).isEqualTo(3);
    }

    @Test
    void every_trait_is_found_by_its_allele() {
        var entry = catalogue.species().loci().getFirst();
        for (var trait : entry.traits()) {
            assertThat(catalogue.theTrait(trait.allele())).isEqualTo(trait);
        }
    }

    private String means(String name) {
        return means(catalogue, name);
    }

    private static String means(Catalogue catalogue, String name) {
        return catalogue.find(name).map(MeaningText::of).orElse("nothing");
    }
}
