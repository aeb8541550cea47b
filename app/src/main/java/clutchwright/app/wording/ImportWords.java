package clutchwright.app.wording;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.checks.Parent;
import clutchwright.records.exchange.Column;
import clutchwright.records.exchange.DateOrder;
import clutchwright.records.exchange.Finding;
import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/// What was found in a file that is to be imported, as sentences.
///
/// @param records words for what the records themselves refuse
public record ImportWords(ProblemWords records, Formats formats) {

    /// One sentence that says what is wrong or how it was taken, and what was expected.
    public String of(Finding finding) {
        return switch (finding) {
            case Finding.Stops stops -> stop(stops);
            case Finding.Note note -> note(note);
        };
    }

    /// Where it stands: `row 7, column “Sire”`.
    public String of(Problem.Where where) {
        return switch (where) {
            case Problem.Where.Cell(var row, _, var heading) ->
                    "row %d, column “%s”".formatted(row, heading);
            case Problem.Where.WholeRow(var row) -> "row %d".formatted(row);
            case Problem.Where.WholeColumn(_, var heading) -> "column “%s”".formatted(heading);
            case Problem.Where.WholeFile() -> "the file";
            case Problem.Where.OtherFile(var file, var row) -> "%s, row %d".formatted(file, row);
        };
    }

    /// What to do about it, as an invitation.
    public String of(Problem.Remedy remedy) {
        return switch (remedy) {
            case CORRECT_THE_FILE -> "Correct the file and choose it again.";
            case MATCH_COLUMNS -> "Say what each column holds.";
            case CHOOSE_DATE_ORDER -> "Choose whether the day or the month comes first.";
            case CREATE_UNKNOWN_PARENTS ->
                    "Let such parents be made as animals of which no more is known.";
            case KEEP_UNKNOWN_PARENTS_AS_NOTES -> "Let such parents be kept in the notes.";
            case SKIP_IDENTICAL -> "Let rows that say nothing new be passed over.";
            case UPDATE_EXISTING -> "Let the file change what is on record.";
        };
    }

    /// What came in: `From animals.csv: 300 animals added and 2 passed over.`
    public String broughtIn(String file, ImportOutcome.Applied counts) {
        return "From %s: %s.".formatted(file, counted(counts));
    }

    /// What would come in, before anything is written.
    public String wouldComeIn(ImportOutcome.Applied counts) {
        return "It would be: %s. Nothing is changed yet.".formatted(counted(counts));
    }

    private String counted(ImportOutcome.Applied counts) {
        var said = new ArrayList<String>();
        said.add(formats.count(counts.added(), "animal", "animals") + " added");
        if (counts.updated() > 0) {
            said.add(formats.whole(counts.updated()) + " changed");
        }
        if (counts.skipped() > 0) {
            said.add(formats.whole(counts.skipped()) + " passed over");
        }
        return formats.list(said);
    }

