package clutchwright.app.parts;

import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.inference.Held;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;

/// A gene line in type: what shows stands upright and strong, what is surely carried in italics,
/// what may be carried in italics with its chance over a hairline of that length.
///
/// @param shows names of the visible forms; empty for an animal that shows nothing
/// @param carries each with a chance above zero
public record GeneLineMarkup(List<String> shows, List<Carried> carries) {

    public GeneLineMarkup {
        shows = List.copyOf(shows);
        carries = List.copyOf(carries);
    }

    public record Carried(String allele, Fraction chance) {}

    public static GeneLineMarkup of(Outcome outcome) {
        return new GeneLineMarkup(
                outcome.shows().stream().map(Phenotype::name).toList(),
                outcome.carries().stream()
                        .map(held -> new Carried(held.allele().name(), held.chance()))
                        .toList());
    }

    /// What a line says, whether or not it can be true.
    public static GeneLineMarkup of(Genes genes) {
        var shows = new ArrayList<String>();
        var carries = new ArrayList<Carried>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Genes.Statement.Shows shown ->
                        shows.add(shown.doubtful() ? shown.name() + " (?)" : shown.name());
                case Genes.Statement.Carries(var allele, var chance) ->
                        carries.add(new Carried(allele.name(), chance));
            }
        }
        return new GeneLineMarkup(shows, carries);
    }

    /// What is held of an animal: forms that it surely shows, and alleles that its looks leave
    // open.
    public static GeneLineMarkup of(GeneticModel model, Held held) {
        var shows = new ArrayList<String>();
        var carries = new ArrayList<Carried>();
        held.loci()
                .forEach(
                        (locus, at) -> {
                            var map = model.theLocus(locus);
                            var look = at.genotypes().map(map::phenotypeOf).theCertain();
                            look.filter(Phenotype::visible).ifPresent(v -> shows.add(v.name()));
                            for (var allele : map.locus().alleles()) {
                                var chance = held.chanceOfCarrying(allele);
                                var revealed =
                                        look.filter(Phenotype::visible)
                                                .filter(v -> map.reveals(v, allele));
                                if (isOpen(allele, chance) && revealed.isEmpty()) {
                                    carries.add(new Carried(allele.name(), chance));
                                }
                            }
                        });
        return new GeneLineMarkup(shows, carries);
    }

    private static boolean isOpen(Allele allele, Fraction chance) {
        return !allele.isWild() && !chance.isNone();
    }

    /// The whole line, hets with the word `het`.
    public Markup line() {
        var line = new Markup();
        line.raw("<span class=\"genes\">");
        if (shows.isEmpty()) {
            line.raw("<strong>%s</strong>", Phenotype.NORMAL);
        } else {
            line.raw("<strong>%s</strong>", String.join(" ", shows));
        }
        for (var carried : carries) {
            line.raw(" ").add(carried(carried, "het "));
        }
        return line.raw("</span>");
    }

    /// Only what is carried, without the word `het`.
    public Markup carried() {
        var line = new Markup();
        for (int i = 0; i < carries.size(); i++) {
            line.raw(i == 0 ? "" : ", ").add(carried(carries.get(i), ""));
        }
        return line;
    }

    private static Markup carried(Carried carried, String before) {
        if (carried.chance().isWhole()) {
            return new Markup().raw("<i>%s%s</i>", before, carried.allele());
        }
        return new Markup()
                .raw(
                        "<i class=\"may\">%s%s <small>%s</small>",
                        before, carried.allele(), Chances.fraction(carried.chance()))
                .add(ChanceLine.of(carried.chance().value()))
                .raw("</i>");
    }

    /// The same in plain words, for titles and labels.
    public String inWords() {
        var words = new StringBuilder(shows.isEmpty() ? Phenotype.NORMAL : String.join(" ", shows));
        for (var carried : carries) {
            words.append(
                    carried.chance().isWhole() ? " " : " " + Chances.het(carried.chance()) + " ");
            words.append("het ").append(carried.allele());
        }
        return words.toString();
    }
}
