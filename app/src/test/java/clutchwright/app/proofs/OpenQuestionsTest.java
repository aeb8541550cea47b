package clutchwright.app.proofs;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.app.holding.PackageInHand;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Which questions a house has, in which order, and with whom this season may settle them.
class OpenQuestionsTest {

    private static final LocalDate TODAY = LocalDate.of(2025, 11, 1);

    @TempDir Path folder;

    @Test
    void what_this_season_settles_most_of_comes_first() throws IOException {
        var questions =
                questions(
                        """
                        tag,sex,hatched,stated,shows,status
                        Ada,female,2019,66% het Clown,Normal,kept
                        Bea,female,2019,66% het Piebald,Normal,kept
                        Bo,male,2018,Clown,Clown,kept
                        Het,male,2018,het Piebald,Normal,kept
                        """);

        assertThat(questions).containsExactly("Ada Clown Bo", "Bea Piebald Het");
    }

    @Test
    void what_is_proven_sold_or_to_be_seen_is_no_question() throws IOException {
        var questions =
                questions(
                        """
                        tag,sex,hatched,stated,shows,status
                        Ada,female,2019,het Clown,Normal,kept
                        Bea,female,2019,66% het Clown,Normal,sold
                        Cleo,female,2019,,,kept
                        Dot,female,2019,Pastel,Pastel,kept
                        """);

        assertThat(questions).isEmpty();
    }

    @Test
    void who_is_too_young_or_not_sexed_waits() throws IOException {
        var questions =
                questions(
                        """
                        tag,sex,hatched,stated,shows,status
                        Kim,female,2024-08-01,66% het Clown,Normal,hold back
                        Uma,,2019,66% het Clown,Normal,kept
                        Bo,male,2018,Clown,Clown,kept
                        """);

        assertThat(questions).containsExactly("Kim Clown too young", "Uma Clown nobody");
    }

    @Test
    void a_mate_that_is_too_young_is_not_proposed() throws IOException {
        var questions =
                questions(
                        """
                        tag,sex,hatched,stated,shows,status
                        Ada,female,2019,66% het Clown,Normal,kept
                        Bo,male,2025-08-01,Clown,Clown,kept
                        Het,male,2023,het Clown,Normal,kept
                        """);

        assertThat(questions).containsExactly("Ada Clown Het");
    }

    /// The animal, the gene, and the best mate.
    private List<String> questions(String animals) throws IOException {
        var file = folder.resolve("animals.csv");
        Files.writeString(file, animals);
        var read =
                PackageInHand.read(
                                file,
                                "python-regius",
                                said -> assertThat(said).startsWith("note: "))
                        .orElseThrow();
        var records = read.species().get("python-regius");
        var inference =
                PedigreeInference.of(
                        records.records(), Assumptions.STANDARD.withAcquiredForLook(0.5));
        var open = new OpenQuestions(inference, read.collection().animals().values(), TODAY);
        var found = open.estimated().stream().map(open::inFull).toList();
        return found.stream()
                .map(
                        question ->
                                question.animal().tag()
                                        + " "
                                        + question.allele()
                                        + " "
                                        + question.best()
                                                .map(mating -> read.tag(mating.mate()))
                                                .orElse(
                                                        question.tooYoung()
                                                                ? "too young"
                                                                : "nobody"))
                .toList();
    }
}
