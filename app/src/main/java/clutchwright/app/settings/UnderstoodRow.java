package clutchwright.app.settings;

import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.AnimalWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Reading;
import clutchwright.records.animals.Hatched;
import clutchwright.records.exchange.AnimalEntry;
import clutchwright.records.exchange.ImportPlan.PlannedRow;
import clutchwright.records.exchange.SpeciesLines;
import java.util.Optional;
import java.util.stream.Collectors;

/// What was understood of one row.
///
/// @param row counted from 1, as in the file
/// @param stated genes in type; empty where none are stated
/// @param shows the same of what is seen
public record UnderstoodRow(
        int row,
        String tag,
        String name,
        String sex,
        String hatched,
        String parents,
        Markup stated,
        Markup shows,
        String status) {

    static UnderstoodRow of(PlannedRow planned, SpeciesLines lines, Formats formats) {
        var entry = planned.entry();
        var line = lines.find(entry.species());
        return new UnderstoodRow(
                planned.row(),
                entry.tag().value(),
                entry.name(),
                entry.sex().map(AnimalWords::sex).orElse(""),
                entry.hatched() instanceof Hatched.Unknown
                        ? ""
                        : new AnimalWords(formats).hatched(entry.hatched()),
                parents(entry),
                genes(line, entry.stated()),
                genes(line, entry.shows()),
                AnimalWords.status(entry.status()));
    }

    private static String parents(AnimalEntry entry) {
        var dam = entry.dam().map(tag -> tag.value()).orElse("");
        var sire =
                switch (entry.sire()) {
                    case AnimalEntry.SireEntry.Unknown() -> entry.withoutSire() ? "made alone" : "";
                    case AnimalEntry.SireEntry.Known(var tag) -> tag.value();
                    case AnimalEntry.SireEntry.OneOf(_, var candidates) ->
                            candidates.outcomes().stream()
                                    .map(tag -> tag.value())
                                    .collect(Collectors.joining(" or "));
                };
        if (dam.isEmpty() && sire.isEmpty()) {
            return "";
        }
        return (dam.isEmpty() ? "?" : dam) + " × " + (sire.isEmpty() ? "?" : sire);
    }

    private static Markup genes(Optional<GeneLine> line, String written) {
        if (written.isBlank()) {
            return new Markup();
        }
        return line.map(known -> known.read(written))
                .map(
                        reading ->
                                reading instanceof Reading.Understood(var genes, _, _)
                                        ? GeneLineMarkup.of(genes).line()
                                        : new Markup().text(written))
                .orElseGet(() -> new Markup().text(written));
    }
}
