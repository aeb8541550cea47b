package clutchwright.records.exchange;

import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.statements.Witness;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// One row of `statements.csv`: somebody said or saw something of an animal.
///
/// @param animal its tag
/// @param genes  as they are written
/// @param doubted whether the keeper was not sure of what was seen
record StatementRow(
        Problem.Where where,
        String animal,
        Kind kind,
        String species,
        String genes,
        Witness witness,
        boolean doubted) {

    enum Kind {
        CLAIM,
        SIGHTING
    }

    /// @param problems where what is wrong is put
    static List<StatementRow> all(Sheet sheet, List<Problem> problems) {
        var rows = new ArrayList<StatementRow>();
        RowByHeading.all(sheet).forEach(row -> read(row, problems).ifPresent(rows::add));
        return rows;
    }

    private static Optional<StatementRow> read(RowByHeading row, List<Problem> problems) {
        var kind = kind(row, problems);
        var day = day(row, "date", problems);
        if (kind.isEmpty() || day.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new StatementRow(
                        row.where(),
                        row.get("animal"),
                        kind.get(),
                        row.get("species"),
                        row.get("genes"),
                        new Witness(day.get(), row.get("by"), row.get("source")),
                        row.get("doubted").equals("yes")));
    }

    private static Optional<Kind> kind(RowByHeading row, List<Problem> problems) {
        return switch (row.get("kind")) {
            case "claim" -> Optional.of(Kind.CLAIM);
            case "sighting" -> Optional.of(Kind.SIGHTING);
            default -> {
                problems.add(
                        new Problem(
                                row.where(),
                                new Finding.NotInList(
                                        "kind", row.get("kind"), List.of("claim", "sighting"))));
                yield Optional.empty();
            }
        };
    }

    /// Empty within, if there is none; empty at all, if it is none.
    static Optional<Optional<LocalDate>> day(
            RowByHeading row, String heading, List<Problem> problems) {
        var text = row.get(heading).strip();
        if (text.isEmpty()) {
            return Optional.of(Optional.empty());
        }
        try {
            return Optional.of(Optional.of(LocalDate.parse(text)));
        } catch (DateTimeParseException noDay) {
            problems.add(new Problem(row.where(), new Finding.UnreadableDate(text)));
            return Optional.empty();
        }
    }
}
