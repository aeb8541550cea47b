package clutchwright.records.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/// All that a breeder has written down, in one file, and back.
///
/// The file is a zip with the database and the photos. PostgreSQL has tools of its own for this.
public final class Backup {

    private static final String PHOTOS = "photos";

    /// More than this is no backup of ours, or is meant to fill the disk.
    private static final long MOST_BYTES = 50L << 30;

    private Backup() {}

    /// Writes a backup while others go on reading and writing.
    ///
    /// @param zip replaced if it is there, and only once the new one is whole
    /// @throws StoreFailure if it cannot be written
    /// @throws IllegalStateException if the database is not SQLite
    public static void write(Database database, Path zip) {
        if (database.dialect() != Dialect.SQLITE) {
            throw new IllegalStateException("a backup of " + database.dialect());
        }
        var target = zip.toAbsolutePath();
        try {
            var beside = Files.createDirectories(Files.createTempDirectory("clutchwright-backup"));
            var half = Files.createTempFile(folderOf(target), "backup", ".part");
            try {
                var copy = beside.resolve(Database.FILE);
                database.copyTo(copy);
                pack(copy, database.folder().resolve(PHOTOS), half);
                Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(half);
                deleteAll(beside);
            }
        } catch (IOException e) {
            throw new StoreFailure("the backup cannot be written to " + zip, e);
        }
    }

    /// Unpacks a backup into a folder. Records that are in it already are kept beside, under names
    /// that end in `.before-restore`.
    ///
    /// @param folder no database may be open in it
    /// @throws StoreFailure if it is no backup of ours or cannot be read; the folder is unchanged
    public static void restore(Path zip, Path folder) {
        try {
            Files.createDirectories(folder);
            var beside = Files.createTempDirectory(folder, "restore");
            try {
                unpack(zip, beside);
                // Opened once beside, so that what is there is not exchanged for something broken.
                Database.open(beside, java.time.Clock.systemUTC()).close();
                exchange(beside, folder);
            } finally {
                deleteAll(beside);
            }
        } catch (IOException e) {
            throw new StoreFailure("not a backup that can be read: " + zip, e);
        }
    }

    private static void pack(Path copy, Path photos, Path zip) throws IOException {
        try (var out = new ZipOutputStream(Files.newOutputStream(zip))) {
            put(out, Database.FILE, copy);
            if (Files.isDirectory(photos)) {
                for (var photo : files(photos)) {
                    put(out, PHOTOS + "/" + photo.getFileName(), photo);
                }
            }
        }
    }

    private static void put(ZipOutputStream out, String name, Path file) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        Files.copy(file, out);
        out.closeEntry();
    }

    private static void unpack(Path zip, Path into) throws IOException {
        try (var archive = new ZipFile(zip.toFile())) {
            var database = archive.getEntry(Database.FILE);
            if (database == null) {
                throw new StoreFailure("no " + Database.FILE + " in " + zip);
            }
            Files.createDirectories(into.resolve(PHOTOS));
            long left = MOST_BYTES;
            for (var entry : archive.stream().toList()) {
                // Names are taken only if they are ours: a zip may name any place on the disk.
                var ours =
                        entry.getName().equals(Database.FILE)
                                || entry.getName()
                                        .matches(PHOTOS + "/[0-9a-f]{64}(\\.small)?\\.jpg");
                if (ours) {
                    try (var in = archive.getInputStream(entry)) {
                        left -= Files.copy(in, into.resolve(entry.getName()));
                    }
                    if (left < 0) {
                        throw new StoreFailure("more in " + zip + " than a backup holds");
                    }
                }
            }
        }
    }

    private static void exchange(Path beside, Path folder) throws IOException {
        for (var name : List.of(Database.FILE, Database.FILE + "-wal", Database.FILE + "-shm")) {
            var old = folder.resolve(name);
            if (Files.exists(old)) {
                Files.move(
                        old,
                        folder.resolve(name + ".before-restore"),
                        StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.createDirectories(folder.resolve(PHOTOS));
        for (var photo : files(beside.resolve(PHOTOS))) {
            Files.move(
                    photo,
                    folder.resolve(PHOTOS).resolve(photo.getFileName()),
                    StandardCopyOption.REPLACE_EXISTING);
        }
        Files.move(beside.resolve(Database.FILE), folder.resolve(Database.FILE));
    }

    private static Path folderOf(Path file) throws IOException {
        var folder = file.getParent();
        return folder == null ? file : Files.createDirectories(folder);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void deleteAll(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(java.util.Comparator.reverseOrder())
                    .forEach(
                            path -> {
                                try {
                                    Files.deleteIfExists(path);
                                } catch (IOException e) {
                                    throw new UncheckedIOException(e);
                                }
                            });
        }
    }
}
