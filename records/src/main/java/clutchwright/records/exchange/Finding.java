package clutchwright.records.exchange;

import static clutchwright.records.exchange.Problem.Remedy.CHOOSE_DATE_ORDER;
import static clutchwright.records.exchange.Problem.Remedy.CORRECT_THE_FILE;
import static clutchwright.records.exchange.Problem.Remedy.CREATE_UNKNOWN_PARENTS;
import static clutchwright.records.exchange.Problem.Remedy.KEEP_UNKNOWN_PARENTS_AS_NOTES;
import static clutchwright.records.exchange.Problem.Remedy.MATCH_COLUMNS;
import static clutchwright.records.exchange.Problem.Remedy.SKIP_IDENTICAL;
import static clutchwright.records.exchange.Problem.Remedy.UPDATE_EXISTING;

import clutchwright.engine.catalogue.CatalogueText;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.Problem.Remedy;
import clutchwright.records.exchange.Problem.Severity;
import clutchwright.records.exchange.sheets.FileFault;
import clutchwright.records.exchange.sheets.SheetRemark;
import java.time.LocalDate;
import java.util.List;

/// What was found in a file that is to be imported.
///
/// `Stops` must be resolved before anything is imported; `Note` tells how something was taken.
public sealed interface Finding {

    Severity severity();

    List<Remedy> remedies();

    /// Something that stands against the import.
    sealed interface Stops extends Finding {

        @Override
        default Severity severity() {
            return Severity.STOPS;
        }

        @Override
        default List<Remedy> remedies() {
            return switch (this) {
                case Unreadable _,
                        TagMissing _,
                        TagTwice _,
                        TooLong _,
                        UnknownSex _,
                        UnreadableDate _,
                        NoSuchDay _,
                        InTheFuture _,
                        ParentNotClear _,
                        DamInDoubt _,
                        BadWeights _,
                        OwnAncestor _,
                        WrongSex _,
                        UsedAsBoth _,
                        DamIsSire _,
                        HatchedBeforeParent _,
                        GenesUnclear _,
                        SexContradicted _,
                        SeveralAnimals _,
                        BadNumber _,
                        NotInList _,
                        MissingReference _,
                        OwnGenesFaulty _,
                        Refused _ ->
                        List.of(CORRECT_THE_FILE);
                case NoTagColumn _ -> List.of(MATCH_COLUMNS);
                case CellsBeyondHeader _ -> List.of(CORRECT_THE_FILE);
                case UnknownStatus _, UnknownSpecies _ -> List.of(CORRECT_THE_FILE, MATCH_COLUMNS);
                case DateOrderUnknown _ -> List.of(CHOOSE_DATE_ORDER);
                case DateOrderMixed _ -> List.of(CORRECT_THE_FILE, CHOOSE_DATE_ORDER);
                case ParentUnknown _ ->
                        List.of(
                                CORRECT_THE_FILE,
                                CREATE_UNKNOWN_PARENTS,
                                KEEP_UNKNOWN_PARENTS_AS_NOTES);
                case OnRecord(_, var identical, _) ->
                        identical
                                ? List.of(SKIP_IDENTICAL, UPDATE_EXISTING)
                                : List.of(UPDATE_EXISTING, CORRECT_THE_FILE);
            };
        }
    }

    /// Something worth knowing.
    sealed interface Note extends Finding {

        @Override
        default Severity severity() {
            return Severity.NOTE;
        }

        @Override
        default List<Remedy> remedies() {
            return List.of();
        }
    }

    /// The file is no table that can be read.
    record Unreadable(FileFault fault) implements Stops {}

    record NoTagColumn(List<String> headings) implements Stops {

        public NoTagColumn {
            headings = List.copyOf(headings);
        }
    }

    record TagMissing() implements Stops {}

    /// @param firstRow the row in which the tag stands first
    record TagTwice(String tag, int firstRow) implements Stops {}

    /// An animal of that tag is on record, and the choice was to refuse such rows.
    ///
    /// @param identical whether the file says nothing else than the record
    /// @param differing the columns in which they differ
    record OnRecord(String tag, boolean identical, List<Column> differing) implements Stops {

        public OnRecord {
            differing = List.copyOf(differing);
        }
    }

    record TooLong(Column column, int length, int limit) implements Stops {}

    record CellsBeyondHeader(int found, int expected, List<String> surplus) implements Stops {

        public CellsBeyondHeader {
            surplus = List.copyOf(surplus);
        }
    }

    record UnknownSex(String found, List<String> expected) implements Stops {

        public UnknownSex {
            expected = List.copyOf(expected);
        }
    }

    record UnreadableDate(String found) implements Stops {}

    /// A day of no calendar, such as 31/02/2021.
    record NoSuchDay(String found) implements Stops {}

    record InTheFuture(LocalDate found, LocalDate today) implements Stops {}

    /// Dates of this column can be read in two ways, and none of them shows which is meant.
    ///
    /// @param example the first of them
    /// @param count how many there are
    record DateOrderUnknown(String example, int exampleRow, int count) implements Stops {}

