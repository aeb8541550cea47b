package clutchwright.app.holding;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/// One line of text that only the owner of the account may read.
public record SecretFile(Path path) {

    public Optional<String> find() {
        try {
            return Files.exists(path)
                    ? Optional.of(Files.readString(path).strip()).filter(text -> !text.isEmpty())
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + path, e);
        }
    }

    /// Keeps the text, the old one or the new one whole whatever happens in between.
    public void keep(String text) {
        try {
            var next = path.resolveSibling(path.getFileName() + ".next");
            Files.deleteIfExists(next);
            createForOwner(next);
            Files.writeString(next, text);
            Files.move(
                    next,
                    path,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + path, e);
        }
    }

    public void remove() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot remove " + path, e);
        }
    }

    private static void createForOwner(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            var owner = PosixFilePermissions.fromString("rw-------");
            Files.createFile(file, PosixFilePermissions.asFileAttribute(owner));
        } else {
            Files.createFile(file);
        }
    }
}
