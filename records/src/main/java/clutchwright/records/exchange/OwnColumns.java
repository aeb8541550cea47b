package clutchwright.records.exchange;

import java.util.List;
import java.util.stream.Stream;

/// The columns of our own files, in their order.
final class OwnColumns {

    /// Those of the contract first, then those that only we have.
    static final List<Column> ANIMALS =
            List.of(
                    Column.TAG,
                    Column.NAME,
                    Column.SEX,
                    Column.HATCHED,
                    Column.SIRE,
                    Column.DAM,
                    Column.STATED,
                    Column.SHOWS,
                    Column.STATUS,
                    Column.SPECIES,
                    Column.ORIGIN,
                    Column.BREEDER,
                    Column.ACQUIRED,
                    Column.LINE,
                    Column.CREDIT,
                    Column.ROOM,
                    Column.RACK,
                    Column.TUB,
                    Column.SIRE_QUESTION,
                    Column.WITHOUT_SIRE,
                    Column.NOTES);

    static final List<String> HEADINGS = ANIMALS.stream().map(Column::label).toList();

    /// A hatching may be a year alone, so that even it is text.
    static final List<String> TYPES =
            ANIMALS.stream().map(column -> column == Column.ACQUIRED ? "date" : "string").toList();

    static final List<String> STATEMENTS =
            List.of("animal", "kind", "genes", "species", "date", "by", "source", "doubted");

    static final List<String> PLACES = List.of("room", "rack", "tub", "notes");

    static final List<String> PHOTOS = List.of("animal", "file", "added", "caption");

    static final List<String> EGG_PHOTOS = List.of("egg", "file", "added", "caption");

    private OwnColumns() {}

    static boolean are(List<String> headings) {
        return headings.equals(HEADINGS);
    }

    static Stream<String> files() {
        return Stream.concat(
                Stream.of(
                        "animals.csv",
                        "statements.csv",
                        "places.csv",
                        "photos.csv",
                        "egg-photos.csv"),
                PackageTable.ALL.stream().map(PackageTable::file));
    }
}
