package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The royal python's genes as breeders speak of them. Common practice, no source, unless a paper
/// is named beside the check.
class RoyalPythonTraitsTest {

    private final Catalogue catalogue = Catalogue.shipped("python-regius");

    @ParameterizedTest
    @CsvSource({
        "Lesser, Butter",
        "Lesser, Mojave",
        "Mojave, Special",
        "Mojave, Mystic",
        "Phantom, Mocha",
        "Bamboo, Daddy"
    })
    void the_blue_eyed_leucistics_are_one_locus(String one, String other) {
        assertThat(allele(one).locus()).isEqualTo(allele(other).locus());
    }

    @Test
    void a_compound_of_that_series_is_like_neither_super() {
        assertThat(look("Mojave", "Lesser")).isEqualTo("Blue-Eyed Leucistic");
        assertThat(look("Mojave", "Mojave")).isEqualTo("Super Mojave");
        assertThat(look("Lesser", "Lesser")).isEqualTo("Blue-Eyed Leucistic");
        assertThat(look("Mojave", "Special")).isEqualTo("Crystal");
        assertThat(look("Mojave", "Phantom")).isEqualTo("Purple Passion");
        assertThat(look("Mojave", "Mystic")).isEqualTo("Mystic Potion");
    }

    @Test
    void the_hidden_allele_shows_only_beside_lesser() {
        var daddy = allele("Daddy");
        var wild = Allele.wildOf(daddy.locus());
        var map = catalogue.model().theLocus(daddy.locus());
        assertThat(map.phenotypeOf(new Genotype.Diploid(daddy, wild)))
                .isEqualTo(Phenotype.normalOf(daddy.locus()));
        assertThat(look("Lesser", "Daddy")).isEqualTo("Platinum");
    }

    @ParameterizedTest
    @CsvSource({
        "Highway, Yellow Belly, Gravel",
        "Freeway, Yellow Belly, Asphalt",
        "Superstripe, Yellow Belly, Specter",
        "Puma, Yellow Belly, Spark",
        "8-Ball, Cinnamon, Black Pastel",
        "Crystal, Mojave, Special",
        "Vanilla Cream, Fire, Vanilla",
        "Spiderhead, Spider, Blackhead",
        "Ivory, Yellow Belly, Yellow Belly",
        "Powerball, Spotnose, Spotnose",
        "Suma, Mahogany, Mahogany"
    })
    void a_compound_name_is_one_pair_of_one_locus(String name, String first, String second) {
        assertThat(catalogue.find(name))
                .hasValueSatisfying(
                        meaning ->
                                assertThat(meaning)
                                        .isInstanceOfSatisfying(
                                                Meaning.OfForm.class,
                                                form ->
                                                        assertThat(form.form().pairs())
                                                                .containsExactly(
                                                                        pair(first, second))));
    }

    @ParameterizedTest
    @CsvSource({
        "Bumblebee, Pastel, Spider",
        "Killer Bee, Super Pastel, Spider",
        "Lemon Blast, Pastel, Pinstripe",
        "Spinner, Pinstripe, Spider",
        "Pewter, Cinnamon, Pastel",
        "Firefly, Fire, Pastel",
        "Jigsaw, Mojave, Pinstripe",
        "Kingpin, Lesser, Pinstripe",
        "Pastave, Mojave, Pastel",
        "Honey Bee, Ghost, Spider",
        "Dreamsicle, Lavender Albino, Piebald"
    })
    void a_combination_is_several_loci(String name, String one, String other) {
        assertThat(catalogue.find(name))
                .hasValueSatisfying(
                        meaning ->
                                assertThat(meaning)
                                        .isInstanceOfSatisfying(
                                                Meaning.OfCombination.class,
                                                combination ->
                                                        assertThat(
                                                                        combination
                                                                                .combination()
                                                                                .phenotypes())
                                                                .extracting(Phenotype::name)
                                                                .containsExactlyInAnyOrder(
                                                                        one, other)));
    }

    @Test
    void a_queen_bee_is_three_loci() {
        assertThat(catalogue.find("queen bee"))
                .hasValueSatisfying(
                        meaning ->
                                assertThat(meaning)
                                        .isInstanceOfSatisfying(
                                                Meaning.OfCombination.class,
                                                queen ->
                                                        assertThat(queen.combination().phenotypes())
                                                                .hasSize(3)));
    }

    @ParameterizedTest
    @CsvSource({"Axanthic, 3", "ax, 3", "Snow, 3", "Leucistic, 2", "Red, 2", "Hypo, 2"})
    void a_name_that_means_several_things_is_asked(String name, int atLeast) {
        assertThat(catalogue.find(name))
                .hasValueSatisfying(
                        meaning ->
                                assertThat(meaning)
                                        .isInstanceOfSatisfying(
                                                Meaning.OneOf.class,
                                                one ->
                                                        assertThat(one.choices())
                                                                .hasSizeGreaterThanOrEqualTo(
                                                                        atLeast)));
    }

