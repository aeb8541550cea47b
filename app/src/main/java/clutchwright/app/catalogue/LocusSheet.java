package clutchwright.app.catalogue;

import clutchwright.app.web.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/// The text of one locus as a form, and a form as the text of one locus.
///
/// The plain keys of the locus are fields of their own names; those of its third allele are
/// `a2-mode` and the like, of its forms `f0-...`, of its cautions `c0-...`. What stands behind the
/// key that begins such a block is its `...-head`.
record LocusSheet(String locus, Form form) {

    static final String HEAD = "head";
    static final String SEX_LINKED = "sex-linked";

    private static final int MOST = 500;

    /// What a block of the text is called in the names of fields, and which keys stand in it.
    private record Kind(String key, String letter, List<String> keys) {

        private static final List<Kind> ALL =
                List.of(
                        new Kind(
                                "allele",
                                "a",
                                List.of("mode", "also", "asks", "standing", "source", "note")),
                        new Kind(
                                "form", "f", List.of("name", "also", "viability", "masks", "note")),
                        new Kind("caution", "c", List.of("when", "standing", "words", "source")));

        static String letterOf(String key) {
            return ALL.stream()
                    .filter(kind -> kind.key.equals(key))
                    .map(Kind::letter)
                    .findFirst()
                    .orElse("");
        }
    }

    private static final List<String> PLAIN =
            List.of("title", "inherits", "standing", "source", "note");

    /// @param text of one locus, as the catalogue writes it
    static LocusSheet read(String text) {
        var locus = "";
        var values = new LinkedHashMap<String, String>();
        var counts = new LinkedHashMap<String, Integer>();
        var prefix = "";
        for (var line : text.lines().filter(written -> !written.isBlank()).toList()) {
            var words = line.strip().split("\\s+", 2);
            var value = words.length == 1 ? "" : words[1].replace("\\#", "#");
            if (!line.startsWith(" ")) {
                locus = value;
            } else if (line.startsWith("    ")) {
                values.merge(prefix + words[0], value, LocusSheet::lines);
            } else if (Kind.letterOf(words[0]).isEmpty()) {
                values.merge(words[0], value, LocusSheet::lines);
            } else {
                var letter = Kind.letterOf(words[0]);
                prefix = letter + (counts.merge(letter, 1, Integer::sum) - 1) + "-";
                values.put(prefix + HEAD, value);
            }
        }
        split(values, "inherits", "recombination");
        for (int i = 0; i < counts.getOrDefault("f", 0); i++) {
            split(values, "f" + i + "-viability", "f" + i + "-viability-standing");
        }
        return new LocusSheet(locus, Form.of(values));
    }

    /// The same with an empty allele, form and caution at the end, to be filled in or left.
    LocusSheet withRoom() {
        var roomy = form;
        for (var kind : Kind.ALL) {
            roomy = roomy.with(kind.letter + count(kind.letter) + "-" + HEAD, "");
        }
        return new LocusSheet(locus, roomy);
    }

    /// How many blocks the form has places for, empty ones included.
    int count(String letter) {
        return (int)
                IntStream.range(0, MOST)
                        .takeWhile(i -> form.values().containsKey(letter + i + "-" + HEAD))
                        .count();
    }

    /// The text, and for each of its lines the field that it came from.
    Draft draft() {
        var draft = new Draft(new ArrayList<>(), new ArrayList<>());
        draft.add(0, "locus", locus, "title");
        for (var key : PLAIN) {
            draft.addAll(1, key, value(key), key, key.equals("title"));
        }
        for (var kind : Kind.ALL) {
            for (int i = 0; i < count(kind.letter); i++) {
                addBlock(draft, kind, kind.letter + i + "-");
            }
        }
        return draft;
    }

    /// A block whose head was left empty is left out.
    private void addBlock(Draft draft, Kind kind, String prefix) {
        if (form.text(prefix + HEAD).isEmpty()) {
            return;
        }
        draft.add(1, kind.key, form.text(prefix + HEAD), prefix + HEAD);
        for (var key : kind.keys) {
            draft.addAll(2, key, value(prefix + key), prefix + key, key.equals("mode"));
        }
    }

    /// What stands behind a key, of which the form may have two fields.
    private String value(String field) {
        var value = form.text(field);
        if (field.equals("inherits") && value.equals(SEX_LINKED)) {
            return value + " " + form.text("recombination");
        }
        return field.endsWith("-viability") && !value.isEmpty()
                ? value + " " + form.text(field + "-standing")
                : value;
    }

    private static void split(Map<String, String> values, String field, String second) {
        var words = values.getOrDefault(field, "").split("\\s+", 2);
        if (words.length == 2) {
            values.put(field, words[0].equals("0/1") ? "0" : words[0]);
            values.put(second, words[1]);
        }
    }

    private static String lines(String before, String next) {
        return before + "\n" + next;
    }

    /// @param fields the field of each line
    record Draft(List<String> lines, List<String> fields) {

        private void addAll(int depth, String key, String value, String field, boolean needed) {
            if (value.isEmpty() && needed) {
                add(depth, key, "", field);
            }
            value.lines()
                    .filter(line -> !line.isBlank())
                    .forEach(line -> add(depth, key, line, field));
        }

        private void add(int depth, String key, String value, String field) {
            // A mark of a comment in a value must be marked as none.
            var safe = value.strip().replaceAll("(?<=^|\\s|\\\\)#", "\\\\#");
            lines.add(("  ".repeat(depth) + key + " " + safe).stripTrailing());
            fields.add(field);
        }

        String text() {
            return String.join("\n", lines) + "\n";
        }

        /// @param line from 1
        String field(int line) {
            return line >= 1 && line <= fields.size() ? fields.get(line - 1) : "title";
        }
    }
}
