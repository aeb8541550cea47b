package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine.Stated;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// What a line states of a parent, locus by locus. `66% het` is +/X at 2/3 and +/+ at 1/3, nothing
/// else (the trade's meaning of possible het, common practice, no source).
class ParentsTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("dams")
    void a_dam_has_as_her_line_says(String line, String expected) {
        assertThat(of(stated(line, Sex.FEMALE))).isEqualTo(expected);
    }

    /// Mallery & Carrillo 2016: the locus lies on both sex chromosomes, and males are XY.
    @ParameterizedTest(name = "{0}")
    @MethodSource("sires")
    void a_sire_has_it_on_a_chromosome(String line, String expected) {
        assertThat(of(stated(line, Sex.MALE))).isEqualTo(expected);
    }

    @Test
    void a_doubt_without_a_number_is_an_open_question() {
        assertThat(stated("Pastel maybe Enchi", Sex.FEMALE).open())
                .containsExactly(new GeneLine.OpenQuestion("Enchi", List.of("Enchi", "Normal")));
    }

    @Test
    void a_look_of_several_pairs_is_an_open_question() {
        assertThat(stated("8-ball maybe super cinny", Sex.FEMALE).open())
                .containsExactly(
                        new GeneLine.OpenQuestion(
                                "Super Cinnamon or 8-Ball", List.of("Super Cinnamon", "8-Ball")));
    }

    @Test
    void a_settled_line_leaves_no_question() {
        assertThat(stated("Super Pastel Clown 66% het Pied maybe 50% Enchi", Sex.MALE).open())
                .isEmpty();
    }

    static Stream<Arguments> dams() {
        return Table.of(
                """
                Normal =>
                Pastel => pastel: +/Pastel 1/1
                Super Pastel Clown => pastel: Pastel/Pastel 1/1; clown: Clown/Clown 1/1
                het Clown => clown: +/Clown 1/1
                66% het Clown => clown: +/+ 1/3, +/Clown 2/3
                50% Enchi => enchi: +/Enchi 1/2, +/+ 1/2
                maybe Enchi => enchi: +/Enchi 1/2, +/+ 1/2
                Banana => banana: +/Banana 1/1
                Cryptic 50% het Clown => clown: +/Cryptic 1/2, Clown/Cryptic 1/2
                Mojave het Daddy => bel: Daddy/Mojave 1/1
                50% het Albino 50% het Candy => albino: +/Albino 1/2, +/Candy 1/2
                50% het Albino 25% het Candy => albino: +/+ 1/4, +/Albino 1/2, +/Candy 1/4
                het Albino 50% het Candy => albino: +/Albino 1/2, Albino/Candy 1/2
                66% het Albino 66% het Candy => albino: +/+ 1/9, +/Albino 2/9, Albino/Candy 4/9, +/Candy 2/9
                Lesser or Butter => bel: +/Lesser 1/2, +/Butter 1/2
                """);
    }

    static Stream<Arguments> sires() {
        return Table.of(
                """
                Banana => banana: +|Banana 1/2, Banana|+ 1/2
                Banana (male maker) => banana: +|Banana 1/1
                Banana (female maker) => banana: Banana|+ 1/1
                Super Banana => banana: Banana|Banana 1/1
                maybe 50% Banana => banana: +|Banana 1/4, Banana|+ 1/4, +|+ 1/2
                Pastel => pastel: +/Pastel 1/1
                """);
    }

    private static Stated stated(String line, Sex sex) {
        return switch (ShippedLines.ROYAL.read(line)) {
            case Reading.Understood(var genes, var _, var _) ->
                    ShippedLines.ROYAL.asParent(genes, sex);
            case Reading.Unclear(var faults, var _) -> throw new AssertionError(faults.toString());
        };
    }

    private static String of(Stated stated) {
        return stated.parent().loci().keySet().stream()
                .map(locus -> locus + ": " + at(stated, locus))
                .collect(Collectors.joining("; "));
    }

    private static String at(Stated stated, LocusId locus) {
        return stated.parent().loci().get(locus).chances().entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
    }
}