    /// Some dates of this column can only have the day first, others only the month.
    record DateOrderMixed(String dayFirst, int dayFirstRow, String monthFirst, int monthFirstRow)
            implements Stops {}

    /// Neither in the file nor on record.
    ///
    /// @param nearest tags and names that are close to it, nearest first
    record ParentUnknown(Parent as, String found, List<String> nearest) implements Stops {

        public ParentUnknown {
            nearest = List.copyOf(nearest);
        }
    }

    /// A name that several animals have.
    ///
    /// @param tags of all of them
    record ParentNotClear(Parent as, String found, List<String> tags) implements Stops {

        public ParentNotClear {
            tags = List.copyOf(tags);
        }
    }

    record DamInDoubt(String found) implements Stops {}

    /// The weights of the candidate sires are not all numbers above zero.
    record BadWeights(String found) implements Stops {}

    /// @param circle tags, from the animal through its ancestors back to itself
    record OwnAncestor(List<String> circle) implements Stops {

        public OwnAncestor {
            circle = List.copyOf(circle);
        }
    }

    record WrongSex(Parent as, String parent, Sex recorded) implements Stops {}

    /// An animal without a sex that is a dam in one row and a sire in another.
    record UsedAsBoth(String parent, int asDamRow, int asSireRow) implements Stops {}

    record DamIsSire(String parent) implements Stops {}

    /// @param young  when the young hatched, ISO date or year
    /// @param parentHatched when the parent hatched, ISO date or year
    record HatchedBeforeParent(Parent as, String young, String parent, String parentHatched)
            implements Stops {}

    /// @param line the whole line that was read, joined from several cells where there are several
    record GenesUnclear(String line, Reading.Fault fault) implements Stops {}

    /// The sex column says another sex than the gene line.
    record SexContradicted(Sex inColumn, Sex inLine) implements Stops {}

    /// A gene line that speaks of more than one animal.
    record SeveralAnimals(String line, Genes.Group group) implements Stops {}

    record UnknownStatus(String found, List<String> expected) implements Stops {

        public UnknownStatus {
            expected = List.copyOf(expected);
        }
    }

    record UnknownSpecies(String found, List<String> expected) implements Stops {

        public UnknownSpecies {
            expected = List.copyOf(expected);
        }
    }

    /// Not a number, or not above zero.
    record BadNumber(Column column, String found) implements Stops {}

    /// A word where only some words may stand, in a file of an open package.
    record NotInList(String field, String found, List<String> expected) implements Stops {

        public NotInList {
            expected = List.copyOf(expected);
        }
    }

    /// A file of an open package names something that is not there.
    record MissingReference(String field, String found) implements Stops {}

    /// A gene of the keeper's own that the catalogue cannot read.
    record OwnGenesFaulty(CatalogueText.Fault fault) implements Stops {}

    /// The records themselves refused it.
    record Refused(clutchwright.records.checks.Problem problem) implements Stops {}

    /// Something peculiar about the file.
    record Peculiar(SheetRemark remark) implements Note {}

    /// An animal without a sex is a parent in this part, so it has that sex.
    record SexFromParenthood(String tag, Sex sex, Parent as) implements Note {}

    record SexFromLine(Sex sex) implements Note {}

    /// `1` in a column where others have `0.1`: what a spreadsheet makes of `1.0`.
    record OneIsMale() implements Note {}

    /// Only the year of what was written could be kept.
    record OnlyYear(String found, int year) implements Note {}

    record SerialDate(String found, LocalDate day) implements Note {}

    record ShortYear(String found, LocalDate day) implements Note {}

    /// @param provedBy the cell that settles it
    record DateOrderShown(DateOrder order, String provedBy, int row) implements Note {}

    /// Longer ago than a snake lives.
    record LongAgo(LocalDate found) implements Note {}

    /// A gene line of an open package that cannot be understood here: kept as it is written.
    record KeptUnread(String line) implements Note {}

    record GenesNoted(String line, Reading.Note note) implements Note {}

    /// A parent was found by its name.
    record ParentByName(Parent as, String found, String tag) implements Note {}

    /// A question mark after a single parent; the parent is taken, the doubt kept in the notes.
    record ParentDoubted(Parent as, String found) implements Note {}

    /// A parent that is nowhere on record will be made, with nothing known but its tag.
    record ParentToBeCreated(Parent as, String tag) implements Note {}

    record ParentKeptAsNote(Parent as, String found) implements Note {}

    record SkippedIdentical(String tag) implements Note {}

    record Updates(String tag, List<Column> differing) implements Note {

        public Updates {
            differing = List.copyOf(differing);
        }
    }

    /// A weight without a date of its own counts as of today.
    record WeightUndated(LocalDate taken) implements Note {}

    /// No column of ours: kept in the notes under its heading.
    record KeptInNotes() implements Note {}

    /// A word about the origin that is none of ours was kept as it stands.
    record OriginKept(String found) implements Note {}
}
