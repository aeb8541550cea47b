package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution.Concern;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Locale;
import java.util.SequencedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// What the shipped species say, against what the trade says.
///
/// Common practice, no source, except where a test names one.
class TradeNamesTest {

    private static final Catalogue ROYALS = Catalogue.shipped("python-regius");
    private static final Catalogue CORNS = Catalogue.shipped("pantherophis-guttatus");
    private static final Catalogue BOAS = Catalogue.shipped("boa-imperator");

    /// Royals and boas: Gamble et al. 2017, Current Biology 27(14):2148-2153. Corn snakes are
    /// colubrids, whose females are the heterogametic sex (from memory).
    @Test
    void males_are_the_odd_sex_of_royals_and_boas_and_females_of_corn_snakes() {
        assertThat(ROYALS.model().sexes()).isEqualTo(SexDetermination.XY);
        assertThat(BOAS.model().sexes()).isEqualTo(SexDetermination.XY);
        assertThat(CORNS.model().sexes()).isEqualTo(SexDetermination.ZW);
    }

    @ParameterizedTest(name = "{0} is {1}/{2} at {3}")
    @CsvSource({
        "Highway, Yellow Belly, Gravel, yellow-belly",
        "Freeway, Yellow Belly, Asphalt, yellow-belly",
        "Superstripe, Yellow Belly, Specter, yellow-belly",
        "Puma, Yellow Belly, Spark, yellow-belly",
        "Ivory, Yellow Belly, Yellow Belly, yellow-belly",
        "Purple Passion, Mojave, Phantom, bel",
        "Mystic Potion, Mojave, Mystic, bel",
        "Crystal, Mojave, Special, bel",
        "White Diamond, Het White Diamond, Het White Diamond, bel",
        "Super Mojave, Mojave, Mojave, bel",
        "Vanilla Cream, Fire, Vanilla, fire",
        "Super Fire, Fire, Fire, fire",
        "8-Ball, Cinnamon, Black Pastel, cinnamon",
        "Red Axanthic, Het Red Axanthic, Het Red Axanthic, cinnamon",
        "Suma, Mahogany, Mahogany, mahogany",
        "Spiderhead, Spider, Blackhead, spider",
        "Pearl, Hidden Gene Woma, Hidden Gene Woma, hidden-gene-woma",
        "Powerball, Spotnose, Spotnose, spotnose",
        "Scaleless, Scaleless Head, Scaleless Head, scaleless",
        "Super Pastel, Pastel, Pastel, pastel",
        "Super Banana, Banana, Banana, banana",
        "Super Cryptic, Cryptic, Cryptic, clown",
    })
    void a_compound_name_is_one_pair_at_one_locus(
            String name, String first, String second, String locus) {
        assertThat(formOf(ROYALS, name).pairs())
                .as(name)
                .containsExactly(pair(locus, first, second));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "Bumblebee, Pastel + Spider",
        "Killer Bee, Super Pastel + Spider",
        "Lemon Blast, Pastel + Pinstripe",
        "Spinner, Pinstripe + Spider",
        "Pewter, Cinnamon + Pastel",
        "Firefly, Fire + Pastel",
        "Jigsaw, Mojave + Pinstripe",
        "Kingpin, Lesser + Pinstripe",
        "Pastave, Mojave + Pastel",
        "Queen Bee, Lesser + Pastel + Spider",
        "Honey Bee, Ghost + Spider",
        "Dreamsicle, Lavender Albino + Piebald",
    })
    void a_combination_name_is_looks_at_several_loci(String name, String looks) {
        assertThat(ROYALS.find(name))
                .get()
                .isInstanceOfSatisfying(
                        Meaning.OfCombination.class,
                        found ->
                                assertThat(found.combination().phenotypes())
                                        .extracting(Phenotype::name)
                                        .containsExactlyInAnyOrder(looks.split(" \\+ ")));
    }

    @ParameterizedTest(name = "{0} means {1}")
    @CsvSource({
        "Cinni, Cinnamon",
        "Cinny, Cinnamon",
        "BlkPastel, Black Pastel",
        "b pastel, Black Pastel",
        "Bananna, Banana",
        "Mojo, Mojave",
        "yelow belly, Yellow Belly",
        "YB, Yellow Belly",
        "het ivory, Yellow Belly",
        "pstl, Pastel",
        "OD, Orange Dream",
        "dg, Desert Ghost",
        "DesertGhost, Desert Ghost",
        "Desert, Desert",
        "Ghost, Ghost",
        "Lav, Lavender Albino",
        "amel, Albino",
        "T-, Albino",
        "T+, Caramel Albino",
        "HGW, Hidden Gene Woma",
        "Woma, Woma",
        "HRA, Het Red Axanthic",
        "pied, Piebald",
        "G-stripe, Genetic Stripe",
        "CG, Coral Glow",
        "Albino, Albino",
        "Clown, Clown",
    })
    void people_write_an_allele_in_many_ways(String written, String allele) {
        assertThat(ROYALS.find(written))
                .get()
                .isInstanceOfSatisfying(
                        Meaning.OfAllele.class,
                        found -> assertThat(found.allele().name()).isEqualTo(allele));
    }

    @Test
    void only_names_that_are_used_for_several_things_raise_a_question() {
        assertThat(questionsOf(ROYALS)).containsExactlyInAnyOrder("leucistic", "leucy", "red");
        assertThat(questionsOf(CORNS)).isEmpty();
        assertThat(questionsOf(BOAS))
                .containsExactlyInAnyOrder(
                        "albino",
                        "alb",
                        "amel",
                        "amelanistic",
                        "t-",
                        "t negative",
                        "t minus",
                        "tyrosinase negative",
                        "anery",
                        "anerythristic",
                        "t+",
                        "t+ albino",
                        "t plus",
                        "t positive",
                        "tyrosinase positive",
                        "snow",
                        "sunglow",
                        "moonglow",
                        "jungleglow",
                        "junglow");
    }

    /// In `Red Axanthic het Clown` the word `het` belongs to what follows.
    @ParameterizedTest
    @ValueSource(strings = {"python-regius", "pantherophis-guttatus", "boa-imperator"})
    void no_name_ends_in_the_word_that_begins_a_list_of_carried_genes(String species) {
        assertThat(allNames(Catalogue.shipped(species)))
                .isNotEmpty()
                .noneMatch(name -> name.toLowerCase(Locale.ROOT).matches(".*\\b(het|ph|poss)"));
    }

    @Test
    void an_axanthic_of_no_said_line_asks_which() {
        assertThat(ROYALS.find("axanthic"))
                .get()
                .isInstanceOfSatisfying(
                        Meaning.OfAllele.class,
                        found ->
                                assertThat(ROYALS.theTrait(found.allele()).asks())
                                        .containsExactly(
                                                "Axanthic Line 1",
                                                "Axanthic Line 2",
                                                "Axanthic Line 3",
                                                "Black Axanthic"));
    }

    /// That they look alike: Brown et al. 2022, PLoS ONE 17(10):e0276376, found more than one
    /// variant behind each of the two names.
    @ParameterizedTest
    @CsvSource({"albino, Albino, Albino Two", "ultramel, Ultramel, Ultramel Two"})
    void several_alleles_look_like_one_gene(String locus, String first, String second) {
        var map = ROYALS.model().theLocus(new LocusId(locus));
        assertThat(
                        Stream.of(
                                        pair(locus, first, first),
                                        pair(locus, first, second),
                                        pair(locus, second, second))
                                .map(map::phenotypeOf))
                .extracting(Phenotype::name)
                .containsOnly(first);
    }

    @Test
    void a_hidden_allele_of_a_visible_series_shows_beside_lesser_alone() {
        var map = ROYALS.model().theLocus(new LocusId("bel"));
        assertThat(map.phenotypeOf(pair("bel", "Daddy", "+")).visible()).isFalse();
        assertThat(map.phenotypeOf(pair("bel", "Daddy", "Lesser")).name()).isEqualTo("Platinum");
        assertThat(map.phenotypeOf(pair("bel", "Daddy", "Mojave")).name()).isEqualTo("Mojave");
    }

    @Test
    void white_animals_hide_every_other_gene_and_patterned_ones_none() {
        var clown = new LocusId("clown");
        var bel = ROYALS.model().theLocus(new LocusId("bel"));
        var fire = ROYALS.model().theLocus(new LocusId("fire"));
        assertThat(List.of(pair("bel", "Lesser", "Mojave"), pair("bel", "Lesser", "Lesser")))
                .allSatisfy(
                        white ->
                                assertThat(bel.maskingOf(bel.phenotypeOf(white)).hides(clown))
                                        .isTrue());
        assertThat(fire.maskingOf(fire.phenotypeOf(pair("fire", "Fire", "Fire"))).hides(clown))
                .isTrue();
        assertThat(List.of(pair("bel", "Mojave", "Mojave"), pair("bel", "Mojave", "Special")))
                .allSatisfy(
                        patterned ->
                                assertThat(bel.maskingOf(bel.phenotypeOf(patterned)).hides(clown))
                                        .isFalse());
    }

    @ParameterizedTest
    @CsvSource({
        "spider, Spider",
        "champagne, Champagne",
        "hidden-gene-woma, Hidden Gene Woma",
    })
    void two_copies_are_held_to_be_lethal_and_one_is_not(String locus, String allele) {
        var map = ROYALS.model().theLocus(new LocusId(locus));
        assertThat(map.viabilityOf(pair(locus, allele, allele)).counted()).isEqualTo(Fraction.NONE);
        assertThat(map.viabilityOf(pair(locus, allele, "+")).counted()).isEqualTo(Fraction.WHOLE);
    }

    /// The wobble: Rose & Williams 2014, J Exotic Pet Med 23:234-239; Starck et al. 2022, PLoS
    /// ONE 17:e0262788 ('all spider morph snakes showed the wobble condition').
    @Test
    void a_single_spider_allele_is_enough_for_the_caution_about_the_wobble() {
        var spider = new Allele(new LocusId("spider"), "Spider");
        assertThat(ROYALS.model().cautions())
                .filteredOn(caution -> caution.concern() == Concern.NERVES)
                .filteredOn(caution -> caution.parts().size() == 1)
                .anySatisfy(
                        caution -> {
                            var part = caution.parts().getFirst();
                            assertThat(part.allele()).isEqualTo(spider);
                            assertThat(part.copies()).isEqualTo(1);
                            assertThat(caution.source()).contains("Starck et al. 2022");
                        });
    }

    @Test
    void spider_with_champagne_is_warned_of_and_left_out_of_the_figures() {
        assertThat(ROYALS.model().combinations())
                .filteredOn(
                        combination ->
                                combination.parts().stream()
                                        .map(part -> part.allele().name())
                                        .collect(Collectors.toSet())
                                        .containsAll(List.of("Spider", "Champagne")))
                .singleElement()
                .satisfies(
                        combination ->
                                assertThat(combination.viability().counted())
                                        .isEqualTo(Fraction.WHOLE));
    }

    /// Sex-linked with cross-overs: Mallery & Carrillo 2016, Phyllomedusa 15(1):29-42. The trade
    /// speaks of 5 to 10 % of them (common practice, no source).
    @Test
    void banana_is_linked_to_sex_and_crosses_over_now_and_then() {
        assertThat(ROYALS.model().theLocus(new LocusId("banana")).locus().inheritance())
                .isInstanceOfSatisfying(
                        Inheritance.SexLinked.class,
                        linked ->
                                assertThat(linked.recombination())
                                        .isBetween(Fraction.of(5, 100), Fraction.of(10, 100)));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "Snow, Amel + Anery",
        "Blizzard, Amel + Charcoal",
        "Ghost, Anery + Hypo",
        "Butter, Amel + Caramel",
        "Opal, Amel + Lavender",
        "Plasma, Bloodred + Lavender",
        "Pewter, Bloodred + Charcoal",
        "Granite, Anery + Bloodred",
    })
    void corn_snake_names_mean_what_they_mean_there(String name, String looks) {
        assertThat(CORNS.find(name))
                .get()
                .isInstanceOfSatisfying(
                        Meaning.OfCombination.class,
                        found ->
                                assertThat(found.combination().phenotypes())
                                        .extracting(Phenotype::name)
                                        .containsExactlyInAnyOrder(looks.split(" \\+ ")));
    }

    @Test
    void a_corn_snake_ultramel_is_one_copy_each_of_amel_and_ultra() {
        assertThat(formOf(CORNS, "Ultramel").pairs())
                .containsExactly(pair("amel", "Amel", "Ultra"));
    }

    private static NamedForm formOf(Catalogue catalogue, String name) {
        return switch (catalogue.find(name).orElseThrow()) {
            case Meaning.OfForm(var _, var form) -> form;
            case Meaning.OfAllele _, Meaning.OfCombination _, Meaning.OfRemark _, Meaning.OneOf _ ->
                    throw new AssertionError(name + " is no form");
        };
    }

    private static Genotype.Diploid pair(String locus, String first, String second) {
        var id = new LocusId(locus);
        return new Genotype.Diploid(new Allele(id, first), new Allele(id, second));
    }

    private static SequencedSet<String> questionsOf(Catalogue catalogue) {
        return allNames(catalogue).stream()
                .filter(name -> catalogue.find(name).orElseThrow() instanceof Meaning.OneOf)
                .map(name -> name.toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /// Every name as the file writes it, and the supers.
    private static List<String> allNames(Catalogue catalogue) {
        var species = catalogue.species();
        var traits =
                species.loci().stream()
                        .flatMap(entry -> entry.traits().stream())
                        .flatMap(
                                trait ->
                                        Stream.concat(
                                                Stream.of(trait.name()),
                                                trait.synonyms().stream()));
        var forms =
                species.loci().stream()
                        .flatMap(entry -> entry.forms().stream())
                        .flatMap(
                                form ->
                                        Stream.concat(
                                                Stream.of(form.phenotype().name()),
                                                form.synonyms().stream()));
        var combinations =
                species.combinations().stream()
                        .flatMap(
                                combination ->
                                        Stream.concat(
                                                Stream.of(combination.name()),
                                                combination.synonyms().stream()));
        var remarks =
                species.remarks().stream()
                        .flatMap(
                                remark ->
                                        Stream.concat(
                                                Stream.of(remark.name()),
                                                remark.synonyms().stream()));
        return Stream.of(traits, forms, combinations, remarks)
                .flatMap(names -> names)
                .distinct()
                .toList();
    }
}
