package clutchwright.records.projects;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.List;
import java.util.Optional;

/// What a house breeds towards.
public final class Projects {

    private final Transaction tx;

    public Projects(Transaction tx) {
        this.tx = tx;
    }

    /// Its id and version do not count.
    public Edit<Project> add(Project project) {
        return problems(project, 0)
                .<Project>refusal()
                .orElseGet(
                        () -> {
                            var id = tx.insert("project", values(project));
                            project.purchases().forEach(one -> insert(id, one));
                            return new Edit.Saved<>(theProject(new ProjectId(id)));
                        });
    }

    /// Changes a project, if it still is of the version that was edited.
    public Edit<Project> update(Project changed) {
        var current = theProject(changed.id());
        return problems(changed, changed.id().value())
                .<Project>refusal()
                .orElseGet(() -> rewrite(changed, current));
    }

    private Edit<Project> rewrite(Project changed, Project current) {
        var id = changed.id().value();
        if (!tx.update("project", id, changed.version(), values(changed))) {
            return new Edit.Stale<>(current);
        }
        if (!changed.purchases().equals(current.purchases())) {
            tx.deleteWhere("purchase", "project", id);
            changed.purchases().forEach(one -> insert(id, one));
        }
        return new Edit.Saved<>(theProject(changed.id()));
    }

    /// @return the project that was removed
    public Edit<Project> remove(ProjectId id, long version) {
        var current = find(id);
        if (current.isEmpty()) {
            return Edit.refused(new Problem.Missing(Field.PROJECT, id.value()));
        }
        if (current.get().version() != version) {
            return new Edit.Stale<>(current.get());
        }
        tx.deleteWhere("purchase", "project", id.value());
        tx.delete("project", id.value());
        return new Edit.Saved<>(current.get());
    }

    public Optional<Project> find(ProjectId id) {
        return tx.first(this::read, "select * from project where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public Project theProject(ProjectId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no project " + id));
    }

    /// Those that are under way first, by name.
    public List<Project> all() {
        return tx.list(this::read, "select * from project order by state desc, name_key");
    }

    private Findings problems(Project project, long id) {
        return new Findings(tx.today())
                .notBlank(Field.PROJECT, project.name())
                .notBlank(Field.GENE_LINE, project.goal())
                .addIf(
                        tx.number(
                                        "select count(*) from project"
                                                + " where name_key = ? and id <> ?",
                                        Words.key(project.name()),
                                        id)
                                > 0,
                        new Problem.NameTaken(Field.PROJECT, project.name()));
    }

    private void insert(long project, Project.Purchase purchase) {
        tx.insert(
                "purchase",
                Values.of()
                        .set("project", project)
                        .set("genes", purchase.genes())
                        .set("sex", purchase.sex())
                        .set("amount", purchase.amount()));
    }

    private static Values values(Project project) {
        var means = project.means();
        return Values.of()
                .set("name", project.name())
                .set("name_key", Words.key(project.name()))
                .set("species", project.species())
                .set("goal", project.goal())
                .set("told", project.telling().told())
                .set("tested", project.telling().tested())
                .set("test_price", project.telling().price())
                .set("clutches", means.clutches())
                .set("eggs", means.eggs())
                .set("hatch_rate", means.hatchRate())
                .set("male_seasons", means.maleSeasons())
                .set("female_seasons", means.femaleSeasons())
                .set("confidence", means.confidence())
                .set("seasons", means.seasons())
                .set("clutch_worth", project.clutchWorth())
                .set("least_clutches", project.leastClutches())
                .set("state", project.state())
                .set("notes", project.notes());
    }

    private Project read(Row row) {
        var id = row.number("id");
        return new Project(
                new ProjectId(id),
                row.number("version"),
                row.text("name"),
                row.text("species"),
                row.text("goal"),
                new Project.Telling(
                        Project.Told.valueOf(row.text("told")),
                        row.text("tested"),
                        row.real("test_price")),
                new Project.Means(
                        whole(row, "clutches"),
                        whole(row, "eggs"),
                        row.real("hatch_rate"),
                        whole(row, "male_seasons"),
                        whole(row, "female_seasons"),
                        row.real("confidence"),
                        whole(row, "seasons")),
                row.real("clutch_worth"),
                whole(row, "least_clutches"),
                Project.State.valueOf(row.text("state")),
                row.text("notes"),
                tx.list(
                        one ->
                                new Project.Purchase(
                                        one.text("genes"),
                                        Sex.valueOf(one.text("sex")),
                                        one.real("amount")),
                        "select * from purchase where project = ? order by id",
                        id));
    }

    private static int whole(Row row, String column) {
        return Math.toIntExact(row.number(column));
    }
}
