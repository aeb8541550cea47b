package clutchwright.records.exchange;

import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/// Finds out in which order a file writes day and month.
///
/// @param order empty where nothing shows it
/// @param problems what stands against it, or how it was settled
record DateColumns(Optional<DateOrder> order, List<Problem> problems) {

    DateColumns {
        problems = List.copyOf(problems);
    }

    static DateColumns of(Sheet sheet, ColumnMatching matching, DateWords words, DateOrder choice) {
        var search = new Search();
        for (var column : List.of(Column.HATCHED, Column.ACQUIRED, Column.WEIGHED)) {
            matching.find(column)
                    .ifPresent(
                            at -> {
                                for (var row : sheet.rows()) {
                                    search.look(row.number(), at, row.cells().get(at), words);
                                }
                            });
        }
        return search.result(matching, choice);
    }

    private record Seen(int row, int column, String text) {}

    private static final class Search {

        private @Nullable Seen dayFirst;
        private @Nullable Seen monthFirst;
        private @Nullable Seen open;
        private int openCount;

        void look(int row, int column, String text, DateWords words) {
            var seen = new Seen(row, column, text.strip());
            switch (words.read(text)) {
                case DateReading.ProvesOrder(_, var order, _) -> {
                    if (order == DateOrder.DAY_FIRST) {
                        dayFirst = dayFirst == null ? seen : dayFirst;
                    } else {
                        monthFirst = monthFirst == null ? seen : monthFirst;
                    }
                }
                case DateReading.EitherOrder(var one, var other, _) -> {
                    if (!one.equals(other)) {
                        open = open == null ? seen : open;
                        openCount++;
                    }
                }
                case DateReading.Blank _,
                        DateReading.OnDay _,
                        DateReading.InYear _,
                        DateReading.NoSuchDay _,
                        DateReading.NotADate _ -> {}
            }
        }

        DateColumns result(ColumnMatching matching, DateOrder choice) {
            if (choice != DateOrder.AS_THE_FILE_SHOWS) {
                return new DateColumns(Optional.of(choice), List.of());
            }
            var problems = new ArrayList<Problem>();
            var day = dayFirst;
            var month = monthFirst;
            var first = open;
            if (day != null && month != null) {
                if (first != null) {
                    problems.add(
                            new Problem(
                                    column(matching, first),
                                    new Finding.DateOrderMixed(
                                            day.text(), day.row(), month.text(), month.row())));
                }
                return new DateColumns(Optional.empty(), problems);
            }
            if (first == null) {
                return new DateColumns(Optional.empty(), problems);
            }
            var proof = day != null ? day : month;
            if (proof == null) {
                problems.add(
                        new Problem(
                                column(matching, first),
                                new Finding.DateOrderUnknown(
                                        first.text(), first.row(), openCount)));
                return new DateColumns(Optional.empty(), problems);
            }
            var order = day != null ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST;
            problems.add(
                    new Problem(
                            column(matching, proof),
                            new Finding.DateOrderShown(order, proof.text(), proof.row())));
            return new DateColumns(Optional.of(order), problems);
        }

        private static Where column(ColumnMatching matching, Seen seen) {
            return new Where.WholeColumn(seen.column(), matching.headings().get(seen.column()));
        }
    }
}
