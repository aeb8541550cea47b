package clutchwright.app.season.plan;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// The plan of a season.
///
/// @param ready whether there is anything that a plan could be chosen by: prices or a project
/// @param plans all of the season, the latest first
/// @param stale what has changed since it was worked out; blank if nothing has
/// @param notReady animals that are left out, as sentences
/// @param notes what else is left out, and why
public record PlanView(
        int season,
        List<Integer> seasons,
        boolean ready,
        List<Link> plans,
        Optional<Shown> shown,
        Optional<Matrix> matrix,
        Optional<Outlook> outlook,
        String stale,
        List<String> notReady,
        List<String> notes)
        implements View {

    public PlanView {
        seasons = List.copyOf(seasons);
        plans = List.copyOf(plans);
        notReady = List.copyOf(notReady);
        notes = List.copyOf(notes);
    }

    public record Link(long id, String name, String worth, boolean current) {}

    /// @param bound how near to the best it is, as a sentence
    /// @param waiting pairs that are not in the season yet
    public record Shown(
            long id,
            String name,
            String madeOn,
            String worth,
            String bound,
            int waiting,
            List<Row> rows) {

        public Shown {
            rows = List.copyOf(rows);
        }
    }

    /// A female of the plan.
    ///
    /// @param sire empty where she is left without a male
    /// @param laying when she lays, and how much is expected
    /// @param words pinned, in the season, overruled
    /// @param others her next best males
    public record Row(
            Animal dam,
            Optional<Animal> sire,
            String laying,
            String hatchlings,
            String worth,
            String projects,
            String kinship,
            List<String> words,
            String path,
            List<Other> others) {

        public Row {
            words = List.copyOf(words);
            others = List.copyOf(others);
        }
    }

    public record Animal(String tag, String path, Markup line) {}

    public record Other(String tag, String worth, String path) {}

    /// Females by males.
    ///
    /// @param hidden animals that are not ready, and are not shown
    public record Matrix(List<Animal> males, List<Line> lines, int hidden) {

        public Matrix {
            males = List.copyOf(males);
            lines = List.copyOf(lines);
        }
    }

    public record Line(Animal female, List<Cell> cells) {

        public Line {
            cells = List.copyOf(cells);
        }
    }

    /// @param look its style: how much ink, and whether it is chosen or left out
    /// @param words what is read out
    public record Cell(String text, String look, String words, String path) {}

    /// @param projects what each is to keep, and the chance of it
    public record Outlook(
            String worth,
            String hatchlings,
            String basis,
            List<Kind> kinds,
            List<Kind> unpriced,
            List<Aim> projects,
            Markup boxes,
            Markup places,
            List<Week> weeks) {

        public Outlook {
            kinds = List.copyOf(kinds);
            unpriced = List.copyOf(unpriced);
            projects = List.copyOf(projects);
            weeks = List.copyOf(weeks);
        }
    }

    public record Kind(String name, String expected, String range, String price) {}

    public record Aim(String project, String path, String keep, String chance, String from) {}

    public record Week(String day, String boxes, String places) {}

    @Override
    public String template() {
        return "season/plan/plan.jte";
    }

    @Override
    public String title() {
        return "Plan for " + season;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.SEASON);
    }
}
