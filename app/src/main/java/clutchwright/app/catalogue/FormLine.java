package clutchwright.app.catalogue;

import clutchwright.engine.catalogue.LocusEntry;
import clutchwright.engine.catalogue.NamedForm;
import clutchwright.engine.genetics.LocusId;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// A form that has a name of its own.
///
/// @param of the pairs of alleles that look so, as a keeper says them
/// @param marks what else must be known of it
public record FormLine(
        String name, String also, String of, List<String> marks, List<String> notes) {

    public FormLine {
        marks = List.copyOf(marks);
        notes = List.copyOf(notes);
    }

    static FormLine of(LocusEntry entry, NamedForm form, Function<LocusId, String> titles) {
        return new FormLine(
                form.phenotype().name(),
                String.join(", ", form.synonyms()),
                form.pairs().stream().map(PairTable::spoken).collect(Collectors.joining("; ")),
                form.pairs().stream()
                        .flatMap(pair -> PairTable.marks(entry, pair, titles).stream())
                        .distinct()
                        .toList(),
                form.note().lines().toList());
    }

    /// Whether its name says more than the names of its alleles do.
    static boolean isTelling(NamedForm form) {
        return form.phenotype().visible()
                && !(form.synonyms().isEmpty() && form.note().isEmpty() && isPlain(form));
    }

    /// Such as `Super Lesser`, or `Lesser Phantom` for the two.
    private static boolean isPlain(NamedForm form) {
        var rest = form.phenotype().name().replaceFirst("^Super ", "");
        for (var allele : form.pairs().getFirst().alleles()) {
            rest = rest.replaceFirst(Pattern.quote(allele.name()), "");
        }
        return rest.isBlank();
    }
}
