package clutchwright.records.exchange;

import static clutchwright.records.exchange.PackageColumn.needed;
import static clutchwright.records.exchange.PackageColumn.optional;
import static clutchwright.records.exchange.PackageColumn.text;
import static clutchwright.records.exchange.PackageColumn.word;

import clutchwright.records.exchange.PackageColumn.Kind;
import java.util.List;
import java.util.Optional;

/// A file of the open package that has a row for each row of one table.
///
/// @param names what its rows are to rows of other files, if they are called by name at all
/// @param unique columns of the table that no two rows have alike; none if there may be twins
record PackageTable(
        String file,
        String table,
        Optional<Kind> names,
        List<PackageColumn> columns,
        List<String> unique) {

    PackageTable {
        columns = List.copyOf(columns);
        unique = List.copyOf(unique);
    }

    private static final PackageColumn ANIMAL = needed("animal", "animal", Kind.ANIMAL);
    private static final PackageColumn NOTES = text("notes", "notes");

    /// In an order in which whatever a row names has been read before it.
    static final List<PackageTable> ALL =
            List.of(
                    new PackageTable(
                            "genes.csv",
                            "overlay_entry",
                            Optional.empty(),
                            List.of(
                                    needed("species", "species", Kind.TEXT),
                                    needed("locus", "locus", Kind.TEXT),
                                    needed("text", "written", Kind.TEXT)),
                            List.of("species", "locus")),
                    new PackageTable(
                            "weighings.csv",
                            "weighing",
                            Optional.empty(),
                            List.of(
                                    ANIMAL,
                                    needed("date", "made_on", Kind.DAY),
                                    needed("grams", "grams", Kind.NUMBER),
                                    NOTES),
                            List.of()),
                    new PackageTable(
                            "meals.csv",
                            "meal",
                            Optional.empty(),
                            List.of(
                                    ANIMAL,
                                    needed("date", "made_on", Kind.DAY),
                                    text("prey", "prey"),
                                    optional("grams", "grams", Kind.NUMBER),
                                    needed("taken", "taken", Kind.YES_NO),
                                    NOTES),
                            List.of()),
                    new PackageTable(
                            "sheds.csv",
                            "shed",
                            Optional.empty(),
                            List.of(
                                    ANIMAL,
                                    needed("date", "made_on", Kind.DAY),
                                    needed("complete", "complete", Kind.YES_NO),
                                    NOTES),
                            List.of()),
                    new PackageTable(
                            "health.csv",
                            "health_note",
                            Optional.empty(),
                            List.of(
                                    ANIMAL,
                                    needed("date", "made_on", Kind.DAY),
                                    needed("notes", "notes", Kind.TEXT)),
                            List.of()),
                    new PackageTable(
                            "pairings.csv",
                            "pairing",
                            Optional.of(Kind.PAIRING),
                            List.of(
                                    needed("pairing", "", Kind.NAME),
                                    needed("season", "season", Kind.WHOLE),
                                    needed("dam", "dam", Kind.ANIMAL),
                                    needed("sire", "sire", Kind.ANIMAL),
                                    word("state", "state", "planned", "active", "done"),
                                    optional("put together", "put_together", Kind.DAY),
                                    optional("separated", "separated", Kind.DAY),
                                    NOTES),
                            List.of("season", "dam", "sire")),
                    new PackageTable(
                            "signs.csv",
                            "sign_seen",
                            Optional.empty(),
                            List.of(
                                    needed("pairing", "pairing", Kind.PAIRING),
                                    word(
                                            "sign",
                                            "kind",
                                            "lock",
                                            "building",
                                            "ovulation",
                                            "pre lay shed"),
                                    needed("date", "seen_on", Kind.DAY),
                                    NOTES),
                            List.of()),
                    new PackageTable(
                            "incubators.csv",
                            "incubator",
                            Optional.of(Kind.INCUBATOR),
                            List.of(
                                    needed("incubator", "name", Kind.TEXT),
                                    needed("set point celsius", "set_point_celsius", Kind.NUMBER),
                                    NOTES),
                            List.of("name_key")),
                    new PackageTable(
                            "boxes.csv",
                            "box",
                            Optional.of(Kind.BOX),
                            List.of(
                                    needed("box", "label", Kind.TEXT),
                                    text("incubator", "incubator"),
                                    NOTES),
                            List.of("label_key")),
                    new PackageTable(
                            "sensors.csv",
                            "sensor",
                            Optional.empty(),
                            List.of(
                                    needed("sensor", "name", Kind.TEXT),
                                    needed("incubator", "incubator", Kind.INCUBATOR),
                                    optional("box", "box", Kind.BOX),
                                    text("topic", "topic"),
                                    text("member", "member"),
                                    word("scale", "scale", "celsius", "fahrenheit"),
                                    needed("correction kelvin", "correction_kelvin", Kind.SIGNED),
                                    needed(
                                            "silent after minutes",
                                            "silent_after_minutes",
                                            Kind.WHOLE)),
                            List.of("incubator", "name_key")),
                    new PackageTable(
                            "clutches.csv",
                            "clutch",
                            Optional.of(Kind.CLUTCH),
                            List.of(
                                    needed("clutch", "", Kind.NAME),
                                    needed("season", "season", Kind.WHOLE),
                                    needed("number", "running", Kind.WHOLE),
                                    needed("dam", "dam", Kind.ANIMAL),
                                    optional("sire", "sire", Kind.SIRE),
                                    text("sire question", "sire_question"),
                                    needed("without sire", "without_sire", Kind.YES_NO),
                                    optional("pairing", "pairing", Kind.PAIRING),
                                    needed("laid", "laid_on", Kind.DAY),
                                    needed("species", "species", Kind.TEXT),
                                    NOTES),
                            List.of("season", "running")),
                    new PackageTable(
                            "eggs.csv",
                            "egg",
                            Optional.of(Kind.EGG),
                            List.of(
                                    needed("egg", "", Kind.NAME),
                                    needed("clutch", "clutch", Kind.CLUTCH),
                                    needed("number", "running", Kind.WHOLE),
                                    word("fate", "fate", "incubating", "slug", "lost", "hatched"),
                                    optional("box", "box", Kind.BOX),
                                    optional("date", "fated_on", Kind.DAY),
                                    text("finding", "finding"),
                                    text("lies", "lies")),
                            List.of("clutch", "running")),
                    new PackageTable(
                            "hatchlings.csv",
                            "hatchling",
                            Optional.empty(),
                            List.of(needed("egg", "egg", Kind.EGG), ANIMAL),
                            List.of("animal")),
                    new PackageTable(
                            "candlings.csv",
                            "candling",
                            Optional.empty(),
                            List.of(
                                    needed("egg", "egg", Kind.EGG),
                                    needed("date", "seen_on", Kind.DAY),
                                    word(
                                            "finding",
                                            "finding",
                                            "good",
                                            "no veins",
                                            "doubtful",
                                            "collapsed",
                                            "slug"),
                                    NOTES),
                            List.of()),
                    new PackageTable(
                            "egg-weighings.csv",
                            "egg_weighing",
                            Optional.empty(),
                            List.of(
                                    needed("egg", "egg", Kind.EGG),
                                    needed("date", "made_on", Kind.DAY),
                                    needed("grams", "grams", Kind.NUMBER)),
                            List.of()),
                    new PackageTable(
                            "prices.csv",
                            "price",
                            Optional.empty(),
                            List.of(
                                    needed("species", "species", Kind.TEXT),
                                    needed("genes", "genes", Kind.TEXT),
                                    word("sex", "sex", "any", "female", "male"),
                                    needed("price", "amount", Kind.AMOUNT),
                                    optional("sells", "sells", Kind.WHOLE),
                                    optional("later", "later", Kind.AMOUNT)),
                            List.of("species", "genes_key", "sex")),
                    new PackageTable(
                            "projects.csv",
                            "project",
                            Optional.of(Kind.PROJECT),
                            List.of(
                                    needed("project", "name", Kind.TEXT),
                                    needed("species", "species", Kind.TEXT),
                                    needed("goal", "goal", Kind.TEXT),
                                    word("told", "told", "by eye", "test clutch", "laboratory"),
                                    text("tested", "tested"),
                                    needed("test price", "test_price", Kind.AMOUNT),
                                    needed("clutches", "clutches", Kind.COUNT),
                                    needed("eggs", "eggs", Kind.WHOLE),
                                    needed("hatch rate", "hatch_rate", Kind.NUMBER),
                                    needed("male seasons", "male_seasons", Kind.WHOLE),
                                    needed("female seasons", "female_seasons", Kind.WHOLE),
                                    needed("confidence", "confidence", Kind.NUMBER),
                                    needed("seasons", "seasons", Kind.WHOLE),
                                    needed("clutch worth", "clutch_worth", Kind.AMOUNT),
                                    needed("least clutches", "least_clutches", Kind.COUNT),
                                    word("state", "state", "open", "done"),
                                    NOTES),
                            List.of("name_key")),
                    new PackageTable(
                            "purchases.csv",
                            "purchase",
                            Optional.empty(),
                            List.of(
                                    needed("project", "project", Kind.PROJECT),
                                    needed("genes", "genes", Kind.TEXT),
                                    word("sex", "sex", "female", "male"),
                                    needed("price", "amount", Kind.AMOUNT)),
                            List.of()),
                    new PackageTable(
                            "plan-words.csv",
                            "plan_word",
                            Optional.empty(),
                            List.of(
                                    needed("season", "season", Kind.WHOLE),
                                    needed("dam", "dam", Kind.ANIMAL),
                                    needed("sire", "sire", Kind.ANIMAL),
                                    word("word", "word", "pinned", "forbidden", "overruled"),
                                    text("reason", "reason")),
                            List.of("season", "dam", "sire", "word")),
                    new PackageTable(
                            "plans.csv",
                            "season_plan",
                            Optional.of(Kind.PLAN),
                            List.of(
                                    needed("plan", "", Kind.NAME),
                                    needed("season", "season", Kind.WHOLE),
                                    needed("name", "name", Kind.TEXT),
                                    needed("date", "made_on", Kind.DAY),
                                    needed("worth", "worth", Kind.SIGNED),
                                    needed("bound", "bound", Kind.SIGNED)),
                            List.of("season", "name_key")),
                    new PackageTable(
                            "plan-pairs.csv",
                            "season_plan_pair",
                            Optional.empty(),
                            List.of(
                                    needed("plan", "plan", Kind.PLAN),
                                    needed("dam", "dam", Kind.ANIMAL),
                                    needed("sire", "sire", Kind.ANIMAL)),
                            List.of("plan", "dam")));
}
