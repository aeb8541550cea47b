package clutchwright.records.store;

import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/// Brings a database forward to what this program expects.
final class Migrations {

    /// The last script of the folder. A database that is there already needs no more than this
    /// look: loading all of Flyway would take a third of a start.
    static final String LATEST = "6";

    private Migrations() {}

    static void run(DataSource source, Dialect dialect) {
        if (!isCurrent(source)) {
            run(source, dialect, LATEST);
        }
    }

    /// Brings it forward to a version that may be an earlier one, which tests begin with.
    static void run(DataSource source, Dialect dialect, String version) {
        try {
            Flyway.configure(Migrations.class.getClassLoader())
                    .dataSource(source)
                    .locations("classpath:clutchwright/records/store")
                    .placeholders(dialect.words())
                    .cleanDisabled(true)
                    .target(version)
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new StoreFailure("the database cannot be brought to this version", e);
        }
    }

    /// Whether the last thing that happened to the schema is our last script, without a failure.
    private static boolean isCurrent(DataSource source) {
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            try (var rows =
                    statement.executeQuery(
                            "select version, success from flyway_schema_history"
                                    + " order by installed_rank desc")) {
                return rows.next()
                        && LATEST.equals(rows.getString("version"))
                        && rows.getBoolean("success");
            } finally {
                connection.rollback();
            }
        } catch (SQLException e) {
            // No history yet: a new database, which Flyway makes, or none of ours, which it
            // refuses.
            return false;
        }
    }
}
