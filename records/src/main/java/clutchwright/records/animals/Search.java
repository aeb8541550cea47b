package clutchwright.records.animals;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Words;
import java.util.ArrayList;
import java.util.List;

/// A query as SQL.
final class Search {

    private final Transaction tx;
    private final AnimalRows rows;
    private final List<String> conditions = new ArrayList<>();
    private final List<Object> parameters = new ArrayList<>();

    Search(Transaction tx, AnimalRows rows) {
        this.tx = tx;
        this.rows = rows;
    }

    Query.Page page(Query query) {
        gather(query);
        var from = from();
        long total = tx.number("select count(*)" + from, parameters.toArray());
        parameters.add((long) query.most());
        parameters.add((long) query.first());
        var found =
                rows.read(
                        "select a.*" + from + " order by " + order(query) + " limit ? offset ?",
                        parameters.toArray());
        return new Query.Page(found, Math.toIntExact(total));
    }

    /// All that the query finds, in its order.
    List<AnimalId> ids(Query query) {
        gather(query);
        return tx.list(
                row -> new AnimalId(row.number("id")),
                "select a.id as id" + from() + " order by " + order(query),
                parameters.toArray());
    }

    private String from() {
        return " from animal a join animal_search s on s.animal = a.id"
                + " left join tub t on t.id = a.place"
                + " left join rack r on r.id = t.rack"
                + " left join room m on m.id = r.room"
                + (conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions));
    }

    private void gather(Query query) {
        for (var word : Words.searchable(query.text()).split(" ", -1)) {
            if (!word.isEmpty()) {
                where("s.words like ? escape '\\'", "%" + escaped(word) + "%");
            }
        }
        switch (query.sex()) {
            case ANY -> {}
            case FEMALE -> conditions.add("a.sex = 'FEMALE'");
            case MALE -> conditions.add("a.sex = 'MALE'");
            case UNSEXED -> conditions.add("a.sex is null");
        }
        if (!query.statuses().isEmpty()) {
            where(
                    "a.status in (" + "?, ".repeat(query.statuses().size() - 1) + "?)",
                    query.statuses().stream().map(Status::name).toArray());
        }
        query.room().ifPresent(room -> where("r.room = ?", room.value()));
        if (!query.shows().isBlank()) {
            gene(query.shows(), " and shown = 1");
        }
        if (!query.carries().isBlank()) {
            gene(query.carries(), "");
        }
        query.season()
                .ifPresent(
                        year ->
                                where(
                                        "a.hatched >= ? and a.hatched < ?",
                                        "%04d".formatted(year),
                                        "%04d".formatted(year + 1)));
        query.species().ifPresent(species -> where("a.species = ?", species));
    }

    private void gene(String word, String further) {
        where(
                "a.id in (select animal from animal_gene where allele_key = ? and latest = 1"
                        + further
                        + ")",
                Words.searchable(word));
    }

    private void where(String condition, Object... values) {
        conditions.add(condition);
        parameters.addAll(List.of(values));
    }

    private static String order(Query query) {
        var way = query.falling() ? " desc" : "";
        var by =
                switch (query.sort()) {
                    case TAG -> List.<String>of();
                    case NAME -> List.of("lower(a.name)");
                    case SEX -> List.of("coalesce(a.sex, 'UNSEXED')");
                    case HATCHED -> List.of("coalesce(a.hatched, '')");
                    case STATUS -> List.of("a.status");
                    case PLACE ->
                            List.of(
                                    "coalesce(m.name_key, '')",
                                    "coalesce(r.name_key, '')",
                                    "coalesce(t.name_key, '')");
                    case ENTERED -> List.of("a.id");
                };
        var all = new ArrayList<>(by);
        all.add("s.tag_order");
        return String.join(", ", all.stream().map(column -> column + way).toList()) + ", a.id";
    }

    /// So that `%` and `_` in what was typed stand for themselves.
    static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_");
    }
}
