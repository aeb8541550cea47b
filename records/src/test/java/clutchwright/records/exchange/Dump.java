package clutchwright.records.exchange;

import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.List;

/// Every row of every table as text, each row that it points at by what a keeper calls it.
///
/// Written for the test alone, straight from the tables, so that what an export leaves out shows.
/// Numbers of rows and versions are not part of the collection.
final class Dump {

    private static final String ANIMAL = "(select tag from animal x where x.id = t.%s)";
    private static final String CLUTCH =
            "(select season || '-' || running from clutch x where x.id = t.%s)";
    private static final String EGG =
            "(select c.season || '-' || c.running || '/' || x.running from egg x"
                    + " join clutch c on c.id = x.clutch where x.id = t.%s)";
    private static final String PAIRING =
            "(select x.season || ':' || d.tag || ':' || s.tag from pairing x"
                    + " join animal d on d.id = x.dam join animal s on s.id = x.sire"
                    + " where x.id = t.%s)";

    private Dump() {}

    static List<String> of(Transaction tx) {
        var lines = new ArrayList<String>();
        add(tx, lines, "room", "name", "notes");
        add(tx, lines, "rack", "(select name from room x where x.id = t.room)", "name", "notes");
        add(
                tx,
                lines,
                "tub",
                "(select m.name || '>' || x.name from rack x join room m on m.id = x.room"
                        + " where x.id = t.rack)",
                "name",
                "notes");
        add(
                tx,
                lines,
                "animal",
                "tag",
                "tag_key",
                "name",
                "sex",
                "hatched",
                ANIMAL.formatted("dam"),
                ANIMAL.formatted("sire"),
                "sire_question",
                "without_sire",
                "origin",
                "origin_from",
                "acquired",
                "line",
                "credit",
                "status",
                "(select m.name || '>' || k.name || '>' || x.name from tub x"
                        + " join rack k on k.id = x.rack join room m on m.id = k.room"
                        + " where x.id = t.place)",
                "species",
                "notes");
        add(
                tx,
                lines,
                "statement",
                ANIMAL.formatted("animal"),
                "kind",
                "written",
                "canonical",
                "species",
                "made_on",
                "made_by",
                "source",
                "doubted",
                "genes");
        add(
                tx,
                lines,
                "pairing",
                PAIRING.formatted("id"),
                "state",
                "put_together",
                "separated",
                "notes");
        add(tx, lines, "sign_seen", PAIRING.formatted("pairing"), "kind", "seen_on", "notes");
        add(
                tx,
                lines,
                "clutch",
                "season",
                "running",
                ANIMAL.formatted("dam"),
                ANIMAL.formatted("sire"),
                "sire_question",
                "without_sire",
                PAIRING.formatted("pairing"),
                "laid_on",
                "species",
                "notes");
        add(
                tx,
                lines,
                "sire_candidate",
                ANIMAL.formatted("animal"),
                CLUTCH.formatted("clutch"),
                "place",
                ANIMAL.formatted("candidate"),
                "weight");
        add(tx, lines, "incubator", "name", "name_key", "set_point_celsius", "notes");
        add(
                tx,
                lines,
                "sensor",
                "name",
                "name_key",
                "(select name from incubator x where x.id = t.incubator)",
                "(select label from box x where x.id = t.box)",
                "topic",
                "member",
                "scale",
                "correction_kelvin",
                "silent_after_minutes");
        add(tx, lines, "box", "label", "label_key", "incubator", "notes");
        add(
                tx,
                lines,
                "egg",
                EGG.formatted("id"),
                "fate",
                "(select label from box x where x.id = t.box)",
                "fated_on",
                "finding",
                "lies");
        add(tx, lines, "hatchling", EGG.formatted("egg"), ANIMAL.formatted("animal"));
        add(tx, lines, "egg_weighing", EGG.formatted("egg"), "made_on", "grams");
        add(
                tx,
                lines,
                "egg_photo",
                EGG.formatted("egg"),
                "digest",
                "added_on",
                "width",
                "height",
                "caption");
        add(tx, lines, "candling", EGG.formatted("egg"), "seen_on", "finding", "notes");
        add(tx, lines, "weighing", ANIMAL.formatted("animal"), "made_on", "grams", "notes");
        add(
                tx,
                lines,
                "meal",
                ANIMAL.formatted("animal"),
                "made_on",
                "prey",
                "grams",
                "taken",
                "notes");
        add(tx, lines, "shed", ANIMAL.formatted("animal"), "made_on", "complete", "notes");
        add(tx, lines, "health_note", ANIMAL.formatted("animal"), "made_on", "notes");
        add(
                tx,
                lines,
                "photo",
                ANIMAL.formatted("animal"),
                "digest",
                "added_on",
                "width",
                "height",
                "caption");
        add(tx, lines, "overlay_entry", "species", "locus", "written");
        add(tx, lines, "price", "species", "genes", "genes_key", "sex", "amount", "sells", "later");
        add(
                tx,
                lines,
                "project",
                "name",
                "name_key",
                "species",
                "goal",
                "told",
                "tested",
                "test_price",
                "clutches",
                "eggs",
                "hatch_rate",
                "male_seasons",
                "female_seasons",
                "confidence",
                "seasons",
                "clutch_worth",
                "least_clutches",
                "state",
                "notes");
        add(
                tx,
                lines,
                "purchase",
                "(select name from project x where x.id = t.project)",
                "genes",
                "sex",
                "amount");
        add(
                tx,
                lines,
                "plan_word",
                "season",
                ANIMAL.formatted("dam"),
                ANIMAL.formatted("sire"),
                "word",
                "reason");
        add(tx, lines, "season_plan", "season", "name", "name_key", "made_on", "worth", "bound");
        add(
                tx,
                lines,
                "season_plan_pair",
                "(select season || name from season_plan x where x.id = t.plan)",
                ANIMAL.formatted("dam"),
                ANIMAL.formatted("sire"));
        return lines;
    }

    private static void add(Transaction tx, List<String> lines, String table, String... columns) {
        var select = new StringBuilder("select ");
        for (int i = 0; i < columns.length; i++) {
            select.append(i == 0 ? "" : ", ").append(columns[i]).append(" as c").append(i);
        }
        lines.addAll(
                tx
                        .list(
                                row -> {
                                    var line = new StringBuilder(table);
                                    for (int i = 0; i < columns.length; i++) {
                                        line.append(" [")
                                                .append(row.findText("c" + i).orElse("NULL"))
                                                .append(']');
                                    }
                                    return line.toString();
                                },
                                select + " from " + table + " t")
                        .stream()
                        .sorted()
                        .toList());
    }
}
