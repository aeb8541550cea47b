package clutchwright.records.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;

/// The breeder's records, open.
///
/// One writer at a time; readers see what was there when their transaction began.
public final class Database implements AutoCloseable {

    public static final String FILE = "clutchwright.db";

    private final Dialect dialect;
    private final Path folder;
    private final HikariDataSource readers;
    private final HikariDataSource writers;
    private final Clock clock;
    private final ReentrantLock writing = new ReentrantLock(true);
    private final AtomicLong revision = new AtomicLong();

    private Database(
            Dialect dialect,
            Path folder,
            HikariDataSource readers,
            HikariDataSource writers,
            Clock clock) {
        this.dialect = dialect;
        this.folder = folder;
        this.readers = readers;
        this.writers = writers;
        this.clock = clock;
    }

    /// Opens the file in a folder, both made if they are not there, and brings it up to date.
    ///
    /// @throws StoreFailure if it is damaged, from a later version, or not ours
    public static Database open(Path folder, Clock clock) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new StoreFailure("cannot make the folder " + folder, e);
        }
        var file = folder.resolve(FILE);
        var writers = pool(SqliteUrls.forWriting(file), 1);
        try {
            SqliteUrls.testIntegrity(writers, file);
            Migrations.run(writers, Dialect.SQLITE);
            return new Database(
                    Dialect.SQLITE, folder, pool(SqliteUrls.forReading(file), 4), writers, clock);
        } catch (RuntimeException e) {
            writers.close();
            throw e;
        }
    }

    /// Opens a PostgreSQL database.
    ///
    /// @param url as the driver takes it, `jdbc:postgresql://host/name?user=...&password=...`
    /// @param folder where photos are kept
    /// @throws StoreFailure if it cannot be reached or is from a later version
    public static Database url(String url, Path folder, Clock clock) {
        var both = pool(url, 8);
        try {
            Migrations.run(both, Dialect.POSTGRESQL);
            return new Database(Dialect.POSTGRESQL, folder, both, both, clock);
        } catch (RuntimeException e) {
            both.close();
            throw e;
        }
    }

    /// Reads, all of it from one moment.
    public <R> R read(Work<R> work) {
        try (var connection = readers.getConnection()) {
            connection.setAutoCommit(false);
            try (var prepared = new Prepared(connection)) {
                return work.in(new Transaction(connection, prepared, folder, clock, null, ""));
            } finally {
                connection.rollback();
                connection.setAutoCommit(true);
            }
        } catch (SQLException e) {
            throw new StoreFailure("reading failed", e);
        }
    }

    /// Writes, all of it or nothing, as one change in the journal.
    ///
    /// @param what what the person did, in their words
    /// @throws IllegalStateException within another write
    public <R> R write(Author who, String what, Work<R> work) {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a write within a write: " + what);
        }
        writing.lock();
        try (var connection = writers.getConnection()) {
            // Only now: the SQLite driver begins the next transaction, and so locks the file
            // against other programs, as soon as one ends.
            connection.setAutoCommit(false);
            try (var prepared = new Prepared(connection)) {
                return write(
                        connection,
                        new Transaction(connection, prepared, folder, clock, who, what),
                        work);
            } finally {
                connection.setAutoCommit(true);
            }
        } catch (SQLException e) {
            throw new StoreFailure("writing failed: " + what, e);
        } finally {
            writing.unlock();
        }
    }

    /// Writes as [#write] does, unless something was written under that key before. Whoever arrives
    /// with a key while another writes under it waits for the other.
    ///
    /// Where the work wrote nothing, refused or abandoned, the key is free for another try.
    public <R> Once<R> writeOnce(Author who, String what, EntryKey key, Work<R> work) {
        return write(
                who,
                what,
                tx -> {
                    var keys = tx.entryKeys();
                    var before = keys.find(key);
                    if (before.isPresent()) {
                        return new Once.Before<>(before.get());
                    }
                    var result = work.in(tx);
                    tx.change().ifPresent(change -> keys.keep(key, change, tx.now()));
                    return new Once.Now<>(result);
                });
    }

    /// What was written under a key.
    public Optional<Entered> entered(EntryKey key) {
        return read(tx -> tx.entryKeys().find(key));
    }

    /// Remembers what was answered when something was written under a key; nothing where nothing
    /// was.
    public void answered(Author who, EntryKey key, Entered.Answer answer) {
        boolean _ =
                write(
                        who,
                        "",
                        tx -> {
                            tx.entryKeys().answer(key, answer);
                            return true;
                        });
    }

    /// A mark of these records and of no others, the same for as long as they live.
    public String house() {
        return read(tx -> tx.entryKeys().house());
    }

    /// Grows with every write of this process that was kept.
    public long revision() {
        return revision.get();
    }

    /// Where photos are kept beside the records.
    public Path folder() {
        return folder;
    }

    public Dialect dialect() {
        return dialect;
    }

    public Clock clock() {
        return clock;
    }

    /// Writes a copy of the file as it is at this moment.
    void copyTo(Path file) {
        try (var connection = readers.getConnection();
                var statement = connection.prepareStatement("vacuum into ?")) {
            statement.setString(1, file.toString());
            statement.execute();
        } catch (SQLException e) {
            throw new StoreFailure("the records cannot be copied to " + file, e);
        }
    }

    @Override
    public void close() {
        readers.close();
        writers.close();
    }

    private <R> R write(Connection connection, Transaction tx, Work<R> work) throws SQLException {
        boolean kept = false;
        try {
            if (dialect == Dialect.POSTGRESQL) {
                // Checks read before they write; one writer at a time, as in SQLite, keeps them
                // true.
                tx.list(Row::onlyNumber, "select 1 from pg_advisory_xact_lock(7234231)");
            }
            var result = work.in(tx);
            if (!tx.isAbandoned()) {
                tx.settle();
                connection.commit();
                kept = true;
                if (tx.change().isPresent()) {
                    revision.incrementAndGet();
                }
            }
            return result;
        } finally {
            if (!kept) {
                connection.rollback();
            }
        }
    }

    private static HikariDataSource pool(String url, int size) {
        var config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setMaximumPoolSize(size);
        config.setMinimumIdle(1);
        try {
            return new HikariDataSource(config);
        } catch (RuntimeException e) {
            throw new StoreFailure("the database cannot be opened", e);
        }
    }
}
