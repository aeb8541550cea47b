package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.notation.GeneLine.Completion;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What a keeper is offered while typing.
class CompletionTest {

    @Test
    void a_name_is_completed_where_it_is_typed() {
        assertThat(complete("Pastel cl", 9)).contains("Pastel Clown");
    }

    @Test
    void a_name_of_two_words_is_completed_from_its_first_word_on() {
        assertThat(complete("Pastel desert gh", 16)).startsWith("Pastel Desert Ghost");
    }

    @Test
    void a_word_within_a_name_leads_to_it() {
        assertThat(complete("ghost", 5)).contains("Desert Ghost");
    }

    @Test
    void the_rest_of_the_word_after_the_caret_is_replaced() {
        assertThat(complete("Clo Pastel", 2)).contains("Clown Pastel");
    }

    @Test
    void status_words_are_offered_too() {
        assertThat(complete("Pastel 66", 9)).contains("Pastel 66% het");
        assertThat(complete("he", 2)).contains("het");
    }

    @Test
    void a_gene_after_het_is_completed() {
        assertThat(complete("het pie", 7)).contains("het Piebald");
    }

    @Test
    void nothing_is_offered_where_nothing_is_begun() {
        assertThat(complete("Pastel ", 7)).isEmpty();
        assertThat(complete("", 0)).isEmpty();
    }

    @Test
    void no_more_are_offered_than_asked_for() {
        assertThat(ShippedLines.ROYAL.complete("s", 1, 4)).hasSize(4);
    }

    private static List<String> complete(String line, int caret) {
        return ShippedLines.ROYAL.complete(line, caret, 10).stream()
                .map(completion -> applied(line, completion))
                .toList();
    }

    private static String applied(String line, Completion completion) {
        return line.substring(0, completion.start())
                + completion.text()
                + line.substring(completion.end());
    }
}
