package clutchwright.records.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/// Where a package is written: a folder, or one file that packs it.
abstract sealed class PackageFolder implements AutoCloseable {

    private final Set<String> written = new HashSet<>();

    static PackageFolder folder(Path path) throws IOException {
        Files.createDirectories(path);
        return new Plain(path);
    }

    static PackageFolder packed(Path file) throws IOException {
        return new Packed(new BufferedOutputStream(Files.newOutputStream(file)));
    }

    void write(String name, String text) throws IOException {
        if (written.add(name)) {
            put(name, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    void copy(String name, Path file) throws IOException {
        if (written.add(name)) {
            put(name, Files.readAllBytes(file));
        }
    }

    /// Rows as CSV in UTF-8, each cell such that a spreadsheet will not run it.
    void writeRows(String name, List<String> headings, List<List<String>> rows) throws IOException {
        var bytes = new java.io.ByteArrayOutputStream();
        try (var csv =
                CsvWriter.builder()
                        .lineDelimiter(LineDelimiter.CRLF)
                        .build(new OutputStreamWriter(bytes, StandardCharsets.UTF_8))) {
            csv.writeRecord(headings);
            for (var row : rows) {
                csv.writeRecord(row.stream().map(SpreadsheetSafety::disguise).toList());
            }
        }
        if (written.add(name)) {
            put(name, bytes.toByteArray());
        }
    }

    abstract void put(String name, byte[] bytes) throws IOException;

    @Override
    public abstract void close() throws IOException;

    private static final class Plain extends PackageFolder {

        private final Path path;

        private Plain(Path path) {
            this.path = path;
        }

        @Override
        void put(String name, byte[] bytes) throws IOException {
            var file = path.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        }

        @Override
        public void close() {}
    }

    private static final class Packed extends PackageFolder {

        /// The same collection packs to the same bytes.
        private static final LocalDateTime ALWAYS = LocalDateTime.of(2000, 1, 1, 0, 0);

        private final ZipOutputStream zip;

        private Packed(OutputStream out) {
            this.zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        }

        @Override
        void put(String name, byte[] bytes) throws IOException {
            var entry = new ZipEntry(name);
            entry.setTimeLocal(ALWAYS);
            zip.putNextEntry(entry);
            zip.write(bytes);
            zip.closeEntry();
        }

        @Override
        public void close() throws IOException {
            zip.close();
        }
    }
}
