package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.catalogue.CatalogueText.Result;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What comes with the program is whole, and every name in it leads somewhere.
class ShippedSpeciesTest {

    static List<String> shipped() {
        return Catalogue.shippedSpecies();
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void a_shipped_file_has_no_fault(String id) throws IOException {
        assertThat(CatalogueText.read(id, text(id))).isInstanceOf(Result.Loaded.class);
        assertThat(Catalogue.shipped(id).species().id()).isEqualTo(id);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void every_name_and_synonym_leads_to_what_it_is_the_name_of(String id) {
        var catalogue = Catalogue.shipped(id);
        for (var entry : catalogue.species().loci()) {
            for (var trait : entry.traits()) {
                names(trait.name(), trait.synonyms())
                        .forEach(
                                name ->
                                        assertThat(choices(catalogue, name))
                                                .as(name)
                                                .anyMatch(meaning -> leadsInto(meaning, entry)));
            }
            for (var form : entry.forms()) {
                if (form.phenotype().visible()) {
                    names(form.phenotype().name(), form.synonyms())
                            .forEach(
                                    name ->
                                            assertThat(choices(catalogue, name))
                                                    .as(name)
                                                    .anyMatch(
                                                            meaning -> leadsInto(meaning, entry)));
                }
            }
        }
        for (var combination : catalogue.species().combinations()) {
            names(combination.name(), combination.synonyms())
                    .forEach(
                            name ->
                                    assertThat(choices(catalogue, name))
                                            .as(name)
                                            .contains(
                                                    new Meaning.OfCombination(
                                                            combination.name(), combination)));
        }
        for (var remark : catalogue.species().remarks()) {
            names(remark.name(), remark.synonyms())
                    .forEach(
                            name ->
                                    assertThat(choices(catalogue, name))
                                            .as(name)
                                            .contains(new Meaning.OfRemark(remark.name(), remark)));
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void what_is_written_reads_back_the_same(String id) {
        var species = Catalogue.shipped(id).species();
        var head =
                """
                species %s
                common %s
                latin %s
                sexes %s
                clutch %d
                """
                        .formatted(
                                species.id(),
                                species.commonName(),
                                species.latinName(),
                                species.model().sexes(),
                                species.typicalClutch());
        var loci =
                species.loci().stream().map(CatalogueText::write).collect(Collectors.joining("\n"));

        var again = CatalogueText.read("again", head + loci);

        assertThat(again).isInstanceOf(Result.Loaded.class);
        assertThat(((Result.Loaded) again).species().loci()).isEqualTo(species.loci());
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void a_locus_that_is_written_out_and_laid_over_its_species_changes_only_whose_it_is(String id) {
        var species = Catalogue.shipped(id).species();
        for (var entry : species.loci()) {
            var over = CatalogueText.readOver(species, "own", CatalogueText.write(entry));

            assertThat(over).as(entry.id().value()).isInstanceOf(Result.Loaded.class);
            var overlaid = ((Result.Loaded) over).species();
            assertThat(overlaid.findLocus(entry.id())).contains(owned(entry));
            assertThat(overlaid.model()).isEqualTo(species.model());
            assertThat(overlaid.combinations()).isEqualTo(species.combinations());
        }
    }

    @Test
    void there_is_enough_to_work_with() {
        assertThat(alleles("python-regius")).isGreaterThanOrEqualTo(90);
        assertThat(alleles("pantherophis-guttatus")).isGreaterThanOrEqualTo(20);
        assertThat(alleles("boa-imperator")).isGreaterThanOrEqualTo(20);
    }

    @Test
    void a_species_that_is_not_shipped_is_refused() {
        assertThatThrownBy(() -> Catalogue.shipped("draco-volans"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("draco-volans");
    }

    private static int alleles(String id) {
        return Catalogue.shipped(id).species().loci().stream()
                .mapToInt(entry -> entry.traits().size())
                .sum();
    }

    private static Stream<String> names(String own, List<String> synonyms) {
        return Stream.concat(Stream.of(own), synonyms.stream());
    }

    private static List<Meaning> choices(Catalogue catalogue, String name) {
        return switch (catalogue.find(name).orElseThrow()) {
            case Meaning.OneOf(var _, var choices) -> choices;
            case Meaning one -> List.of(one);
        };
    }

    private static boolean leadsInto(Meaning meaning, LocusEntry entry) {
        return switch (meaning) {
            case Meaning.OfAllele(var _, var allele) -> allele.locus().equals(entry.id());
            case Meaning.OfForm(var _, var form) -> form.phenotype().locus().equals(entry.id());
            case Meaning.OfCombination _, Meaning.OfRemark _, Meaning.OneOf _ -> false;
        };
    }

    private static LocusEntry owned(LocusEntry entry) {
        return new LocusEntry(
                entry.title(),
                entry.map(),
                entry.standing(),
                entry.source(),
                entry.note(),
                entry.traits(),
                entry.forms(),
                entry.cautions(),
                true);
    }

    static String text(String id) throws IOException {
        try (var in = Catalogue.class.getResourceAsStream(id + ".species")) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