    private String stop(Finding.Stops finding) {
        return switch (finding) {
            case Finding.Unreadable(var fault) -> FileWords.of(fault, formats);
            case Finding.NoTagColumn(var headings) ->
                    "No column holds the animals’ tags. There are: %s."
                            .formatted(formats.list(headings));
            case Finding.TagMissing() -> "The tag is missing: every animal needs one of its own.";
            case Finding.TagTwice(var tag, var row) ->
                    "The tag “%s” stands in row %d already.".formatted(tag, row);
            case Finding.OnRecord(var tag, var identical, var differing) ->
                    identical
                            ? "%s is on record already, with nothing that differs.".formatted(tag)
                            : "%s is on record already%s."
                                    .formatted(
                                            tag,
                                            differing.isEmpty()
                                                    ? " and differs"
                                                    : "; the file differs in "
                                                            + columns(differing));
            case Finding.TooLong(var column, var length, var limit) ->
                    "“%s” has %s characters: at most %s fit."
                            .formatted(column.label(), formats.whole(length), formats.whole(limit));
            case Finding.CellsBeyondHeader(var found, var expected, var surplus) ->
                    "The row has %d cells under %d headings; beyond them stands “%s”. Perhaps a separator is missing its quotes."
                            .formatted(found, expected, String.join(" ", surplus));
            case Finding.UnknownSex(var found, var expected) ->
                    "“%s” is no sex: write %s, or leave it blank."
                            .formatted(found, alternatives(expected));
            case Finding.UnreadableDate(var found) ->
                    "“%s” is no date: 2021-03-04 was expected, or a year.".formatted(found);
            case Finding.NoSuchDay(var found) -> "There is no such day as %s.".formatted(found);
            case Finding.InTheFuture(var found, var today) ->
                    "%s is still to come; today is %s."
                            .formatted(formats.date(found), formats.date(today));
            case Finding.DateOrderUnknown(var example, var row, var count) ->
                    "Does the day or the month come first? “%s” in row %d and %s can be read both ways."
                            .formatted(example, row, formats.count(count - 1, "other", "others"));
            case Finding.DateOrderMixed(var day, var dayRow, var month, var monthRow) ->
                    "The day comes first in “%s” (row %d), the month in “%s” (row %d); dates that fit both cannot be told."
                            .formatted(day, dayRow, month, monthRow);
            case Finding.ParentUnknown(var as, var found, var nearest) ->
                    "The %s “%s” is neither in the file nor on record%s."
                            .formatted(word(as), found, perhaps(nearest));
            case Finding.ParentNotClear(var as, var found, var tags) ->
                    "Several animals are called “%s”: write the tag of the %s, %s."
                            .formatted(found, word(as), alternatives(tags));
            case Finding.DamInDoubt(var found) ->
                    "“%s” names more than one dam: only a sire can be in doubt.".formatted(found);
            case Finding.BadWeights(var found) ->
                    "“%s”: give every sire a weight above 0, as in M1:0.7|M2:0.3, or none."
                            .formatted(found);
            case Finding.OwnAncestor(var circle) ->
                    "%s would be its own ancestor: %s."
                            .formatted(circle.getFirst(), String.join(" ← ", circle));
            case Finding.WrongSex(_, var parent, var sex) ->
                    switch (sex) {
                        case MALE -> "%s is a male, so he cannot be the dam.".formatted(parent);
                        case FEMALE ->
                                "%s is a female, so she cannot be the sire.".formatted(parent);
                    };
            case Finding.UsedAsBoth(var parent, var dam, var sire) ->
                    "%s is the dam in row %d and the sire in row %d.".formatted(parent, dam, sire);
            case Finding.DamIsSire(var parent) ->
                    "%s is named as dam and as sire.".formatted(parent);
            case Finding.HatchedBeforeParent(var as, var young, var parent, var hatched) ->
                    "It hatched %s, its %s %s only %s.".formatted(young, word(as), parent, hatched);
            case Finding.GenesUnclear(var line, var fault) ->
                    "“%s”: %s".formatted(line, ReadingWords.of(fault));
            case Finding.SexContradicted(var column, var line) ->
                    "The column of the sex says %s, the gene line %s."
                            .formatted(word(column), word(line));
            case Finding.SeveralAnimals(var line, var group) ->
                    "“%s” speaks of %d.%d.%d animals: one row is one animal."
                            .formatted(line, group.males(), group.females(), group.unsexed());
            case Finding.UnknownStatus(var found, var expected) ->
                    "“%s” is no status: write %s.".formatted(found, alternatives(expected));
            case Finding.UnknownSpecies(var found, var expected) ->
                    "There is no catalogue of “%s”: write %s."
                            .formatted(found, alternatives(expected));
            case Finding.BadNumber(_, var found) -> "“%s” is no number above 0.".formatted(found);
            case Finding.NotInList(var field, var found, var expected) ->
                    expected.isEmpty()
                            ? "“%s” cannot stand under “%s”.".formatted(found, field)
                            : "“%s” cannot stand under “%s”: write %s."
                                    .formatted(found, field, alternatives(expected));
            case Finding.MissingReference(var field, var found) ->
                    "There is no %s “%s”.".formatted(field, found);
            case Finding.OwnGenesFaulty(var fault) ->
                    "Line %d of the genes: found %s, expected %s."
                            .formatted(fault.line(), fault.found(), fault.expected());
            case Finding.Refused(var problem) -> records.of(problem);
        };
    }

