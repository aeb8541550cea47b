package clutchwright.records.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/// The statements of one transaction, each prepared once: an import runs the same dozen many
/// thousand times.
final class Prepared implements AutoCloseable {

    private static final int BATCH = 1_000;

    private final Connection connection;
    private final Map<String, PreparedStatement> idle = new HashMap<>();

    Prepared(Connection connection) {
        this.connection = connection;
    }

    <T> List<T> list(
            Function<Row, T> each, String sql, List<? extends @Nullable Object> parameters) {
        return run(
                sql,
                parameters,
                statement -> {
                    var found = new ArrayList<T>();
                    try (var answer = statement.executeQuery()) {
                        var row = new Row(answer);
                        while (answer.next()) {
                            found.add(each.apply(row));
                        }
                    }
                    return found;
                });
    }

    /// Every column of the first row.
    Optional<Map<String, @Nullable Object>> first(
            String sql, List<? extends @Nullable Object> parameters) {
        return run(
                sql,
                parameters,
                statement -> {
                    try (var answer = statement.executeQuery()) {
                        return answer.next() ? Optional.of(columns(answer)) : Optional.empty();
                    }
                });
    }

    void update(String sql, List<? extends @Nullable Object> parameters) {
        int _ = run(sql, parameters, PreparedStatement::executeUpdate);
    }

    /// One statement for many rows of parameters.
    void all(String sql, List<List<Object>> rows) {
        try (var statement = connection.prepareStatement(sql)) {
            int held = 0;
            for (var row : rows) {
                for (int i = 0; i < row.size(); i++) {
                    statement.setObject(i + 1, row.get(i));
                }
                statement.addBatch();
                if (++held % BATCH == 0) {
                    statement.executeBatch();
                }
            }
            statement.executeBatch();
        } catch (SQLException e) {
            throw new StoreFailure("the database did not accept: " + sql, e);
        }
    }

    @Override
    public void close() {
        for (var statement : idle.values()) {
            try {
                statement.close();
            } catch (SQLException e) {
                throw new StoreFailure("a statement cannot be closed", e);
            }
        }
        idle.clear();
    }

    private <R> R run(String sql, List<? extends @Nullable Object> parameters, Step<R> step) {
        try {
            // Taken out while it runs: what reads a row may ask the same question again.
            var kept = idle.remove(sql);
            var statement = kept == null ? connection.prepareStatement(sql) : kept;
            boolean ended = false;
            try {
                for (int i = 0; i < parameters.size(); i++) {
                    statement.setObject(i + 1, parameters.get(i));
                }
                var result = step.of(statement);
                ended = true;
                return result;
            } finally {
                var other = ended ? idle.put(sql, statement) : statement;
                if (other != null) {
                    other.close();
                }
            }
        } catch (SQLException e) {
            throw new StoreFailure("the database did not accept: " + sql, e);
        }
    }

    private static Map<String, @Nullable Object> columns(ResultSet answer) throws SQLException {
        var names = answer.getMetaData();
        var found = new LinkedHashMap<String, @Nullable Object>();
        for (int i = 1; i <= names.getColumnCount(); i++) {
            found.put(names.getColumnName(i), answer.getObject(i));
        }
        return found;
    }

    @FunctionalInterface
    private interface Step<R> {
        R of(PreparedStatement statement) throws SQLException;
    }
}
