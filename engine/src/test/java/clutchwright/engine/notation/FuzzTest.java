package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.NamedCombination;
import clutchwright.engine.catalogue.Trait;
import clutchwright.engine.genetics.Sex;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// Whatever is typed, pasted or dropped into a gene line, the answer is a reading.
class FuzzTest {

    private static final List<String> STATUS_WORDS =
            List.of(
                    "het",
                    "66%",
                    "50",
                    "%",
                    "poss",
                    "ph",
                    "maybe",
                    "?",
                    "(?)",
                    "super",
                    "visual",
                    "double",
                    "DH",
                    "TH",
                    "or",
                    "and",
                    "x",
                    "×",
                    "neg",
                    "tested",
                    "proven",
                    "1.0",
                    "0.1",
                    "0.0.1",
                    "male",
                    "F",
                    "(male maker)",
                    "FM",
                    "normal",
                    "wild type",
                    "line",
                    "(",
                    ")",
                    "((",
                    ",",
                    "/",
                    "-",
                    " - ",
                    "+",
                    "&",
                    "_",
                    "\"",
                    "~",
                    "2/3",
                    "50/50",
                    "0%",
                    "101%",
                    "99999999999999999999%",
                    "1/0",
                    "12.5%",
                    "1.2.3.4",
                    "2021",
                    "(hatched 2021, from het clown x het clown)",
                    "F2",
                    "CBB",
                    "for",
                    ".",
                    "…");

    @ParameterizedTest
    @MethodSource("clutchwright.engine.notation.RoundTripTest#species")
    void names_and_status_words_in_any_order_are_read(GeneLine line) {
        long seed = Seed.of(FuzzTest.class);
        var random = new SplittableRandom(seed);
        var words = new ArrayList<>(names(line));
        for (int i = 0; i < 3_000; i++) {
            var text = new StringBuilder();
            int length = random.nextInt(1, 14);
            for (int word = 0; word < length; word++) {
                boolean name = random.nextBoolean();
                text.append(any(name ? words : STATUS_WORDS, random))
                        .append(any(List.of(" ", " ", " ", "", ", ", "-"), random));
            }
            isSound(line, text.toString(), seed);
        }
    }

    @Test
    void any_characters_are_read() {
        long seed = Seed.of(FuzzTest.class);
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            var text = new StringBuilder();
            int length = random.nextInt(60);
            for (int letter = 0; letter < length; letter++) {
                int code =
                        switch (random.nextInt(4)) {
                            case 0 -> random.nextInt(0x80);
                            case 1 -> random.nextInt(0x3000);
                            case 2 -> random.nextInt(0x1f300, 0x1faff);
                            default -> random.nextInt(0x110000);
                        };
                // Halves of surrogate pairs among them, as broken files have them.
                text.append(random.nextInt(30) == 0 ? "\ud83d" : Character.toString(code));
            }
            isSound(ShippedLines.ROYAL, text.toString(), seed);
        }
    }

    @Test
    void known_lines_with_slips_are_read() {
        long seed = Seed.of(FuzzTest.class);
        var random = new SplittableRandom(seed);
        var lines = TradeLinesTest.lines().map(arguments -> (String) arguments.get()[0]).toList();
        for (int i = 0; i < 2_000; i++) {
            var text = new StringBuilder(any(lines, random));
            for (int slip = 0; slip < 3 && !text.isEmpty(); slip++) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, (char) random.nextInt(0x20, 0x7f));
                    default -> text.setCharAt(at, text.charAt(random.nextInt(text.length())));
                }
            }
            isSound(ShippedLines.ROYAL, text.toString(), seed);
        }
    }

    @ParameterizedTest
    @MethodSource("longest")
    void the_longest_lines_are_read(String text) {
        isSound(ShippedLines.ROYAL, text, 0);
    }

    static Stream<String> longest() {
        return Stream.of(
                        "(",
                        "(a",
                        "((clown ",
                        "a",
                        "pastel",
                        "pastel ",
                        "mojave or ",
                        "BEL ",
                        "qwe ",
                        "het ",
                        "66% ",
                        "? ",
                        "maybe clown ",
                        "\"",
                        "x ",
                        "clown x ",
                        "1",
                        "1.0 ",
                        "neg clown/",
                        "😀",
                        "\u0000",
                        "\ud83d",
                        "axanthic line ",
                        "dessert gost ",
                        "superpastelenchihetpie",
                        "(from het clown x het pied) ",
                        "Snow het ",
                        "mojave/lesser or ",
                        "maybe albino or candy/",
                        "1/",
                        "é",
                        "PastelX")
                .map(piece -> piece.repeat(GeneLine.LONGEST_LINE / piece.length()));
    }

    @Test
    void a_line_that_is_too_long_is_said_to_be_so() {
        var reading = ShippedLines.ROYAL.read("p".repeat(GeneLine.LONGEST_LINE + 1));

        assertThat(Shorthand.of(reading)).startsWith("TOO_LONG '' at 2000");
    }

    private static void isSound(GeneLine line, String text, long seed) {
        var context = "seed %d: %s".formatted(seed, text);
        switch (line.read(text)) {
            case Reading.Understood(var genes, var parts, var _) -> {
                var written = line.write(genes);
                // The house spelling may be longer than what was typed, and then too long.
                if (written.length() <= GeneLine.LONGEST_LINE) {
                    assertThat(Shorthand.of(line.read(written)))
                            .as("%s, written as %s", context, written)
                            .isEqualTo(Shorthand.of(genes));
                }
                assertThat(line.asParent(genes, Sex.MALE).parent().loci().keySet())
                        .as(context)
                        .containsExactlyInAnyOrderElementsOf(
                                genes.statements().stream()
                                        .map(Genes.Statement::locus)
                                        .distinct()
                                        .toList());
                assertThat(parts).as(context).allMatch(part -> part.end() <= text.length());
            }
            case Reading.Unclear(var faults, var _) -> {
                assertThat(faults).as(context).isNotEmpty();
                assertThat(faults)
                        .as(context)
                        .allMatch(
                                fault ->
                                        text.length() > GeneLine.LONGEST_LINE
                                                || text.substring(fault.start(), fault.end())
                                                        .equals(fault.found()));
            }
        }
        assertThat(line.readPairing(text)).as(context).isNotNull();
        assertThat(line.complete(text, text.length() / 2, 5))
                .as(context)
                .hasSizeLessThanOrEqualTo(5);
    }

    private static List<String> names(GeneLine line) {
        var species = line.catalogue().species();
        var names = new ArrayList<String>();
        for (LocusEntry entry : species.loci()) {
            for (Trait trait : entry.traits()) {
                names.add(trait.name());
                names.addAll(trait.synonyms());
            }
            entry.forms().forEach(form -> names.add(form.phenotype().name()));
        }
        species.combinations().stream().map(NamedCombination::name).forEach(names::add);
        species.remarks().forEach(remark -> names.add(remark.name()));
        return names;
    }

    private static <T> T any(List<T> choices, SplittableRandom random) {
        return choices.get(random.nextInt(choices.size()));
    }
}
