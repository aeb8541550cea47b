package clutchwright.records.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// Which rows point at a row, as the foreign keys say.
final class Pointers {

    private final Connection connection;
    private final Prepared prepared;
    private final Map<String, List<Key>> keysTo = new HashMap<>();

    Pointers(Connection connection, Prepared prepared) {
        this.connection = connection;
        this.prepared = prepared;
    }

    List<Transaction.Pointing> at(String table, long id) {
        return keysTo.computeIfAbsent(table, this::keysTo).stream()
                .map(key -> new Transaction.Pointing(key.table(), key.column(), rows(key, id)))
                .filter(pointing -> !pointing.rows().isEmpty())
                .toList();
    }

    private List<Long> rows(Key key, long id) {
        return prepared.list(
                row -> row.number("id"),
                "select id from " + key.table() + " where " + key.column() + " = ?",
                List.of(id));
    }

    private List<Key> keysTo(String table) {
        var found = new ArrayList<Key>();
        try (var keys = connection.getMetaData().getExportedKeys(null, null, table)) {
            while (keys.next()) {
                found.add(new Key(keys.getString("FKTABLE_NAME"), keys.getString("FKCOLUMN_NAME")));
            }
        } catch (SQLException e) {
            throw new StoreFailure("the database does not tell what points at " + table, e);
        }
        return found;
    }

    private record Key(String table, String column) {}
}
