package clutchwright.records.exchange.sheets;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipFile;

/// Looks through a packed file before anything in it is trusted.
final class Packing {

    private static final int MOST_PARTS = 10_000;

    private Packing() {}

    /// Unpacks every part once, into nothing, and counts.
    ///
    /// The sizes that a packed file states of itself may be false, so they are not asked.
    ///
    /// @return the names of its parts
    static Set<String> inspect(Path file, Limits limits) throws IOException, Rejected {
        var names = new TreeSet<String>();
        long total = 0;
        var buffer = new byte[1 << 16];
        try (var zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            if (zip.size() > MOST_PARTS) {
                throw new Rejected(new FileFault.UnpacksTooLarge(limits.unpackedBytes()));
            }
            for (var entries = zip.entries(); entries.hasMoreElements(); ) {
                var entry = entries.nextElement();
                names.add(entry.getName());
                try (InputStream in = new BufferedInputStream(zip.getInputStream(entry))) {
                    boolean start = true;
                    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                        total += n;
                        if (total > limits.unpackedBytes()) {
                            throw new Rejected(
                                    new FileFault.UnpacksTooLarge(limits.unpackedBytes()));
                        }
                        // Spreadsheet programs never write one; it could make a small part huge.
                        if (start
                                && new String(buffer, 0, n, StandardCharsets.ISO_8859_1)
                                        .contains("<!DOCTYPE")) {
                            throw new Rejected(new FileFault.Broken());
                        }
                        start = false;
                    }
                }
            }
        }
        return names;
    }
}
