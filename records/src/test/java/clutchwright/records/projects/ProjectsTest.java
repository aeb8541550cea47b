package clutchwright.records.projects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.Notebook;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.journal.Journal;
import clutchwright.records.journal.Undo;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProjectsTest {

    private static final Project.Purchase CLOWN = new Project.Purchase("Clown", Sex.MALE, 250);

    @TempDir Path folder;
    private Notebook notebook;

    @BeforeEach
    void open() {
        notebook = new Notebook(folder);
    }

    @AfterEach
    void close() {
        notebook.close();
    }

    @Test
    void a_project_is_added_changed_and_removed_and_each_is_taken_back() {
        var added = add(project("Four", "Clown Piebald")).theSaved();
        assertThat(added.purchases()).containsExactly(CLOWN);
        assertThat(added.means()).isEqualTo(Project.Means.USUAL);

        var changed =
                new Project(
                        added.id(),
                        added.version(),
                        "Five",
                        added.species(),
                        added.goal(),
                        new Project.Telling(Project.Told.LABORATORY, "Clown", 45),
                        new Project.Means(5, 7, 0.85, 2, 4, 0.8, 12),
                        40,
                        1,
                        Project.State.DONE,
                        "done",
                        List.of());
        var saved = update(changed).theSaved();
        assertThat(saved.name()).isEqualTo("Five");
        assertThat(saved.purchases()).isEmpty();
        assertThat(saved.means().femaleSeasons()).isEqualTo(4);
        assertThat(update(changed)).isInstanceOf(Edit.Stale.class);

        notebook.write(tx -> new Projects(tx).remove(saved.id(), saved.version())).theSaved();
        assertThat(all()).isEmpty();
        undoLast();
        assertThat(all()).extracting(Project::name).containsExactly("Five");
    }

    @Test
    void a_name_is_given_once_and_neither_it_nor_the_goal_is_blank() {
        add(project("Four", "Clown")).theSaved();

        assertThat(add(project("FOUR", "Piebald")))
                .isEqualTo(Edit.refused(new Problem.NameTaken(Field.PROJECT, "FOUR")));
        assertThat(add(project(" ", "")))
                .isEqualTo(
                        new Edit.Refused<Project>(
                                List.of(
                                        new Problem.Blank(Field.PROJECT),
                                        new Problem.Blank(Field.GENE_LINE))));
    }

    @Test
    void the_database_takes_no_project_without_sense() {
        var wrong =
                new Project(
                        new ProjectId(0),
                        1,
                        "Odd",
                        Notebook.ROYAL,
                        "Clown",
                        Project.Telling.BY_EYE,
                        new Project.Means(3, 6, 1.5, 2, 3, 0.9, 15),
                        0,
                        0,
                        Project.State.OPEN,
                        "",
                        List.of());

        assertThatThrownBy(() -> add(wrong)).isInstanceOf(RuntimeException.class);
        assertThat(all()).isEmpty();
    }

    private static Project project(String name, String goal) {
        return new Project(
                new ProjectId(0),
                1,
                name,
                Notebook.ROYAL,
                goal,
                Project.Telling.BY_EYE,
                Project.Means.USUAL,
                0,
                0,
                Project.State.OPEN,
                "",
                List.of(CLOWN));
    }

    private Edit<Project> add(Project project) {
        return notebook.write(tx -> new Projects(tx).add(project));
    }

    private Edit<Project> update(Project project) {
        return notebook.write(tx -> new Projects(tx).update(project));
    }

    private List<Project> all() {
        return notebook.list(tx -> new Projects(tx).all());
    }

    private void undoLast() {
        var last = notebook.list(tx -> new Journal(tx).latest(1)).getFirst();
        Undo undone = notebook.write(tx -> new Journal(tx).undo(last.id()));
        assertThat(undone).isInstanceOf(Undo.Undone.class);
    }
}
