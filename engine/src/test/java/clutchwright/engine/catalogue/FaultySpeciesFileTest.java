package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import clutchwright.engine.catalogue.CatalogueText.Fault;
import clutchwright.engine.catalogue.CatalogueText.Result;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A slip in a species file is reported at its line, with what stands there and what should.
class FaultySpeciesFileTest {

    /// The first such line of the invented species is replaced; the fault must stand there.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
                    species draco-fictus | species Draco | 'Draco' | lower-case letters
                    sexes XY | sexes XX | unknown sexes 'XX' | one of XY, ZW
                    clutch 7 | clutch seven | 'seven' | a whole number from 1
                    clutch 7 | clutch 0 | '0' | a whole number from 1
                    latin Draco fictus | latein Draco fictus | unknown key 'latein' | perhaps 'latin'
                    latin Draco fictus | latin | nothing after 'latin' | a value
                    latin Draco fictus | common Draco | 'common' a second time | it once
                    locus chalk | locus Chalk Series | locus 'Chalk Series' | lower-case letters
                    locus dew | locus fog | locus 'fog' a second time | another name
                    inherits   autosomal | inherits autosomic | 'autosomic' | autosomal, or sex-linked
                    inherits   sex-linked 1/20 | inherits sex-linked 3/4 | '3/4' | from 0 to 1/2
                    inherits   sex-linked 1/20 | inherits sex-linked 5% | '5%' | a fraction such as
                    inherits   sex-linked 1/20 | inherits sex-linked 1/0 | '1/0' | a fraction such as
                    allele Slate | allele chalk | allele 'chalk' a second time | another name
                    allele Slate | allele Slate/Grey | 'Slate/Grey' | a name without /
                    allele Slate | allele Normal | 'Normal' | not Normal
                    mode      incomplete dominant | mode co-dominant | unknown mode 'co-dominant' | recessive
                    mode      incomplete dominant | mode recesive | unknown mode 'recesive' | perhaps 'recessive'
                    also      echo | asks Foog | unknown allele 'Foog' | perhaps 'Fog'
                    also      echo | asks Dew | 'Dew', of the same locus | alleles of other loci
                    standing   disputed | standing dispute | unknown standing 'dispute' | perhaps 'disputed'
                    form Chalk/Whisper | form Chalk/Wisper | unknown allele 'Wisper' | perhaps 'Whisper'
                    form Chalk/Whisper | form Chalk Whisper | 'Chalk Whisper' | two alleles with /
                    form Chalk/Whisper | form Chalk/Chalk | the pair Chalk/Chalk a second time | each pair
                    form Chalk/Whisper | form +/+ | the pair +/+ | not the wild type
                    viability 1/2 likely | viability 3/2 likely | '3/2' | from 0 to 1
                    viability 1/2 likely | viability 1/2 | no standing after the fraction | settled
                    masks     tin; dew | masks tim; dew | unknown locus 'tim' | perhaps 'tin'
                    masks     tin; dew | masks ; | ';' | everything, or loci
                    masks     tin; dew | masks fog | the form's own locus fog | other loci
                    caution nerves | caution nerve | unknown concern 'nerve' | perhaps 'nerves'
                    when      Tin x2 | when Tim x2 | unknown allele 'Tim' | perhaps 'Tin'
                    linkage  fog 1/10 dew | linkage fog 1/10 tin | the sex-linked locus 'tin' | autosomal
                    linkage  fog 1/10 dew | linkage fog dew | 'dew' | a fraction such as
                    linkage  fog 1/10 dew | linkage fog 1/10 mew | unknown locus 'mew' | perhaps 'dew'
                    linkage  fog 1/10 dew | linkage fog 1/10 fog | locus 'fog' a second time | once
                    interaction Chalk + Tin x2 | interaction Chalk + Slate | 'Chalk + Slate', of one locus | several
                    interaction Chalk + Tin x2 | interaction Chalk + Tym | unknown allele 'Tym' | one of
                    is        Fog + Tin | is Fog + Tinn | unknown form or allele 'Tinn' | perhaps 'Tin'
                    is        Fog + Tin | is Fog + Fog | 'Fog + Fog' | at least two loci
                    is        Fog + Tin | is Tin + rosy | 'rosy', which means several things | tin:Tin, fog:Fog
                    is        Fog + Tin | is Tin + Whisper x | unknown form or allele 'Whisper x' | perhaps 'Whisper'
                    """)
    void a_slip_is_reported_where_it_stands(
            String line, String slip, String found, String expected) {
        var lines = new ArrayList<>(InventedSpecies.TEXT.lines().toList());
        var at = lines.stream().map(String::strip).toList().indexOf(line);
        assertThat(at).as("the text has the line").isNotNegative();
        lines.set(at, lines.get(at).replace(line, slip));

        assertThat(faults(String.join("\n", lines)))
                .as(slip)
                .anySatisfy(
                        fault -> {
                            assertThat(fault.file()).isEqualTo("slip.species");
                            assertThat(fault.line()).isEqualTo(at + 1);
                            assertThat(fault.found()).isEqualTo(found);
                            assertThat(fault.expected()).contains(expected);
                        });
    }

    @Test
    void every_fault_is_listed_in_the_order_of_the_lines() {
        var text =
                """
                species draco-fictus
                common Paper snake
                latin Draco fictus
                clutch 7
                locus chalk
                  tittle     Chalk
                  allele Chalk
                    mode      sometimes
                \tallele Slate
                   allele Slate
                      mode recessive
                  form Chalk/Chalk
                    name      Pale
                      also    too deep
                linkage fog
                """;
        assertThat(faults(text))
                .extracting(Fault::line, Fault::found)
                .containsSubsequence(
                        at(1, "no 'sexes'"),
                        at(5, "no 'title'"),
                        at(5, "no 'inherits'"),
                        at(6, "unknown key 'tittle'"),
                        at(8, "unknown mode 'sometimes'"),
                        at(9, "a tab before the key"),
                        at(10, "3 spaces before the key"),
                        at(11, "6 spaces before the key"),
                        at(14, "6 spaces before the key"),
                        at(15, "unknown locus 'fog'"));
    }

    @Test
    void an_allele_of_two_loci_must_be_written_with_its_locus() {
        var text =
                InventedSpecies.TEXT.replace("allele Dew", "allele Tin")
                        + """
                        caution skin
                          when Tin
                          words Flakes.
                        caution skin
                          when dew:Tin
                          words Flakes.
                        """;
        assertThat(faults(text))
                .extracting(Fault::found, Fault::expected)
                .contains(tuple("'Tin', an allele of several loci", "one of tin:Tin, dew:Tin"));
        assertThat(faults(text))
                .noneSatisfy(fault -> assertThat(fault.found()).contains("dew:Tin"));
    }

    @Test
    void what_hangs_on_a_faulty_locus_is_not_called_faulty_too() {
        var text = InventedSpecies.TEXT.replace("mode      dominant", "mode      domnant");
        assertThat(faults(text))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo("unknown mode 'domnant'"));
    }

    @Test
    void an_empty_text_lacks_its_head() {
        assertThat(faults(""))
                .extracting(Fault::found)
                .containsExactly(
                        "no 'species'", "no 'common'", "no 'latin'", "no 'sexes'", "no 'clutch'");
    }

    private static List<Fault> faults(String text) {
        return switch (CatalogueText.read("slip.species", text)) {
            case Result.Faulty(var faults) -> faults;
            case Result.Loaded _ -> List.of();
        };
    }

    private static Tuple at(int line, String found) {
        return tuple(line, found);
    }
}
