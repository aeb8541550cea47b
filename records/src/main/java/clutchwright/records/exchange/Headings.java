package clutchwright.records.exchange;

import clutchwright.records.exchange.sheets.HeaderSense;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/// The words with which breeders head their columns, and what such a column holds.
final class Headings implements HeaderSense {

    static final Headings KNOWN = new Headings();

    private static final Pattern CHANCE = Pattern.compile("(\\d{1,3})\\s*%");
    private static final Pattern MARKS = Pattern.compile("[^\\p{L}\\p{N}#%]+");
    private static final Pattern NUMBERED = Pattern.compile("(.*?) ?\\d{1,2}");

    private final Map<String, Column> words = new LinkedHashMap<>();

    private Headings() {
        know(
                Column.TAG,
                "tag, id, animal id, id number, animal, animal tag, #, no, nr, number, snake id, "
                        + "ref, reference, code, identifier, ident, snake, snake number");
        know(Column.NAME, "name, animal name, call name, nickname, called");
        know(Column.SEX, "sex, gender, m f, sexed, male female");
        know(
                Column.HATCHED,
                "hatched, hatch date, date hatched, hatch, hatchdate, dob, date of birth, born, "
                        + "birth date, birthdate, birthday, hatched on, hatch year, year, "
                        + "year of birth, born on, year hatched");
        know(Column.SIRE, "sire, father, sire id, father id, dad, sire tag, male parent, sired by");
        know(Column.DAM, "dam, mother, dam id, mother id, mum, mom, dam tag, female parent");
        know(
                Column.STATED,
                "stated, genetics, genes, gene, morph, morphs, traits, trait, genotype, visual, "
                        + "visuals, visual genes, visual traits, description, mutation, "
                        + "mutations, gene line, visual morph, co dom, codom, recessive, "
                        + "dominant");
        know(
                Column.HETS,
                "hets, het, het genes, carries, 100% het, 100% hets, het for, recessive hets, "
                        + "definite hets");
        know(
                Column.POSSIBLE_HETS,
                "possible hets, poss hets, pos hets, possible het, poss het, ph, may carry, "
                        + "50% het, 50% hets, 66% het, 66% hets, 33% het, 33% hets, 25% het, "
                        + "25% hets, 66% ph, 50% ph");
        know(Column.SHOWS, "shows, seen, observed, looks like, sighting");
        know(Column.STATUS, "status, state, availability, disposition");
        know(Column.SPECIES, "species, latin name");
        know(Column.ROOM, "room");
        know(Column.RACK, "rack");
        know(Column.TUB, "tub, tub number, tub no, enclosure, bin, drawer");
        know(Column.PLACE, "place, location, housing, rack tub, housed in, where");
        know(
                Column.WEIGHT,
                "weight, weight g, weight grams, grams, g, last weight, latest weight, "
                        + "current weight, weight gr, weight in grams");
        know(Column.WEIGHED, "weighed, weighed on, weight date, date weighed, last weighed");
        know(Column.ORIGIN, "origin, source, cb wc, captive bred");
        know(
                Column.BREEDER,
                "from, breeder, bred by, bought from, purchased from, seller, acquired from, "
                        + "produced by");
        know(Column.CREDIT, "credit, line breeder, credit to");
        know(Column.LINE, "line, lineage, bloodline, line name");
        know(
                Column.ACQUIRED,
                "acquired, date acquired, bought, purchased, purchase date, bought on, "
                        + "acquired on");
        know(Column.SIRE_QUESTION, "sire question");
        know(Column.WITHOUT_SIRE, "without sire, parthenogenetic");
        know(Column.NOTES, "notes, note, comment, comments, remarks, remark");
    }

    private void know(Column column, String headings) {
        for (var heading : headings.split(", ", -1)) {
            words.put(heading, column);
        }
    }

    /// What a column so headed holds; empty if the words say nothing to us.
    Optional<Column> find(String heading) {
        var key = key(heading);
        var found = words.get(key);
        if (found == null) {
            var numbered = NUMBERED.matcher(key);
            if (numbered.matches()) {
                found = words.get(numbered.group(1));
                // "Gene 2" continues the genes; "Sire 2" is another matter than the sire.
                if (found != null && !found.mayRepeat()) {
                    return Optional.empty();
                }
            }
        }
        return Optional.ofNullable(found);
    }

    @Override
    public boolean isColumnName(String text) {
        return text.length() < 60 && find(text).isPresent();
    }

    /// The chance that a heading such as `66% het` gives to the genes under it, as written.
    static Optional<String> chanceIn(String heading) {
        var match = CHANCE.matcher(heading);
        return match.find() ? Optional.of(match.group(1) + "%") : Optional.empty();
    }

    static String key(String heading) {
        return MARKS.matcher(heading.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    static List<String> keys(List<String> headings) {
        return headings.stream().map(Headings::key).toList();
    }
}
