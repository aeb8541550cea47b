package clutchwright.records.store;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/// Rewrites what is kept for speed alone: the words by which an animal is found, and the genes
/// that its statements mention.
final class Derived {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final Pattern DIGITS = Pattern.compile("\\d+");

    private static final String WORDS =
            "select a.tag, a.name, a.line, replace(a.status, '_', ' ') as status, t.name as tub,"
                    + " r.name as rack, m.name as room from animal a"
                    + " left join tub t on t.id = a.place left join rack r on r.id = t.rack"
                    + " left join room m on m.id = r.room where a.id = ?";
    private static final List<String> COLUMNS =
            List.of("tag", "name", "line", "status", "room", "rack", "tub");

    private final Prepared prepared;

    Derived(Prepared prepared) {
        this.prepared = prepared;
    }

    void refresh(List<Long> animals) {
        animals.forEach(this::refresh);
    }

    private void refresh(long animal) {
        prepared.update("delete from animal_search where animal = ?", List.of(animal));
        prepared.update("delete from animal_gene where animal = ?", List.of(animal));
        prepared.list(
                        row ->
                                COLUMNS.stream()
                                        .map(column -> row.findText(column).orElse(""))
                                        .toList(),
                        WORDS,
                        List.of(animal))
                .forEach(words -> index(animal, words));
    }

    private void index(long animal, List<String> words) {
        var all = new ArrayList<>(words);
        all.addAll(genes(animal));
        prepared.update(
                "insert into animal_search (animal, words, tag_order) values (?, ?, ?)",
                List.of(animal, searchable(String.join(" ", all)), order(words.getFirst())));
    }

    /// Writes the genes of every statement.
    ///
    /// @return the lines of the latest claim and the latest sighting
    private List<String> genes(long animal) {
        record Said(long id, String kind, String line, String species, String genes) {}
        var all =
                prepared.list(
                        row ->
                                new Said(
                                        row.number("id"),
                                        row.text("kind"),
                                        row.text("written") + " " + row.text("canonical"),
                                        row.text("species"),
                                        row.text("genes")),
                        "select id, kind, written, canonical, species, genes from statement"
                                + " where animal = ? order by coalesce(made_on, '') desc, id desc",
                        List.of(animal));
        var lines = new ArrayList<String>();
        var kinds = new HashSet<String>();
        for (var said : all) {
            boolean latest = kinds.add(said.kind());
            if (latest) {
                lines.add(said.line());
            }
            said.genes()
                    .lines()
                    .map(line -> line.split(" ", 3))
                    .filter(parts -> parts.length == 3)
                    .forEach(
                            parts ->
                                    prepared.update(
                                            "insert into animal_gene (animal, statement, species,"
                                                    + " locus, allele, allele_key, shown, latest)"
                                                    + " values (?, ?, ?, ?, ?, ?, ?, ?)",
                                            List.of(
                                                    animal,
                                                    said.id(),
                                                    said.species(),
                                                    parts[1],
                                                    parts[2],
                                                    searchable(parts[2]),
                                                    parts[0].equals("shown") ? 1L : 0L,
                                                    latest ? 1L : 0L)));
        }
        return lines;
    }

    /// Small letters without accents, single spaces.
    static String searchable(String text) {
        var bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        return SPACES.matcher(bare.toLowerCase(Locale.ROOT).strip()).replaceAll(" ");
    }

    /// So that `24-2` comes before `24-10`.
    static String order(String tag) {
        return DIGITS.matcher(searchable(tag))
                .replaceAll(
                        digits -> {
                            var number = digits.group().replaceFirst("^0+(?=.)", "");
                            return "0".repeat(Math.max(0, 12 - number.length())) + number;
                        });
    }
}
