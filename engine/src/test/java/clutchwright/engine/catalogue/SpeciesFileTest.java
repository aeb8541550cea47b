package clutchwright.engine.catalogue;

import static clutchwright.engine.catalogue.InventedSpecies.loaded;
import static clutchwright.engine.catalogue.InventedSpecies.species;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// What a species file says is what the species is.
class SpeciesFileTest {

    private final Species species = species();
    private final PhenotypeMap chalk = map("chalk");

    @Test
    void a_recessive_shows_in_two_copies_only() {
        assertThat(look("dew", "+", "Dew")).isEqualTo("Normal");
        assertThat(look("dew", "Dew", "Dew")).isEqualTo("Dew");
    }

    @Test
    void two_copies_of_an_incomplete_dominant_are_its_super() {
        assertThat(look("chalk", "+", "Slate")).isEqualTo("Slate");
        assertThat(look("chalk", "Slate", "Slate")).isEqualTo("Super Slate");
    }

    @Test
    void two_copies_of_a_dominant_look_like_one() {
        assertThat(look("tin", "Tin", "Tin")).isEqualTo(look("tin", "+", "Tin")).isEqualTo("Tin");
    }

    @Test
    void a_stated_form_goes_before_what_the_modes_imply() {
        assertThat(look("chalk", "Chalk", "Chalk")).isEqualTo("Pale");
        assertThat(look("chalk", "Slate", "Chalk")).isEqualTo("Pale");
        assertThat(look("chalk", "Whisper", "Chalk")).isEqualTo("Echo");
    }

    @Test
    void a_recessive_beside_an_allele_that_shows_leaves_its_look_alone() {
        assertThat(look("chalk", "Slate", "Whisper")).isEqualTo("Slate");
    }

    @Test
    void two_alleles_without_a_stated_form_are_called_by_both_names_in_the_order_of_the_series() {
        var text =
                InventedSpecies.HEAD
                        + """
                        locus ash
                          title Ash
                          inherits autosomal
                          allele Soot
                            mode recessive
                          allele Cinder
                            mode recessive
                        """;
        var soot = loaded(CatalogueText.read("ash", text)).loci().getFirst().map();
        assertThat(soot.phenotypeOf(pair("ash", "Cinder", "Soot")).name()).isEqualTo("Soot Cinder");
    }

    @Test
    void a_viability_belongs_to_the_pairs_of_its_form() {
        var half = new Viability(Fraction.HALF, Standing.LIKELY);
        assertThat(chalk.viabilityOf(pair("chalk", "Chalk", "Slate"))).isEqualTo(half);
        assertThat(chalk.viabilityOf(pair("chalk", "Slate", "Slate"))).isEqualTo(Viability.FULL);
    }

    @Test
    void a_form_masks_what_it_says() {
        assertThat(chalk.maskingOf(chalk.phenotypeOf(pair("chalk", "Chalk", "Chalk"))))
                .isEqualTo(new Masking.Everything());
        var fog = map("fog");
        assertThat(fog.maskingOf(fog.phenotypeOf(pair("fog", "Fog", "Fog"))))
                .isEqualTo(new Masking.These(Set.of(new LocusId("tin"), new LocusId("dew"))));
    }

    @Test
    void a_locus_is_inherited_as_it_says() {
        assertThat(map("tin").locus().inheritance())
                .isEqualTo(new Inheritance.SexLinked(Fraction.of(1, 20)));
        assertThat(map("fog").locus().inheritance()).isEqualTo(new Inheritance.Autosomal());
        var group = species.model().linkage().groups().getFirst();
        assertThat(group.loci()).containsExactly(new LocusId("fog"), new LocusId("dew"));
        assertThat(group.gaps()).containsExactly(Fraction.of(1, 10));
    }

    @Test
    void cautions_of_one_locus_and_of_several_reach_the_model() {
        var tin = new Allele(new LocusId("tin"), "Tin");
        var chalk = new Allele(new LocusId("chalk"), "Chalk");
        assertThat(species.model().cautions())
                .extracting(Caution::concern, Caution::parts)
                .containsExactly(
                        tuple(Caution.Concern.NERVES, List.of(new Caution.Part(tin, 2))),
                        tuple(
                                Caution.Concern.EARLY_DEATH,
                                List.of(new Caution.Part(chalk, 1), new Caution.Part(tin, 2))));
        assertThat(species.model().combinations().getFirst().viability())
                .isEqualTo(new Viability(Fraction.NONE, Standing.DISPUTED));
    }

    @Test
    void what_is_not_stated_is_settled_common_practice() {
        var trait = species.loci().getFirst().traits().getFirst();
        assertThat(trait.standing()).isEqualTo(Standing.SETTLED);
        assertThat(trait.source()).isEqualTo("common practice, no source");
        assertThat(species.loci().getLast().standing()).isEqualTo(Standing.DISPUTED);
    }

    @Test
    void every_pair_that_shows_has_one_named_form() {
        for (var entry : species.loci()) {
            var pairs =
                    entry.forms().stream()
                            .filter(form -> form.phenotype().visible())
                            .flatMap(form -> form.pairs().stream())
                            .toList();
            assertThat(pairs).doesNotHaveDuplicates();
            assertThat(pairs)
                    .containsExactlyInAnyOrderElementsOf(
                            entry.map().locus().allPairs().stream()
                                    .filter(pair -> entry.map().phenotypeOf(pair).visible())
                                    .toList());
        }
    }

    @Test
    void comments_line_ends_and_a_byte_order_mark_do_not_matter() {
        var awkward =
                "\ufeff# a paper snake\r\n"
                        + InventedSpecies.TEXT
                                .replace("\n", "   # said so\r\n")
                                .replace("note      Not inherited.", "note      No.\\#1 of \\#2");
        assertThat(loaded(CatalogueText.read("awkward", awkward)).loci()).isEqualTo(species.loci());
        assertThat(loaded(CatalogueText.read("awkward", awkward)).remarks().getFirst().note())
                .isEqualTo("No.#1 of #2");
    }

    @Test
    void notes_with_several_lines_and_number_signs_are_written_so_that_they_read_back() {
        var entry = species.loci().getFirst();
        var note = "First line.\n\n# not a comment, C# neither\nand a \\# as it is";
        var noted =
                new LocusEntry(
                        entry.title(),
                        entry.map(),
                        entry.standing(),
                        entry.source(),
                        note,
                        entry.traits(),
                        entry.forms(),
                        entry.cautions(),
                        true);
        var over = loaded(CatalogueText.readOver(species, "own", CatalogueText.write(noted)));
        assertThat(over.loci().getFirst()).isEqualTo(noted);
    }

    private PhenotypeMap map(String locus) {
        return species.model().theLocus(new LocusId(locus));
    }

    private String look(String locus, String first, String second) {
        return map(locus).phenotypeOf(pair(locus, first, second)).name();
    }

    private static Genotype.Diploid pair(String locus, String first, String second) {
        var id = new LocusId(locus);
        return new Genotype.Diploid(new Allele(id, first), new Allele(id, second));
    }
}
