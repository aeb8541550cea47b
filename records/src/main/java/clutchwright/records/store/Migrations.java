package clutchwright.records.store;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/// Brings a database forward to what this program expects.
final class Migrations {

    private Migrations() {}

    static void run(DataSource source, Dialect dialect) {
        try {
            Flyway.configure(Migrations.class.getClassLoader())
                    .dataSource(source)
                    .locations("classpath:clutchwright/records/store")
                    .placeholders(dialect.words())
                    .cleanDisabled(true)
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new StoreFailure("the database cannot be brought to this version", e);
        }
    }
}
