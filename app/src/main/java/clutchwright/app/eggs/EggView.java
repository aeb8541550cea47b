package clutchwright.app.eggs;

import clutchwright.app.web.Form;
import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.CandlingWords;
import clutchwright.app.wording.Formats;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Fate;
import clutchwright.records.photos.EggPhoto;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// All that is on record of one egg.
///
/// @param photos the oldest first
/// @param form what is typed of it
public record EggView(
        Clutch clutch,
        Couple couple,
        EggLine line,
        Incubation incubation,
        List<EggPhoto> photos,
        Form form)
        implements View {

    public EggView {
        photos = List.copyOf(photos);
    }

    /// @param day of the incubation
    public record Step(LocalDate on, long day, String words) {}

    /// What was seen and done, day by day.
    public List<Step> course(Formats formats) {
        var steps = new ArrayList<Step>();
        steps.add(step(clutch.laid(), "laid"));
        for (var look : line.egg().candlings()) {
            steps.add(step(look.on(), "candled: " + words(look)));
        }
        for (var weight : line.egg().weights()) {
            steps.add(step(weight.on(), formats.weight(weight.grams())));
        }
        switch (line.egg().fate()) {
            case Fate.Incubating(), Fate.Slug() -> {}
            case Fate.Lost(var noticed, var finding) ->
                    steps.add(step(noticed, finding.isEmpty() ? "lost" : "lost: " + finding));
            case Fate.Hatched(var pipped, _) -> steps.add(step(pipped, "hatched"));
        }
        steps.sort(Comparator.comparing(Step::on));
        return steps;
    }

    private static String words(Candling look) {
        return CandlingWords.of(look.finding())
                + (look.notes().isEmpty() ? "" : "; " + look.notes());
    }

    private Step step(LocalDate on, String words) {
        return new Step(on, new Incubation(clutch.laid(), on).day(), words);
    }

    public String clutchPath() {
        return "/eggs/" + clutch.id().value();
    }

    public String path() {
        return clutchPath() + "/egg/" + line.egg().number();
    }

    @Override
    public String template() {
        return "eggs/egg.jte";
    }

    @Override
    public String title() {
        return "Egg %d of clutch %s".formatted(line.egg().number(), clutch.number());
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.EGGS);
    }
}
