package clutchwright.engine.catalogue;

import static java.util.stream.Collectors.groupingBy;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.Viability;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/// Writes one locus so that reading it gives the same entry, whatever the reader takes for granted.
final class LocusWriter {

    private static final int KEY_WIDTH = 10;

    private final LocusEntry entry;
    private final StringBuilder text = new StringBuilder();

    private LocusWriter(LocusEntry entry) {
        this.entry = entry;
    }

    static String write(LocusEntry entry) {
        var writer = new LocusWriter(entry);
        writer.writeLocus();
        return writer.text.toString();
    }

    private void writeLocus() {
        line(0, "locus", entry.id().value());
        line(1, "title", entry.title());
        line(1, "inherits", inheritance());
        line(1, "standing", Words.of(entry.standing()));
        writeSource(1, entry.source());
        writeNote(1, entry.note());
        entry.traits().forEach(this::writeTrait);
        var implied = impliedWithoutStatement();
        for (var form : entry.forms()) {
            if (!implied.contains(form) || !isPlain(form)) {
                writeForm(form);
            }
        }
        entry.cautions().forEach(this::writeCaution);
    }

    private String inheritance() {
        return switch (entry.map().locus().inheritance()) {
            case Inheritance.Autosomal() -> "autosomal";
            case Inheritance.SexLinked(var recombination) -> "sex-linked " + recombination;
        };
    }

    private void writeTrait(Trait trait) {
        line(1, "allele", trait.name());
        line(2, "mode", Words.of(trait.mode()));
        writeSynonyms(trait.synonyms());
        if (!trait.asks().isEmpty()) {
            line(2, "asks", joined(trait.asks()));
        }
        line(2, "standing", Words.of(trait.standing()));
        writeSource(2, trait.source());
        writeNote(2, trait.note());
    }

    private List<NamedForm> impliedWithoutStatement() {
        var looks = Looks.of(entry.map().locus().alleles(), entry.traits(), Map.of());
        return Looks.impliedForms(Map.of(), looks);
    }

    private boolean isPlain(NamedForm form) {
        return entry.map().maskingOf(form.phenotype()) instanceof Masking.Nothing
                && form.pairs().stream()
                        .allMatch(pair -> entry.map().viabilityOf(pair).equals(Viability.FULL));
    }

    /// One block for each viability, since a block can state only one.
    private void writeForm(NamedForm form) {
        var blocks =
                form.pairs().stream()
                        .collect(
                                groupingBy(
                                        entry.map()::viabilityOf,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        blocks.forEach(
                (viability, pairs) -> {
                    line(1, "form", joined(pairs.stream().map(LocusWriter::written).toList()));
                    line(2, "name", form.phenotype().name());
                    writeSynonyms(form.synonyms());
                    if (!viability.equals(Viability.FULL)) {
                        line(2, "viability", written(viability));
                    }
                    writeMasking(entry.map().maskingOf(form.phenotype()));
                    writeNote(2, form.note());
                });
    }

    private void writeMasking(Masking masking) {
        switch (masking) {
            case Masking.Nothing() -> {}
            case Masking.These(var loci) ->
                    line(2, "masks", joined(loci.stream().sorted().map(LocusId::value).toList()));
            case Masking.Everything() -> line(2, "masks", "everything");
        }
    }

    private void writeCaution(Caution caution) {
        line(1, "caution", Words.of(caution.concern()));
        line(
                2,
                "when",
                caution.parts().stream()
                        .map(LocusWriter::written)
                        .collect(Collectors.joining(" + ")));
        line(2, "standing", Words.of(caution.standing()));
        line(2, "words", caution.words());
        writeSource(2, caution.source());
    }

    private void writeSynonyms(List<String> synonyms) {
        if (!synonyms.isEmpty()) {
            line(2, "also", joined(synonyms));
        }
    }

    private void writeSource(int depth, String source) {
        if (!source.equals(Block.NO_SOURCE)) {
            line(depth, "source", source);
        }
    }

    private void writeNote(int depth, String note) {
        if (!note.isEmpty()) {
            note.lines().forEach(each -> line(depth, "note", each));
        }
    }

    private void line(int depth, String key, String value) {
        var padded = (key + " ".repeat(KEY_WIDTH)).substring(0, KEY_WIDTH);
        // A value that breaks would begin a key of its own.
        var oneLine = value.lines().collect(Collectors.joining(" "));
        text.append("  ".repeat(depth))
                .append((padded + IndentedText.escaped(oneLine)).stripTrailing())
                .append('\n');
    }

    private static String joined(List<String> parts) {
        return String.join("; ", parts);
    }

    /// The wild type last, as breeders write it.
    private static String written(Genotype.Diploid pair) {
        return pair.first().isWild() ? pair.second().name() + "/" + Allele.WILD : pair.toString();
    }

    private static String written(Viability viability) {
        return viability.chance() + " " + Words.of(viability.standing());
    }

    private static String written(Caution.Part part) {
        return part.allele().name() + (part.copies() == 2 ? " x2" : "");
    }
}
