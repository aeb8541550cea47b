package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/// Where files that are to be brought in lie until they are, or are put away.
///
/// A few at a time: an old one makes place for a new one.
final class ImportDesk implements AutoCloseable {

    private static final int MOST_FILES = 6;
    private static final Duration KEPT = Duration.ofHours(3);

    private final Holding holding;
    private final Path folder;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, FileInHand> files = new ConcurrentHashMap<>();

    ImportDesk(Holding holding) {
        this.holding = holding;
        try {
            this.folder = Files.createTempDirectory("clutchwright-import");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /// Puts the bytes of a file where they are to lie.
    @FunctionalInterface
    interface Bytes {

        void into(Path path) throws IOException;
    }

    FileInHand take(String name, Bytes bytes) throws IOException {
        makePlace();
        var mark = new byte[16];
        random.nextBytes(mark);
        var id = HexFormat.of().formatHex(mark);
        var path = folder.resolve(id + ending(name));
        bytes.into(path);
        var file =
                new FileInHand(
                        id, plain(name), path, holding.database().clock().instant(), holding);
        files.put(id, file);
        return file;
    }

    Optional<FileInHand> find(String id) {
        return Optional.ofNullable(files.get(id));
    }

    void putAway(FileInHand file) {
        files.remove(file.id());
        file.putAway();
    }

    private void makePlace() {
        var old = holding.database().clock().instant().minus(KEPT);
        var idle =
                files.values().stream()
                        .filter(file -> file.job().filter(ImportJob::isRunning).isEmpty())
                        .sorted(Comparator.comparing(FileInHand::since))
                        .toList();
        for (int i = 0; i < idle.size(); i++) {
            if (idle.get(i).since().isBefore(old) || idle.size() - i >= MOST_FILES) {
                putAway(idle.get(i));
            }
        }
    }

    /// The last part of a path that some browsers send, without signs that cannot be read.
    private static String plain(String name) {
        var last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        var clean = last.replaceAll("\\p{Cntrl}", "").strip();
        return clean.isEmpty() ? "the file" : clean.substring(0, Math.min(clean.length(), 120));
    }

    private static String ending(String name) {
        return List.of(".csv", ".xlsx", ".zip").stream()
                .filter(name.toLowerCase(java.util.Locale.ROOT)::endsWith)
                .findFirst()
                .orElse(".file");
    }

    @Override
    public void close() {
        files.values().forEach(file -> file.job().ifPresent(ImportJob::stop));
        files.values().forEach(FileInHand::putAway);
        try {
            Files.deleteIfExists(folder);
        } catch (IOException stillInUse) {
            folder.toFile().deleteOnExit();
        }
    }
}
