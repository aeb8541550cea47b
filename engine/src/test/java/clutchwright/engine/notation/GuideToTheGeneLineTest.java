package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// Every example of the keeper's guide is what the guide says it is.
class GuideToTheGeneLineTest {

    private static final Path GUIDE = Path.of("..", "docs", "guide", "gene-line.md");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    @Test
    void what_can_be_written_is_read_as_the_guide_says() throws IOException {
        var rows = rows("## What you can write", "## What is asked");
        assertThat(rows).hasSizeGreaterThan(25);

        for (var row : rows) {
            assertThat(ShippedLines.ROYAL.read(row.getFirst()))
                    .as(row.getFirst())
                    .isInstanceOfSatisfying(
                            Reading.Understood.class,
                            understood ->
                                    assertThat(ShippedLines.ROYAL.write(understood.genes()))
                                            .as(row.getFirst())
                                            .isEqualTo(row.getLast()));
        }
    }

    @Test
    void what_is_asked_is_unclear_and_the_other_spelling_is_not() throws IOException {
        var rows = rows("## What is asked", "## What is remarked on");
        assertThat(rows).hasSizeGreaterThan(8);

        for (var row : rows) {
            assertThat(ShippedLines.ROYAL.read(row.getFirst()))
                    .as(row.getFirst())
                    .isInstanceOf(Reading.Unclear.class);
            assertThat(ShippedLines.ROYAL.read(row.getLast()))
                    .as(row.getLast())
                    .isInstanceOf(Reading.Understood.class);
        }
    }

    @Test
    void what_is_remarked_on_is_understood_with_a_note() throws IOException {
        var rows = rows("## What is remarked on", "A line may have");
        assertThat(rows).hasSizeGreaterThan(4);

        for (var row : rows) {
            assertThat(Shorthand.notes(ShippedLines.ROYAL.read(row.getFirst())))
                    .as(row.getFirst())
                    .isNotEmpty();
        }
    }

    /// The code in each row of the tables between two lines.
    private static List<List<String>> rows(String from, String to) throws IOException {
        var text = Files.readString(GUIDE);
        return text.substring(text.indexOf(from), text.indexOf(to))
                .lines()
                .filter(row -> row.startsWith("|"))
                .map(row -> code(row).toList())
                .filter(code -> !code.isEmpty())
                .toList();
    }

    private static Stream<String> code(String row) {
        return CODE.matcher(row).results().map((MatchResult found) -> found.group(1));
    }
}
