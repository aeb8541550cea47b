package clutchwright.app.parts;

import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.inference.Held;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.probability.Distribution;
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

    /// Something that is not surely seen.
    ///
    /// @param allele the allele carried, or the form that may show
    /// @param figure the chance as it is written
    public record Carried(String allele, Fraction chance, Place place, String figure) {

        public Carried(String allele, Fraction chance) {
            this(allele, chance, Place.UNSEEN, Chances.fraction(chance));
        }

        /// In the trade's convention, whatever the figure behind it.
        static Carried asTraded(String allele, Fraction chance, Place place) {
            var traded = Chances.asTraded(chance);
            return new Carried(allele, traded, place, Chances.het(traded));
        }

        private boolean mayShow() {
            return place == Place.MAY_SHOW;
        }
    }

    /// How something that is not surely seen is there.
    public enum Place {
        UNSEEN("het "),
        /// It would show: nobody has looked, or it is in doubt what was seen.
        MAY_SHOW("maybe "),
        /// Its locus shows a form that several pairs of alleles give, as a white animal does.
        BEHIND_THE_LOOK("with ");

        private final String before;

        Place(String before) {
            this.before = before;
        }
    }

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

    /// What is held of an animal, in the trade's figures: forms that it surely shows, forms
    /// that it may show where its looks are not settled, and alleles that it carries unseen.
    public static GeneLineMarkup of(GeneticModel model, Held held) {
        var shows = new ArrayList<String>();
        var carries = new ArrayList<Carried>();
        held.loci()
                .forEach(
                        (locus, at) -> {
                            var map = model.theLocus(locus);
                            var looks = at.genotypes().map(map::phenotypeOf);
                            looks.chances()
                                    .forEach(
                                            (look, chance) -> {
                                                if (look.visible()
                                                        && Chances.isAsGoodAsCertain(chance)) {
                                                    shows.add(look.name());
                                                } else if (look.visible()) {
                                                    carries.add(
                                                            Carried.asTraded(
                                                                    look.name(),
                                                                    chance,
                                                                    Place.MAY_SHOW));
                                                }
                                            });
                            var settled =
                                    looks.chances().entrySet().stream()
                                            .filter(entry -> entry.getKey().visible())
                                            .anyMatch(
                                                    entry ->
                                                            Chances.isAsGoodAsCertain(
                                                                    entry.getValue()));
                            var place = settled ? Place.BEHIND_THE_LOOK : Place.UNSEEN;
                            for (var allele : map.locus().alleles()) {
                                var unseen = carriedUnseen(map, at.genotypes(), allele);
                                if (!allele.isWild() && !unseen.isNone()) {
                                    carries.add(Carried.asTraded(allele.name(), unseen, place));
                                }
                            }
                        });
        return new GeneLineMarkup(shows, carries);
    }

    /// The chance that an animal has the allele and does not show it.
    public static Fraction carriedUnseen(
            PhenotypeMap map, Distribution<Genotype> genotypes, Allele allele) {
        return genotypes.chanceThat(
                genotype -> {
                    var look = map.phenotypeOf(genotype);
                    return genotype.carries(allele)
                            && !(look.visible() && map.reveals(look, allele));
                });
    }

    /// The whole line, hets with the word `het`.
    public Markup line() {
        var line = new Markup();
        line.raw("<span class=\"genes\">");
        if (isNormal()) {
            line.raw("<strong>%s</strong>", Phenotype.NORMAL);
        } else if (!shows.isEmpty()) {
            line.raw("<strong>%s</strong>", String.join(" ", shows));
        }
        for (var carried : carries) {
            line.raw(" ").add(carried(carried, carried.place().before));
        }
        return line.raw("</span>");
    }

    /// Nothing shows; where something may show, that is not said.
    private boolean isNormal() {
        return shows.isEmpty() && carries.stream().noneMatch(Carried::mayShow);
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
                        before, carried.allele(), carried.figure())
                .add(ChanceLine.of(carried.chance().value()))
                .raw("</i>");
    }

    /// The same in plain words, for titles and labels.
    public String inWords() {
        var words = new ArrayList<String>();
        if (isNormal()) {
            words.add(Phenotype.NORMAL);
        }
        words.addAll(shows);
        for (var carried : carries) {
            var chance = carried.chance().isWhole() ? "" : Chances.het(carried.chance()) + " ";
            words.add(chance + carried.place().before + carried.allele());
        }
        return String.join(" ", words);
    }
}
