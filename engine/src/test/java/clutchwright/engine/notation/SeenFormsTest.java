package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.Catalogue;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeenFormsTest {

    /// What a keeper taps at the bench must be what stands on the label, and be read again as it.
    @ParameterizedTest
    @ValueSource(strings = {"python-regius", "pantherophis-guttatus", "boa-imperator"})
    void every_form_that_can_be_seen_is_written_under_its_own_name(String species) {
        var lines = GeneLine.of(Catalogue.shipped(species));

        for (var map : lines.catalogue().model().loci().values()) {
            for (var form : map.phenotypes()) {
                if (form.visible()) {
                    var genes = new Genes(List.of(lines.seeing(form)), Optional.empty(), List.of());
                    var written = lines.write(genes);
                    assertThat(lines.read(written))
                            .as("%s of %s, written %s", form, form.locus(), written)
                            .isInstanceOfSatisfying(
                                    Reading.Understood.class,
                                    read ->
                                            assertThat(read.genes().statements())
                                                    .singleElement()
                                                    .isInstanceOfSatisfying(
                                                            Genes.Statement.Shows.class,
                                                            shows ->
                                                                    assertThat(shows.pairs())
                                                                            .isNotEmpty()
                                                                            .allMatch(
                                                                                    pair ->
                                                                                            map.phenotypeOf(
                                                                                                            pair)
                                                                                                    .equals(
                                                                                                            form))));
                }
            }
        }
    }
}
