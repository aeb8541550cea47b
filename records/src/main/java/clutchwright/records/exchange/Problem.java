package clutchwright.records.exchange;

import java.util.List;

/// One thing about a file that the keeper should know before it is imported.
public record Problem(Where where, Finding finding) {

    public Severity severity() {
        return finding.severity();
    }

    public List<Remedy> remedies() {
        return finding.remedies();
    }

    public boolean stops() {
        return severity() == Severity.STOPS;
    }

    public enum Severity {
        /// Nothing can be imported while it stands.
        STOPS,
        /// Worth knowing; the import goes on.
        NOTE
    }

    /// To which part of a file a problem belongs. Rows are counted from 1, as in the file.
    public sealed interface Where {

        /// @param column counted from 0
        /// @param heading as in the file
        record Cell(int row, int column, String heading) implements Where {}

        record WholeRow(int row) implements Where {}

        /// @param column counted from 0
        record WholeColumn(int column, String heading) implements Where {}

        record WholeFile() implements Where {}

        /// Another file of an open package.
        ///
        /// @param row counted from 1; the header is row 1
        record OtherFile(String file, int row) implements Where {}
    }

    /// What the keeper can do about it.
    public enum Remedy {
        CORRECT_THE_FILE,
        MATCH_COLUMNS,
        CHOOSE_DATE_ORDER,
        CREATE_UNKNOWN_PARENTS,
        KEEP_UNKNOWN_PARENTS_AS_NOTES,
        SKIP_IDENTICAL,
        UPDATE_EXISTING
    }
}
