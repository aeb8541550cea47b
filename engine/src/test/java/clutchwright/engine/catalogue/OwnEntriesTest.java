package clutchwright.engine.catalogue;

import static clutchwright.engine.catalogue.InventedSpecies.loaded;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.catalogue.CatalogueText.Fault;
import clutchwright.engine.catalogue.CatalogueText.Result;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

/// A keeper's own genes lie over the species; what was there stays unless it is replaced.
class OwnEntriesTest {

    private static final String NEW_GENE =
            """
            locus ember
              title      Ember
              inherits   autosomal
              allele Ember
                mode      incomplete dominant
            combination Hearth
              is        Ember + Fog
            linkage  ember 1/4 fog
            """;

    private final Species base = InventedSpecies.species();

    @Test
    void a_new_gene_stands_after_the_others_and_is_unproven() {
        var over = loaded(CatalogueText.readOver(base, "own", NEW_GENE));

        assertThat(over.loci())
                .extracting(entry -> entry.id().value())
                .containsExactly("chalk", "tin", "fog", "dew", "ember");
        var ember = over.loci().getLast();
        assertThat(ember.ownEntry()).isTrue();
        assertThat(ember.standing()).isEqualTo(Standing.UNPROVEN);
        assertThat(ember.traits().getFirst().standing()).isEqualTo(Standing.UNPROVEN);
        assertThat(over.combinations())
                .extracting(NamedCombination::name)
                .containsExactly("Moor", "Hearth");
        assertThat(over.model().cautions()).isEqualTo(base.model().cautions());
        assertThat(over.model().combinations()).isEqualTo(base.model().combinations());
    }

    @Test
    void a_new_linkage_takes_its_loci_out_of_the_older_group() {
        var over = loaded(CatalogueText.readOver(base, "own", NEW_GENE));
        assertThat(over.model().linkage().groups())
                .singleElement()
                .satisfies(
                        group ->
                                assertThat(group.loci())
                                        .containsExactly(new LocusId("ember"), new LocusId("fog")));
    }

    @Test
    void a_locus_of_the_same_name_takes_the_place_of_the_old_one() {
        var fog =
                """
                locus fog
                  title      Fog, as I have it
                  inherits   autosomal
                  allele Fog
                    mode      recessive
                    standing  likely
                  allele Haze
                    mode      recessive
                """;
        var over = loaded(CatalogueText.readOver(base, "own", fog));

        assertThat(over.loci())
                .extracting(LocusEntry::title)
                .containsExactly("Chalk series", "Tin", "Fog, as I have it", "Dew");
        assertThat(over.loci())
                .extracting(LocusEntry::ownEntry)
                .containsExactly(false, false, true, false);
        assertThat(over.loci().get(2).traits())
                .extracting(Trait::standing)
                .containsExactly(Standing.LIKELY, Standing.UNPROVEN);
    }

    @Test
    void what_the_species_still_speaks_of_cannot_vanish() {
        var tin =
                """
                # my own
                locus tin
                  title      Tin
                  inherits   autosomal
                  allele Pewter
                    mode      dominant
                """;
        assertThat(faults(tin))
                .extracting(Fault::line, Fault::found)
                .containsExactly(
                        tuple(2, "locus 'tin' without the form 'Tin'"),
                        tuple(2, "locus 'tin' without the allele 'Tin'"));
    }

    @Test
    void an_allele_that_another_locus_asks_about_cannot_vanish() {
        var asking =
                loaded(
                        CatalogueText.read(
                                "asking",
                                InventedSpecies.TEXT.replace("also      echo", "asks      Slate")));
        var chalk =
                CatalogueText.write(asking.loci().getFirst())
                        .replace("allele    Slate", "allele    Grey")
                        .replace("Chalk/Slate", "Chalk/Grey");
        assertThat(faults(asking, chalk))
                .extracting(Fault::line, Fault::found)
                .containsExactly(tuple(1, "locus 'chalk' without the allele 'Slate'"));
    }

    @Test
    void a_linked_locus_cannot_become_sex_linked_unsaid() {
        var dew =
                """
                locus dew
                  title      Dew
                  inherits   sex-linked 1/20
                  allele Dew
                    mode      recessive
                """;
        assertThat(faults(dew))
                .extracting(Fault::line, Fault::found)
                .containsExactly(tuple(3, "the linked locus 'dew' made sex-linked"));
    }

    @Test
    void own_entries_have_no_head() {
        assertThat(faults("species draco-fictus"))
                .extracting(Fault::found)
                .containsExactly("unknown key 'species'");
    }

    @Test
    void nothing_written_changes_nothing() {
        assertThat(loaded(CatalogueText.readOver(base, "own", ""))).isEqualTo(base);
    }

    @Test
    void a_catalogue_with_own_entries_knows_their_names_and_which_they_are() {
        var catalogue =
                Catalogue.of(base).with(loaded(CatalogueText.readOver(base, "own", NEW_GENE)));
        assertThat(catalogue.find("super ember")).isPresent();
        assertThat(catalogue.ownEntries())
                .extracting(entry -> entry.id().value())
                .containsExactly("ember");
    }

    @Test
    void entries_of_another_species_are_refused() {
        var catalogue = Catalogue.shipped("python-regius");
        assertThatThrownBy(() -> catalogue.with(base))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("draco-fictus");
    }

    private List<Fault> faults(String overlay) {
        return faults(base, overlay);
    }

    private static List<Fault> faults(Species base, String overlay) {
        return switch (CatalogueText.readOver(base, "own", overlay)) {
            case Result.Faulty(var faults) -> faults;
            case Result.Loaded _ -> List.of();
        };
    }
}
