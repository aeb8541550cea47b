package clutchwright.app.eggs;

import clutchwright.app.holding.LineEntry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Genes.Statement;
import clutchwright.engine.notation.Reading;
import clutchwright.records.statements.GeneText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// What a keeper taps of a hatchling's looks: a predicted group, or form by form, and a line for
/// what the parents do not promise.
final class SeenForm {

    /// The choice: a group's key, or one of the two below.
    static final String SEEN = "seen";

    /// Form by form, as ticked.
    static final String TICKED = "ticked";

    /// Nobody has looked yet.
    static final String NOT_YET = "not-yet";

    static final String SHOWS = "shows";
    static final String OTHER = "other";

    private SeenForm() {}

    /// The looks as one word of a form; `group:` alone is Normal.
    static String key(List<Phenotype> shows) {
        return "group:"
                + shows.stream().map(GenesInPlay::key).sorted().collect(Collectors.joining(";"));
    }

    /// What was seen, as the records keep it; empty where nobody has looked.
    static Fields.Read<Optional<GeneText>> read(Fields fields, Form form, GeneLine lines) {
        var seen = form.text(SEEN);
        if (seen.isEmpty()) {
            return fields.faulty(SEEN, "Tap what it shows, or that nobody has looked yet.");
        }
        if (seen.equals(NOT_YET)) {
            return fields.understood(Optional.empty());
        }
        var keys =
                seen.equals(TICKED)
                        ? form.texts(SHOWS)
                        : List.of(seen.substring(seen.indexOf(':') + 1).split(";"));
        var forms = new LinkedHashSet<Phenotype>();
        for (var key : keys) {
            if (!key.isBlank()) {
                var found = GenesInPlay.find(lines.catalogue().model(), key);
                if (found.isEmpty()) {
                    return fields.faulty(SEEN, "Tap what it shows.");
                }
                forms.add(found.get());
            }
        }
        return seen.equals(TICKED)
                ? withLine(fields, form, lines, forms)
                : text(fields, lines, forms, Genes.NORMAL);
    }

    /// The visible forms, where they are settled.
    static Optional<Set<Phenotype>> looks(GeneLine lines, GeneText text) {
        if (!(lines.read(text.canonical()) instanceof Reading.Understood(var genes, _, _))) {
            return Optional.empty();
        }
        return HatchlingLine.shown(lines.catalogue().model(), genes)
                        instanceof HatchlingLine.Look.Seen(var shows)
                ? Optional.of(shows)
                : Optional.empty();
    }

    private static Fields.Read<Optional<GeneText>> withLine(
            Fields fields, Form form, GeneLine lines, Set<Phenotype> forms) {
        return switch (LineEntry.read(lines, form.text(OTHER))) {
            case LineEntry.Blank() -> text(fields, lines, forms, Genes.NORMAL);
            case LineEntry.Understood(_, var genes, _) -> text(fields, lines, forms, genes);
            case LineEntry.Unclear(_, var faults) ->
                    fields.faulty(
                            OTHER,
                            faults.stream().map(ReadingWords::of).collect(Collectors.joining(" ")));
        };
    }

    private static Fields.Read<Optional<GeneText>> text(
            Fields fields, GeneLine lines, Set<Phenotype> forms, Genes typed) {
        var byLocus = new LinkedHashMap<LocusId, Statement>();
        for (var form : forms) {
            var shows = lines.seeing(form);
            var before = byLocus.put(form.locus(), shows);
            if (before != null) {
                return fields.faulty(
                        SEEN,
                        "%s and %s are forms of one gene: it shows one of them."
                                .formatted(nameOf(before), form.name()));
            }
        }
        for (var statement : typed.statements()) {
            if (statement instanceof Statement.Shows shows) {
                byLocus.put(shows.locus(), shows);
            }
        }
        var statements = new ArrayList<Statement>();
        // In naming order, whatever was tapped first.
        lines.catalogue()
                .model()
                .loci()
                .sequencedKeySet()
                .forEach(
                        locus ->
                                Optional.ofNullable(byLocus.get(locus)).ifPresent(statements::add));
        return fields.understood(
                Optional.of(
                        LineEntry.of(
                                lines, new Genes(statements, Optional.empty(), typed.remarks()))));
    }

    private static String nameOf(Statement statement) {
        return switch (statement) {
            case Statement.Shows shows -> shows.name();
            case Statement.Carries carries -> carries.allele().name();
        };
    }
}
