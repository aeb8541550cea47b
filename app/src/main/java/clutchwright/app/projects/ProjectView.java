package clutchwright.app.projects;

import clutchwright.app.parts.Markup;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.List;
import java.util.Optional;

/// A project and the routes to its goal.
///
/// @param means what it may use, as sentences
/// @param refused why no route leads there, or none is needed; blank otherwise
/// @param old whether something was written down since the search
/// @param routes to choose from; none where nobody has looked yet
/// @param shown the one that is laid out
public record ProjectView(
        long id,
        long version,
        String name,
        String goal,
        boolean done,
        List<String> means,
        String notesOfKeeper,
        boolean searched,
        boolean old,
        String refused,
        List<Choice> routes,
        Optional<Shown> shown,
        String how,
        List<String> cautions,
        List<String> notes)
        implements View {

    public ProjectView {
        means = List.copyOf(means);
        routes = List.copyOf(routes);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    public record Choice(int number, String words, boolean current) {}

    /// @param lead what it takes, as a sentence
    /// @param buys what is to be bought for it; blank if nothing
    public record Shown(
            int number,
            String lead,
            String buys,
            Markup tree,
            List<Step> steps,
            Markup chances,
            List<Season> seasons) {

        public Shown {
            steps = List.copyOf(steps);
            seasons = List.copyOf(seasons);
        }
    }

    /// @param inbreeding of the young, as a sentence; blank where there is none
    /// @param predict the address of its prediction; blank where an animal is still to hatch
    public record Step(
            String anchor,
            int year,
            List<Parent> dams,
            List<Parent> sires,
            String clutches,
            List<Keep> keep,
            String inbreeding,
            boolean close,
            String predict,
            List<String> why) {

        public Step {
            dams = List.copyOf(dams);
            sires = List.copyOf(sires);
            keep = List.copyOf(keep);
            why = List.copyOf(why);
        }
    }

    /// @param path blank where it is still to hatch, or to be bought
    public record Parent(String name, String path, Markup genes) {}

    /// @param goal whether this is what the route is for
    public record Keep(
            String name,
            boolean goal,
            String count,
            String look,
            Markup carries,
            Markup strands,
            String perHatchling) {}

    public record Season(int year, String chance) {}

    @Override
    public String template() {
        return "projects/project.jte";
    }

    @Override
    public String title() {
        return name;
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.PROJECTS);
    }
}
