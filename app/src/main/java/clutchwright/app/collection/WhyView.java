package clutchwright.app.collection;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import clutchwright.app.wording.Chances;
import clutchwright.engine.genetics.Allele;
import clutchwright.records.animals.Animal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/// Why one animal is thought to carry one gene.
///
/// @param ready whether anything is worked out for the animal yet
/// @param lead how likely it carries the gene, in a sentence; empty where nothing is to be said
public record WhyView(
        String tag,
        String path,
        boolean ready,
        String gene,
        String lead,
        boolean multiply,
        List<Row> rows,
        List<Other> others)
        implements View {

    /// Chances below that are not worth a word.
    static final double LEAST = 0.01;

    public WhyView {
        rows = List.copyOf(rows);
        others = List.copyOf(others);
    }

    /// @param strength the factor and what it is worth, in words
    /// @param without the chance if it were not on record; empty where there would be none
    public record Row(String text, String strength, String without, List<Row> parts) {

        public Row {
            parts = List.copyOf(parts);
        }

        static Row of(Why.Line line) {
            var without = line.chanceWithout();
            return new Row(
                    line.text(),
                    line.strength(),
                    without == null ? "" : Chances.percent(without),
                    line.parts().stream().map(Row::of).toList());
        }
    }

    public record Other(String name, String path) {}

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    static WhyView of(
            Animal animal,
            boolean ready,
            List<Allele> genes,
            Optional<Allele> gene,
            Optional<Why> why) {
        var path = "/collection/" + animal.id();
        return new WhyView(
                animal.tag().value(),
                path,
                ready,
                gene.map(Allele::name).orElse(""),
                why.map(WhyView::lead).orElse(""),
                why.map(Why::multiply).orElse(true),
                why.map(found -> found.reasons().stream().map(Row::of).toList()).orElse(List.of()),
                genes.stream()
                        .filter(other -> !gene.equals(Optional.of(other)))
                        .map(
                                other ->
                                        new Other(
                                                other.name(),
                                                path
                                                        + "/why?gene="
                                                        + URLEncoder.encode(
                                                                other.name(),
                                                                StandardCharsets.UTF_8)))
                        .toList());
    }

    private static String lead(Why why) {
        return "It carries %s at a chance of %s. If nothing were recorded of any animal but who descends from whom, that would be %s."
                .formatted(
                        why.allele(), Chances.percent(why.chance()), Chances.percent(why.prior()));
    }

    @Override
    public String template() {
        return "collection/why.jte";
    }

    @Override
    public String title() {
        return "Why " + tag + (gene.isEmpty() ? "" : " carries " + gene);
    }

    @Override
    public Optional<Section> section() {
        return Optional.of(Section.COLLECTION);
    }
}
