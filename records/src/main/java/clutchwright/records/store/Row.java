package clutchwright.records.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Optional;

/// One row of an answer, column by column. Good only while the answer is being read.
public final class Row {

    private final ResultSet answer;

    Row(ResultSet answer) {
        this.answer = answer;
    }

    public String text(String column) {
        return findText(column).orElseThrow(() -> empty(column));
    }

    public Optional<String> findText(String column) {
        return read(() -> Optional.ofNullable(answer.getString(column)));
    }

    public long number(String column) {
        return findNumber(column).orElseThrow(() -> empty(column));
    }

    public Optional<Long> findNumber(String column) {
        return read(
                () -> {
                    long found = answer.getLong(column);
                    return answer.wasNull() ? Optional.empty() : Optional.of(found);
                });
    }

    public double real(String column) {
        return findReal(column).orElseThrow(() -> empty(column));
    }

    public Optional<Double> findReal(String column) {
        return read(
                () -> {
                    double found = answer.getDouble(column);
                    return answer.wasNull() ? Optional.empty() : Optional.of(found);
                });
    }

    public boolean truth(String column) {
        return number(column) != 0;
    }

    public LocalDate day(String column) {
        return LocalDate.parse(text(column));
    }

    public Optional<LocalDate> findDay(String column) {
        return findText(column).map(LocalDate::parse);
    }

    /// The first column, whatever it is called.
    long onlyNumber() {
        return read(() -> answer.getLong(1));
    }

    private static IllegalStateException empty(String column) {
        return new IllegalStateException("column " + column + " is empty");
    }

    private static <T> T read(Reading<T> reading) {
        try {
            return reading.of();
        } catch (SQLException e) {
            throw new StoreFailure("a row cannot be read", e);
        }
    }

    @FunctionalInterface
    private interface Reading<T> {
        T of() throws SQLException;
    }
}
