package clutchwright.app.catalogue;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.web.View;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import java.util.List;

/// How a gene line was understood, as a piece of a page.
///
/// @param field the id of the field it belongs to
/// @param line what was understood, in type; empty where nothing was
/// @param animals sex and counts that the line says, in words
/// @param completions whole lines that the last word could grow into
public record ReadingView(
        String field,
        String line,
        String animals,
        List<Fault> faults,
        List<String> notes,
        List<String> completions)
        implements View {

    private static final int COMPLETIONS = 8;

    /// @param before the line up to the place
    public record Fault(String before, String found, String sentence) {}

    static ReadingView of(GeneLine lines, String field, String typed) {
        var completions =
                lines.complete(typed, typed.length(), COMPLETIONS).stream()
                        .map(
                                completion ->
                                        typed.substring(0, completion.start())
                                                + completion.text()
                                                + typed.substring(completion.end()))
                        .toList();
        if (typed.isBlank()) {
            return new ReadingView(field, "", "", List.of(), List.of(), List.of());
        }
        return switch (lines.read(typed)) {
            case Reading.Understood(var genes, _, var notes) ->
                    new ReadingView(
                            field,
                            GeneLineMarkup.of(genes).line().toString(),
                            genes.animals().map(ReadingView::inWords).orElse(""),
                            List.of(),
                            notes.stream().map(ReadingWords::of).toList(),
                            completions);
            case Reading.Unclear(var faults, _) ->
                    new ReadingView(
                            field,
                            "",
                            "",
                            faults.stream().map(fault -> placed(typed, fault)).toList(),
                            List.of(),
                            completions);
        };
    }

    private static Fault placed(String typed, Reading.Fault fault) {
        var start = Math.clamp(fault.start(), 0, typed.length());
        var end = Math.clamp(fault.end(), start, typed.length());
        var from = Math.max(0, start - 24);
        return new Fault(
                (from > 0 ? "…" : "") + typed.substring(from, start),
                typed.substring(start, end),
                ReadingWords.of(fault));
    }

    private static String inWords(Genes.Group animals) {
        var males = animals.males() == 0 ? "" : animals.males() + " male";
        var females = animals.females() == 0 ? "" : animals.females() + " female";
        var unsexed = animals.unsexed() == 0 ? "" : animals.unsexed() + " not sexed";
        return String.join(
                ", ", List.of(males, females, unsexed).stream().filter(s -> !s.isEmpty()).toList());
    }

    @Override
    public String template() {
        return "catalogue/reading.jte";
    }

    @Override
    public String title() {
        return "";
    }
}