    @Test
    void several_alleles_of_one_locus_look_alike_as_albino_and_ultramel() {
        // Brown et al. 2022, PLoS ONE 17(10):e0276376: two variants each of TYR and TYRP1.
        assertThat(pairsLookingLike("Albino")).hasSize(3);
        assertThat(pairsLookingLike("Ultramel")).hasSizeGreaterThanOrEqualTo(3);
        // The same paper: Lavender is OCA2, so none of them is allelic to another.
        assertThat(List.of("Albino", "Ultramel", "Lavender Albino"))
                .extracting(name -> allele(name).locus())
                .doesNotHaveDuplicates();
    }

    @Test
    void banana_and_coral_glow_are_one_locus_on_the_sex_chromosomes() {
        // Mallery & Carrillo 2016, Phyllomedusa 15(1):29-42.
        var locus = catalogue.model().theLocus(allele("Banana").locus()).locus();
        assertThat(locus.inheritance()).isInstanceOf(Inheritance.SexLinked.class);
        assertThat(allele("Coral Glow").locus()).isEqualTo(locus.id());
    }

    @Test
    void het_red_axanthic_is_one_visible_copy_and_no_axanthic_line() {
        var red = allele("het red axanthic");
        assertThat(look("Het Red Axanthic", "Het Red Axanthic")).isEqualTo("Red Axanthic");
        assertThat(catalogue.theTrait(red).mode()).isEqualTo(Mode.INCOMPLETE_DOMINANT);
        assertThat(red.locus().value()).doesNotStartWith("axanthic");
    }

    @Test
    void every_carrier_of_spider_wobbles() {
        // Rose & Williams 2014, J Exotic Pet Med 23:234-239; Starck et al. 2022, PLoS ONE
        // 17:e0262788.
        assertThat(catalogue.model().cautions())
                .anySatisfy(
                        caution -> {
                            assertThat(caution.concern()).isEqualTo(Caution.Concern.NERVES);
                            assertThat(caution.standing()).isEqualTo(Standing.SETTLED);
                            assertThat(caution.parts())
                                    .containsExactly(new Caution.Part(allele("Spider"), 1));
                        });
    }

    @Test
    void spider_with_champagne_is_an_interaction_of_two_loci() {
        assertThat(catalogue.model().combinations())
                .anySatisfy(
                        combination ->
                                assertThat(combination.parts())
                                        .extracting(Caution.Part::allele)
                                        .containsExactlyInAnyOrder(
                                                allele("Spider"), allele("Champagne")));
    }

    @Test
    void desert_is_not_desert_ghost() {
        assertThat(allele("Desert").locus()).isNotEqualTo(allele("Desert Ghost").locus());
        assertThat(allele("DG")).isEqualTo(allele("Desert Ghost"));
    }

    @ParameterizedTest
    @CsvSource({
        "Cinni, Cinnamon",
        "Cinny, Cinnamon",
        "BlkPastel, Black Pastel",
        "b pastel, Black Pastel",
        "Bananna, Banana",
        "Mojo, Mojave",
        "yelow belly, Yellow Belly",
        "pstl, Pastel",
        "od, Orange Dream",
        "YB, Yellow Belly",
        "pied, Piebald",
        "lav, Lavender Albino",
        "DesertGhost, Desert Ghost"
    })
    void what_breeders_write_is_understood(String written, String meant) {
        assertThat(allele(written)).isEqualTo(allele(meant));
    }

    @ParameterizedTest
    @CsvSource({"Cinamonn, Cinnamon", "Enchii, Enchi", "Pinstirpe, Pinstripe", "Clwon, Clown"})
    void a_slip_of_the_finger_finds_the_name_first(String written, String meant) {
        assertThat(catalogue.nearest(written, 3)).startsWith(meant);
    }

    @ParameterizedTest
    @CsvSource({"Ringer", "Paradox", "Dinker"})
    void what_is_no_gene_is_a_remark(String word) {
        assertThat(catalogue.find(word)).get().isInstanceOf(Meaning.OfRemark.class);
    }

    private Allele allele(String name) {
        return switch (catalogue.find(name).orElseThrow()) {
            case Meaning.OfAllele(var _, var allele) -> allele;
            case Meaning other -> throw new AssertionError(name + " is " + MeaningText.of(other));
        };
    }

    private Genotype.Diploid pair(String first, String second) {
        return new Genotype.Diploid(allele(first), allele(second));
    }

    private String look(String first, String second) {
        var locus = allele(first).locus();
        return catalogue.model().theLocus(locus).phenotypeOf(pair(first, second)).name();
    }

    private List<Genotype.Diploid> pairsLookingLike(String name) {
        LocusId locus = allele(name).locus();
        return catalogue.model().theLocus(locus).showing(new Phenotype(locus, name, true));
    }
}
