package clutchwright.records.exchange;

import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import clutchwright.records.store.StoreFailure;
import clutchwright.records.store.Transaction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;

/// The whole collection as open files: a folder or a .zip with `datapackage.json` and tables in
/// CSV. What a package was written from, reading it into empty records gives again.
public final class OpenPackage {

    private OpenPackage() {}

    /// What was written.
    ///
    /// @param files the tables, in the package's order
    public record Written(int animals, List<String> files, int photos) {

        public Written {
            files = List.copyOf(files);
        }
    }

    /// What reading a package came to.
    ///
    /// @param problems all of them; those that only deserve a word too
    public record Result(ImportOutcome outcome, List<Problem> problems) {

        public Result {
            problems = List.copyOf(problems);
        }
    }

    /// Writes the collection. A .zip appears only when it is whole.
    ///
    /// @param target a file if its name ends in `.zip`, else a folder
    /// @throws StoreFailure if it cannot be written
    public static Written write(Transaction tx, Path target) {
        try {
            return target.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".zip")
                    ? writePacked(tx, target)
                    : writeInto(tx, PackageFolder.folder(target));
        } catch (IOException e) {
            throw new StoreFailure("the package cannot be written to " + target, e);
        }
    }

    private static Written writePacked(Transaction tx, Path target) throws IOException {
        var beside = target.toAbsolutePath().getParent();
        Files.createDirectories(beside);
        var half = Files.createTempFile(beside, "half", ".part");
        try {
            var written = writeInto(tx, PackageFolder.packed(half));
            Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
            return written;
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static Written writeInto(Transaction tx, PackageFolder folder) throws IOException {
        try (folder) {
            return new PackageExport(tx, folder).write();
        }
    }

    /// Whether a path is a package rather than a single table.
    public static boolean isOne(Path path) {
        return PackageSource.isOne(path);
    }

    /// Reads a package: all of it or nothing, as one change of the journal.
    ///
    /// @param keep whether to keep what was read; if not, this is the dry run
    /// @param what what the keeper did, for the journal
    public static Result read(
            Database database,
            Author who,
            String what,
            Path path,
            Choices choices,
            SpeciesLines lines,
            boolean keep,
            Progress progress) {
        try (var source = PackageSource.open(path)) {
            return database.write(
                    who, what, tx -> readInto(tx, source, choices, lines, keep, progress));
        } catch (RefusedByRecords refused) {
            return new Result(new ImportOutcome.Refused(refused.problems()), refused.problems());
        } catch (CancellationException stopped) {
            return new Result(new ImportOutcome.Cancelled(), List.of());
        } catch (IOException e) {
            throw new StoreFailure("the package cannot be read", e);
        }
    }

    private static Result readInto(
            Transaction tx,
            PackageSource source,
            Choices choices,
            SpeciesLines lines,
            boolean keep,
            Progress progress) {
        var reading = new PackageImport(tx, source, choices, lines);
        try {
            ImportOutcome outcome = reading.run(progress);
            if (!keep || !reading.canStand()) {
                tx.abandon();
            }
            return new Result(
                    reading.canStand() ? outcome : new ImportOutcome.Refused(reading.problems()),
                    reading.problems());
        } catch (IOException e) {
            throw new StoreFailure("the package cannot be read", e);
        }
    }
}
