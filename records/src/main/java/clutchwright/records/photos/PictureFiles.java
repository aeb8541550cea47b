package clutchwright.records.photos;

import clutchwright.records.store.StoreFailure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/// The files that pictures lie in, named by their digests.
record PictureFiles(Path folder) {

    Path full(String digest) {
        return folder.resolve(digest + ".jpg");
    }

    Path small(String digest) {
        return folder.resolve(digest + ".small.jpg");
    }

    /// Writes both. To be called before the row is written: a row without its file would be a hole,
    /// a file without a row is not.
    void keep(String digest, Picture picture) {
        write(full(digest), picture.jpeg());
        write(small(digest), picture.thumbnail());
    }

    static String digest(Picture picture) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(picture.jpeg()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static void write(Path file, byte[] content) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            var half = Files.createTempFile(file.toAbsolutePath().getParent(), "half", ".part");
            Files.write(half, content);
            Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new StoreFailure("the photo cannot be written to " + file, e);
        }
    }
}
