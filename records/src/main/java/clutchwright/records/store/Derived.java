package clutchwright.records.store;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.jdbc.core.simple.JdbcClient;

/// Rewrites what is kept for speed alone: the words by which an animal is found, and the genes
/// that its statements mention.
final class Derived {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern DIGITS = Pattern.compile("\\d+");

    private final JdbcClient client;

    Derived(JdbcClient client) {
        this.client = client;
    }

    void refresh(List<Long> animals) {
        animals.forEach(this::refresh);
    }

    private void refresh(long animal) {
        client.sql("delete from animal_search where animal = ?").param(animal).update();
        client.sql("delete from animal_gene where animal = ?").param(animal).update();
        var words =
                client.sql(
                                "select a.tag, a.name, a.line,"
                                        + " replace(a.status, '_', ' '), t.name, r.name, m.name"
                                        + " from animal a left join tub t on t.id = a.place"
                                        + " left join rack r on r.id = t.rack"
                                        + " left join room m on m.id = r.room where a.id = ?")
                        .param(animal)
                        .query(
                                (row, _) -> {
                                    var found = new ArrayList<String>();
                                    for (int i = 1; i <= 7; i++) {
                                        var word = row.getString(i);
                                        found.add(word == null ? "" : word);
                                    }
                                    return found;
                                })
                        .optional();
        if (words.isEmpty()) {
            return;
        }
        var tag = words.get().getFirst();
        words.get().addAll(genes(animal));
        client.sql("insert into animal_search (animal, words, tag_order) values (?, ?, ?)")
                .params(List.of(animal, searchable(String.join(" ", words.get())), order(tag)))
                .update();
    }

    /// Writes the genes of every statement.
    ///
    /// @return the lines of the latest claim and the latest sighting
    private List<String> genes(long animal) {
        record Said(long id, String kind, String line, String species, String genes) {}
        var all =
                client.sql(
                                "select id, kind, written, canonical, species, genes"
                                        + " from statement where animal = ?"
                                        + " order by coalesce(made_on, '') desc, id desc")
                        .param(animal)
                        .query(
                                (row, _) ->
                                        new Said(
                                                row.getLong(1),
                                                row.getString(2),
                                                row.getString(3) + " " + row.getString(4),
                                                row.getString(5),
                                                row.getString(6)))
                        .list();
        var lines = new ArrayList<String>();
        var kinds = new ArrayList<String>();
        for (var said : all) {
            boolean latest = !kinds.contains(said.kind());
            if (latest) {
                kinds.add(said.kind());
                lines.add(said.line());
            }
            said.genes()
                    .lines()
                    .map(line -> line.split(" ", 3))
                    .filter(parts -> parts.length == 3)
                    .forEach(
                            parts ->
                                    client.sql(
                                                    "insert into animal_gene (animal, statement,"
                                                            + " species, locus, allele, allele_key,"
                                                            + " shown, latest)"
                                                            + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                                            .params(
                                                    List.of(
                                                            animal,
                                                            said.id(),
                                                            said.species(),
                                                            parts[1],
                                                            parts[2],
                                                            searchable(parts[2]),
                                                            parts[0].equals("shown") ? 1L : 0L,
                                                            latest ? 1L : 0L))
                                            .update());
        }
        return lines;
    }

    /// Small letters without accents, single spaces.
    static String searchable(String text) {
        var bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        return bare.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
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
