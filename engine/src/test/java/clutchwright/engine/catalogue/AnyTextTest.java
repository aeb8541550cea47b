package clutchwright.engine.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import clutchwright.engine.catalogue.CatalogueText.Result;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/// Whatever stands in a file, reading it ends in a species or in a list of faults.
class AnyTextTest {

    private static final long SEED = 20_260_131L;
    private static final int RANDOM_TEXTS = 800;
    private static final int MUTATED_FILES = 120;

    private static final List<String> WORDS =
            List.of(
                    "locus",
                    "allele",
                    "form",
                    "caution",
                    "interaction",
                    "linkage",
                    "combination",
                    "remark",
                    "name",
                    "mode",
                    "also",
                    "masks",
                    "viability",
                    "when",
                    "is",
                    "note",
                    "inherits",
                    "title",
                    "words",
                    "standing",
                    "source",
                    "0",
                    "1/2",
                    "-1/3",
                    "1/0",
                    "+",
                    "/",
                    ";",
                    "Chalk",
                    "Tin",
                    "x2",
                    "chalk:",
                    "#",
                    "\\#",
                    "\t",
                    "  ",
                    "    ",
                    "\n",
                    "\n  ",
                    "\n    ",
                    "\r",
                    "\u2028",
                    "\u0000",
                    "\ud83d",
                    "everything",
                    "Normal",
                    "recessive",
                    "autosomal",
                    "Chalk/Chalk",
                    "+/+",
                    "Super",
                    "fog",
                    "dew");

    @Test
    void random_bytes_and_random_words() {
        var random = new Random(SEED);
        for (int i = 0; i < RANDOM_TEXTS; i++) {
            var bytes = new byte[random.nextInt(400)];
            random.nextBytes(bytes);
            read(new String(bytes, StandardCharsets.ISO_8859_1), i);
            read(new String(bytes, StandardCharsets.UTF_16), i);
            read(words(random), i);
            read(InventedSpecies.TEXT + words(random), i);
        }
    }

    @Test
    void shipped_files_with_lines_and_letters_lost_doubled_swapped_or_replaced()
            throws IOException {
        var random = new Random(SEED);
        for (int i = 0; i < MUTATED_FILES; i++) {
            var ids = Catalogue.shippedSpecies();
            var text = ShippedSpeciesTest.text(ids.get(random.nextInt(ids.size())));
            read(mutated(text, random), i);
        }
        int loaded = 0;
        for (int i = 0; i < MUTATED_FILES * 4; i++) {
            loaded += read(mutated(InventedSpecies.TEXT, random), i) ? 1 : 0;
        }
        assertThat(loaded).as("of both kinds").isBetween(1, MUTATED_FILES * 4 - 1);
    }

    @Test
    void own_entries_that_take_a_shipped_locus_apart() {
        var random = new Random(SEED);
        var species = Catalogue.shipped("python-regius").species();
        for (int i = 0; i < MUTATED_FILES; i++) {
            var entry = species.loci().get(random.nextInt(species.loci().size()));
            var overlay = mutated(CatalogueText.write(entry), random);
            try {
                requireAnswer(CatalogueText.readOver(species, "own", overlay));
            } catch (RuntimeException | AssertionError e) {
                fail("seed " + SEED + ", text " + i + ":\n" + overlay, e);
            }
        }
    }

    @Test
    void a_text_without_end_of_steps() {
        var deep = new StringBuilder();
        for (int i = 0; i < 3_000; i++) {
            deep.append("  ".repeat(i)).append("locus a\n");
        }
        read(deep.toString(), 0);
    }

    /// Whether the text loads.
    private static boolean read(String text, int number) {
        try {
            return requireAnswer(CatalogueText.read("any", text));
        } catch (RuntimeException | AssertionError e) {
            return fail("seed " + SEED + ", text " + number + ":\n" + text, e);
        }
    }

    /// What loads must also be usable: its names are found, its loci written and read again.
    private static boolean requireAnswer(Result result) {
        return switch (result) {
            case Result.Loaded(var species) -> {
                var catalogue = Catalogue.of(species);
                var written = new StringBuilder();
                species.loci().forEach(entry -> written.append(CatalogueText.write(entry)));
                assertThat(CatalogueText.readOver(species, "again", written.toString()))
                        .as(written.toString())
                        .isInstanceOf(Result.Loaded.class);
                catalogue.nearest("chlak", 5);
                yield true;
            }
            case Result.Faulty(var faults) -> {
                assertThat(faults).isNotEmpty();
                yield false;
            }
        };
    }

    private static String words(Random random) {
        var text = new StringBuilder();
        for (int i = random.nextInt(60); i > 0; i--) {
            text.append(WORDS.get(random.nextInt(WORDS.size())));
            text.append(random.nextInt(3) == 0 ? "" : " ");
        }
        return text.toString();
    }

    private static String mutated(String text, Random random) {
        var lines = new ArrayList<>(text.lines().toList());
        for (int i = 1 + random.nextInt(4); i > 0 && lines.size() > 2; i--) {
            int at = random.nextInt(lines.size());
            var line = lines.get(at);
            int other = random.nextInt(lines.size());
            int letter = line.isEmpty() ? 0 : random.nextInt(line.length());
            switch (random.nextInt(6)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, lines.get(other));
                case 2 -> lines.set(at, lines.set(other, line));
                case 3 -> lines.set(at, line.substring(0, letter) + line.substring(letter / 2));
                case 4 -> lines.set(at, " ".repeat(random.nextInt(5)) + line.strip());
                default -> {
                    var word = WORDS.get(random.nextInt(WORDS.size()));
                    lines.set(at, line.substring(0, letter) + word + line.substring(letter));
                }
            }
        }
        return String.join("\n", lines);
    }
}
