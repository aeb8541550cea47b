package clutchwright.records.statements;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StatementsTest {

    private static final GeneText NORMAL =
            new GeneText("Normal", "Normal", Notebook.ROYAL, List.of());

    @TempDir Path folder;
    private Notebook notebook;
    private Animal animal;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
        animal = notebook.female("A1");
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void what_is_said_and_what_is_seen_are_kept_apart_and_in_time() {
        var undated = claim(Witness.undated("seller"));
        var later = claim(Witness.on(LocalDate.of(2023, 3, 1), "breeder"));
        var earlier = claim(Witness.on(LocalDate.of(2022, 3, 1), "breeder"));
        var seen =
                notebook.write(
                        tx ->
                                new Statements(tx)
                                        .see(
                                                animal.id(),
                                                NORMAL,
                                                Witness.on(LocalDate.of(2021, 1, 1), "Ada"),
                                                true)
                                        .theSaved());

        assertThat(notebook.list(tx -> new Statements(tx).of(animal.id())))
                .containsExactly(later, earlier, seen, undated);
        Latest latest = notebook.read(tx -> new Statements(tx).latest(animal.id()));
        assertThat(latest.claim()).contains(later);
        assertThat(latest.sighting()).contains(seen);
        var together = notebook.read(tx -> new Statements(tx).latest(List.of(animal.id())));
        assertThat(together).containsEntry(animal.id(), latest);
    }

    @Test
    void the_line_is_kept_as_it_was_written_beside_as_it_was_understood() {
        var claim = claim(Witness.undated("seller"));

        assertThat(claim.genes().written()).isEqualTo("clown het pied");
        assertThat(notebook.list(tx -> new Statements(tx).of(animal.id())).getFirst().genes())
                .isEqualTo(Notebook.clownHetPiebald());
    }

    @Test
    void an_empty_line_says_nothing_and_nothing_is_seen_in_the_future() {
        var empty = new GeneText(" ", "", Notebook.ROYAL, List.of());
        Edit<Statement.Sighting> refused =
                notebook.write(
                        tx ->
                                new Statements(tx)
                                        .see(
                                                animal.id(),
                                                empty,
                                                Witness.on(LocalDate.of(2030, 1, 1), "Ada"),
                                                false));

        assertThat(refused)
                .isEqualTo(
                        new Edit.Refused<>(
                                List.of(
                                        new Problem.Blank(Field.GENE_LINE),
                                        new Problem.InTheFuture(
                                                Field.SAID_OR_SEEN_ON,
                                                LocalDate.of(2030, 1, 1),
                                                Notebook.TODAY))));
    }

    @Test
    void a_statement_edited_by_two_people_is_told_to_the_second() {
        var claim = claim(Witness.undated("seller"));
        var first =
                notebook.write(
                        tx ->
                                new Statements(tx)
                                        .update(claim.with(NORMAL, claim.witness()))
                                        .theSaved());
        Edit<Statement> second =
                notebook.write(
                        tx ->
                                new Statements(tx)
                                        .update(claim.with(claim.genes(), Witness.undated("x"))));

        assertThat(second).isEqualTo(new Edit.Stale<>(first));
    }

    private Statement.Claim claim(Witness witness) {
        return notebook.write(
                tx ->
                        new Statements(tx)
                                .claim(animal.id(), Notebook.clownHetPiebald(), witness)
                                .theSaved());
    }
}