    private String note(Finding.Note finding) {
        return switch (finding) {
            case Finding.Peculiar(var remark) -> FileWords.of(remark);
            case Finding.SexFromParenthood(var tag, var sex, var as) ->
                    "%s is a %s, so it is taken for a %s.".formatted(tag, word(as), word(sex));
            case Finding.SexFromLine(var sex) ->
                    "The gene line says that it is a %s.".formatted(word(sex));
            case Finding.OneIsMale() -> "“1” is taken for 1.0, a male.";
            case Finding.OnlyYear(var found, var year) ->
                    "Of “%s” the year %d is taken, the words go to the notes."
                            .formatted(found, year);
            case Finding.SerialDate(var found, var day) ->
                    "“%s” is taken for a spreadsheet’s number of %s."
                            .formatted(found, formats.date(day));
            case Finding.ShortYear(var found, var day) ->
                    "“%s” is taken for %s.".formatted(found, formats.date(day));
            case Finding.DateOrderShown(var order, var proof, var row) ->
                    "%s, as “%s” in row %d shows."
                            .formatted(
                                    order == DateOrder.DAY_FIRST
                                            ? "The day comes first"
                                            : "The month comes first",
                                    proof,
                                    row);
            case Finding.LongAgo(var found) ->
                    "%s is longer ago than a snake lives.".formatted(formats.date(found));
            case Finding.KeptUnread(var line) ->
                    "“%s” is not understood here and kept as it stands.".formatted(line);
            case Finding.GenesNoted(var line, var note) ->
                    "“%s”: %s".formatted(line, ReadingWords.of(note));
            case Finding.ParentByName(var as, var found, var tag) ->
                    "The %s “%s” is %s.".formatted(word(as), found, tag);
            case Finding.ParentDoubted(var as, var found) ->
                    "The %s “%s” is taken; the doubt goes to the notes.".formatted(word(as), found);
            case Finding.ParentToBeCreated(var as, var tag) ->
                    "The %s %s will be made, with nothing else known of it."
                            .formatted(word(as), tag);
            case Finding.ParentKeptAsNote(var as, var found) ->
                    "The %s “%s” goes to the notes.".formatted(word(as), found);
            case Finding.SkippedIdentical(var tag) ->
                    "%s is on record as it stands here and is passed over.".formatted(tag);
            case Finding.Updates(var tag, var differing) ->
                    "%s will be changed in %s.".formatted(tag, columns(differing));
            case Finding.WeightUndated(var taken) ->
                    "The weight has no date; it counts as of %s.".formatted(formats.date(taken));
            case Finding.KeptInNotes() -> "Goes to the notes, under its heading.";
            case Finding.OriginKept(var found) ->
                    "“%s” is no origin that is known here and goes to the notes.".formatted(found);
        };
    }

    private String columns(List<Column> columns) {
        return formats.list(columns.stream().map(Column::label).toList());
    }

    private static String alternatives(List<String> words) {
        return words.stream().map("“%s”"::formatted).collect(Collectors.joining(" or "));
    }

    private static String perhaps(List<String> nearest) {
        return nearest.isEmpty() ? "" : "; perhaps " + alternatives(nearest);
    }

    private static String word(Parent as) {
        return switch (as) {
            case DAM -> "dam";
            case SIRE -> "sire";
        };
    }

    private static String word(Sex sex) {
        return switch (sex) {
            case FEMALE -> "female";
            case MALE -> "male";
        };
    }
}
