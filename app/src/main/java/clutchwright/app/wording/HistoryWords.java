package clutchwright.app.wording;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Origin;
import clutchwright.records.animals.Status;
import clutchwright.records.clutches.Candling;
import clutchwright.records.journal.Entry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.LongFunction;

/// What the journal holds of one row, for a keeper to read.
///
/// @param tags the tag of an animal
/// @param places the name of a tub's place
public record HistoryWords(
        Function<AnimalId, String> tags, LongFunction<String> places, Formats formats) {

    /// What is kept beside the words of a person, and says nothing to one.
    private static final Set<String> SILENT =
            Set.of(
                    "tag_key",
                    "name_key",
                    "label_key",
                    "animal",
                    "genes",
                    "canonical",
                    "kind",
                    "digest",
                    "width",
                    "height",
                    "sire_question",
                    "without_sire",
                    "egg",
                    "clutch",
                    "pairing",
                    "box",
                    "rack",
                    "room",
                    "genes_key",
                    "project",
                    "plan");

    /// One thing that became different.
    ///
    /// @param before blank where there was nothing
    /// @param after blank where there is nothing any more
    public record Difference(String what, String before, String after) {}

    /// What became different in the row, column by column; nothing of what is kept for speed.
    public List<Difference> differences(Entry entry) {
        var found = new ArrayList<Difference>();
        entry.columns()
                .forEach(
                        (column, values) -> {
                            var before = value(entry, column, values.before());
                            var after = value(entry, column, values.after());
                            if (!SILENT.contains(column) && !before.equals(after)) {
                                found.add(new Difference(label(entry, column), before, after));
                            }
                        });
        return found;
    }

    /// What the row is: `animal D-30`, `meal of D-30`, `clutch`.
    public String subject(Entry entry) {
        var noun =
                switch (entry.table()) {
                    case "statement" -> "genes";
                    case "sign_seen" -> "sign " + kindOf(entry);
                    case "sire_candidate" -> "possible sire";
                    case "health_note" -> "health note";
                    case "overlay_entry" -> "own gene";
                    case "plan_word" -> "word on a pair";
                    case "season_plan" -> "season's plan";
                    case "season_plan_pair" -> "pair of a plan";
                    case "purchase" -> "animal to buy";
                    default -> entry.table();
                };
        if (entry.table().equals("animal")) {
            return "animal " + tagOf(entry);
        }
        return entry.animal().map(tags).map(tag -> noun + " of " + tag).orElse(noun).strip();
    }

    /// An animal that is gone again is called as the row itself says.
    private String tagOf(Entry entry) {
        var own = Optional.ofNullable(entry.columns().get("tag"));
        return own.flatMap(value -> value.after().or(value::before))
                .orElseGet(() -> entry.animal().map(tags).orElse(""));
    }

    private static String kindOf(Entry entry) {
        return Optional.ofNullable(entry.columns().get("kind"))
                .flatMap(value -> value.after().or(value::before))
                .map(kind -> kind.toLowerCase(Locale.ROOT).replace('_', ' '))
                .orElse("");
    }

    private String value(Entry entry, String column, Optional<String> text) {
        if (text.isEmpty() || text.get().isBlank()) {
            return "";
        }
        var held = text.get();
        return switch (column) {
            case "dam", "sire", "candidate" -> tags.apply(new AnimalId(Long.parseLong(held)));
            case "place" ->
                    entry.table().equals("animal") ? places.apply(Long.parseLong(held)) : held;
            case "sex" -> held.toLowerCase(Locale.ROOT);
            case "status" -> AnimalWords.status(Status.valueOf(held));
            case "origin" -> AnimalWords.origin(Origin.How.valueOf(held));
            case "grams" -> formats.weight(Double.parseDouble(held));
            case "taken", "complete", "doubted" -> held.equals("1") ? "yes" : "no";
            case "state", "fate", "told", "word" -> held.toLowerCase(Locale.ROOT).replace('_', ' ');
            case "finding" ->
                    entry.table().equals("candling")
                            ? CandlingWords.of(Candling.Finding.valueOf(held))
                            : held;
            case "hatched",
                    "made_on",
                    "acquired",
                    "added_on",
                    "laid_on",
                    "seen_on",
                    "fated_on",
                    "put_together",
                    "separated" ->
                    held.length() == 10 ? formats.date(LocalDate.parse(held)) : held;
            default -> held;
        };
    }

    private static String label(Entry entry, String column) {
        return switch (column) {
            case "origin_from" -> "from";
            case "acquired" -> "came on";
            case "written" -> "genes";
            case "made_on", "added_on", "seen_on", "fated_on" -> "day";
            case "laid_on" -> "laid";
            case "put_together" -> "put together";
            case "running" -> "number";
            case "held" -> "set to";
            case "made_by" -> "by";
            case "grams" -> "weight";
            case "complete" -> "in one piece";
            case "doubted" -> "in doubt";
            case "candidate" -> "may be the sire";
            case "place" -> entry.table().equals("animal") ? "place" : "order";
            case "amount" -> "price";
            case "later" -> "later price";
            case "sells" -> "sell a year";
            case "told" -> "hets are told";
            case "test_price" -> "price of a test";
            case "clutch_worth" -> "worth of a clutch";
            case "least_clutches" -> "least clutches";
            default -> column.replace('_', ' ');
        };
    }
}
