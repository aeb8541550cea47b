package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Strands;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Hatched;
import clutchwright.records.husbandry.Happening.Weighing;
import clutchwright.records.statements.Latest;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/// A hatchling that is on record.
///
/// @param egg the number of the egg it came out of
public record HatchlingLine(
        int egg,
        boolean twin,
        Animal animal,
        GeneLineMarkup genes,
        Strands strands,
        Optional<Weighing> weight,
        Look look,
        Judgement judgement) {

    /// What was seen of it.
    public sealed interface Look {

        /// Nobody has looked yet.
        record Unseen() implements Look {}

        /// What was seen leaves more than one group open.
        record InDoubt() implements Look {}

        /// @param shows every visible form
        record Seen(Set<Phenotype> shows) implements Look {

            public Seen {
                shows = Set.copyOf(shows);
            }
        }
    }

    static HatchlingLine of(
            Holding holding,
            Optional<Expected> expected,
            EggLine egg,
            Animal animal,
            Latest said,
            Optional<Weighing> weight) {
        var look = look(holding.lines(animal.species()), said);
        var judgement =
                look instanceof Look.Seen(var shows) && expected.isPresent()
                        ? Judgement.of(expected.get(), shows, animal.sex())
                        : new Judgement.Unjudged();
        return new HatchlingLine(
                egg.egg().number(),
                egg.hatchlings().size() > 1,
                animal,
                holding.line(animal.id()),
                Strands.of(holding.knowledge().strands(animal.id())),
                weight,
                look,
                judgement);
    }

    public String link() {
        return "/collection/" + animal.id();
    }

    public String hatchedIn(Formats formats) {
        return animal.hatched() instanceof Hatched.OnDay(var day)
                ? formats.date(day)
                : animal.hatched().iso();
    }

    public String sexInWords() {
        return animal.sex()
                .map(
                        sex ->
                                switch (sex) {
                                    case FEMALE -> "female";
                                    case MALE -> "male";
                                })
                .orElse("not sexed");
    }

    /// Why it is a surprise; blank where it is none.
    public String surprise() {
        return JudgementWords.brief(judgement);
    }

    private static Look look(GeneLine lines, Latest said) {
        if (said.sighting().isEmpty()) {
            return new Look.Unseen();
        }
        var sighting = said.sighting().get();
        var text = sighting.genes().canonical();
        var reading = lines.read(text.isBlank() ? sighting.genes().written() : text);
        return sighting.doubted() || !(reading instanceof Reading.Understood(var genes, _, _))
                ? new Look.InDoubt()
                : shown(lines.catalogue().model(), genes);
    }

    static Look shown(GeneticModel model, Genes genes) {
        var shows = new HashSet<Phenotype>();
        for (var statement : genes.statements()) {
            if (statement instanceof Genes.Statement.Shows shown) {
                var forms = new HashSet<Phenotype>();
                shown.pairs()
                        .forEach(
                                pair -> forms.add(model.theLocus(shown.locus()).phenotypeOf(pair)));
                if (shown.doubtful() || forms.size() != 1) {
                    return new Look.InDoubt();
                }
                shows.addAll(forms);
            }
        }
        return new Look.Seen(shows);
    }
}
