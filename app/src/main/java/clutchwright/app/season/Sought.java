package clutchwright.app.season;

import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Wanted;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.SequencedMap;

/// What the keeper asks of the young, ticked among the forms in play.
///
/// @param showing forms that may be ticked as a must
/// @param without genes that may be ticked as not to be seen
/// @param wanted what is ticked
/// @param words what is ticked, in words; empty where nothing is
public record Sought(List<Tick> showing, List<Tick> without, Wanted wanted, String words) {

    public Sought {
        showing = List.copyOf(showing);
        without = List.copyOf(without);
    }

    /// @param value what the form sends
    public record Tick(String value, String label, boolean ticked) {}

    public boolean isAnything() {
        return wanted.equals(Wanted.ANYTHING);
    }

    /// @param inPlay the forms that the young may show, by locus, in naming order
    static Sought of(
            Form form,
            Catalogue catalogue,
            SequencedMap<LocusId, List<Phenotype>> inPlay,
            Formats formats) {
        var showing = new ArrayList<Tick>();
        var without = new ArrayList<Tick>();
        var must = new LinkedHashSet<Phenotype>();
        var mustNot = new LinkedHashSet<LocusId>();
        var words = new ArrayList<String>();
        inPlay.forEach(
                (locus, forms) -> {
                    for (var one : forms) {
                        var value = locus + ":" + one.name();
                        var ticked = form.has("show", value);
                        showing.add(new Tick(value, one.name(), ticked));
                        if (ticked) {
                            must.add(one);
                            words.add(one.name());
                        }
                    }
                });
        var not = new ArrayList<String>();
        inPlay.forEach(
                (locus, forms) -> {
                    var title = title(catalogue, locus, forms);
                    var ticked = form.has("without", locus.value());
                    without.add(new Tick(locus.value(), title, ticked));
                    if (ticked) {
                        mustNot.add(locus);
                        not.add(title);
                    }
                });
        var said =
                formats.list(words)
                        + (not.isEmpty()
                                ? ""
                                : (words.isEmpty() ? "Nothing of " : ", nothing of ")
                                        + formats.list(not));
        return new Sought(showing, without, new Wanted(must, mustNot), said);
    }

    /// A gene with one form in play is called by it; a series by its own title.
    private static String title(Catalogue catalogue, LocusId locus, List<Phenotype> forms) {
        return forms.size() == 1
                ? forms.getFirst().name()
                : catalogue
                        .species()
                        .findLocus(locus)
                        .map(LocusEntry::title)
                        .orElse(forms.getFirst().name());
    }
}
