package clutchwright.records.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import javax.sql.DataSource;

/// How the file is opened: write-ahead log, foreign keys held, five seconds of patience.
final class SqliteUrls {

    private static final String ALWAYS =
            "?journal_mode=WAL&foreign_keys=true&busy_timeout=5000&synchronous=NORMAL";

    private SqliteUrls() {}

    /// Takes the lock for writing at the start: two programs that both read first and then write
    /// would else stop one another.
    static String forWriting(Path file) {
        return "jdbc:sqlite:" + file + ALWAYS + "&transaction_mode=IMMEDIATE";
    }

    static String forReading(Path file) {
        return "jdbc:sqlite:" + file + ALWAYS + "&cache_size=-16000";
    }

    static void testIntegrity(DataSource source, Path file) {
        var found = new ArrayList<String>();
        try (var connection = source.getConnection();
                var statement = connection.createStatement();
                var rows = statement.executeQuery("pragma quick_check(5)")) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        } catch (SQLException e) {
            throw new StoreFailure("the file is not a database that can be read: " + file, e);
        }
        if (found.size() != 1 || !found.getFirst().equals("ok")) {
            throw new StoreFailure("the file " + file + " is damaged: " + found);
        }
    }
}
