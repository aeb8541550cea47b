package clutchwright.records.exchange.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/// Reads a table from a file of text or a workbook, whatever its name says.
///
/// What a file is, is seen from its bytes. Text may be separated by comma, semicolon, tab or bar,
/// in UTF-8, UTF-16 or the usual encoding of western Windows.
public final class SheetFile {

    private final HeaderSense sense;
    private final Limits limits;

    public SheetFile(HeaderSense sense, Limits limits) {
        this.sense = sense;
        this.limits = limits;
    }

    /// @param path where the bytes are
    /// @param name what the keeper calls the file
    /// @param sheet which sheet of a workbook, by name; its first that is not blank if empty text
    public SheetReading read(Path path, String name, String sheet) {
        try {
            var grid = grid(path, name, sheet.isEmpty() ? Optional.empty() : Optional.of(sheet));
            return new SheetReading.Read(grid.under(sense));
        } catch (Rejected rejected) {
            return new SheetReading.Unreadable(rejected.fault());
        }
    }

    private Grid grid(Path path, String name, Optional<String> sheet) throws Rejected {
        if (!Files.isRegularFile(path) || !Files.isReadable(path)) {
            throw new Rejected(new FileFault.NotFound(name));
        }
        try {
            long size = Files.size(path);
            if (size > limits.bytes()) {
                throw new Rejected(new FileFault.TooLarge(size, limits.bytes()));
            }
            if (size == 0) {
                throw new Rejected(new FileFault.Empty());
            }
            byte[] start;
            try (var in = Files.newInputStream(path)) {
                start = in.readNBytes(8);
            }
            if (begins(start, 'P', 'K')) {
                return workbook(path, name, sheet);
            }
            var bytes = Files.readAllBytes(path);
            var other = otherFormat(bytes);
            if (other.isPresent()) {
                throw new Rejected(new FileFault.OtherFormat(other.get()));
            }
            return text(bytes, name);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Grid text(byte[] bytes, String name) throws Rejected {
        var decoded =
                TextDecoding.of(bytes)
                        .orElseThrow(
                                () ->
                                        new Rejected(
                                                new FileFault.OtherFormat(
                                                        FileFault.Format.UNKNOWN)));
        var page = TextTable.webPage(decoded.text());
        if (page.isPresent()) {
            throw new Rejected(new FileFault.OtherFormat(page.get()));
        }
        return TextTable.read(name, decoded, sense, limits);
    }

    private Grid workbook(Path path, String name, Optional<String> sheet) throws Rejected {
        try {
            var parts = Packing.inspect(path, limits);
            if (!parts.contains("xl/workbook.xml")) {
                throw new Rejected(new FileFault.OtherFormat(packed(parts)));
            }
            boolean formatted = parts.contains("xl/styles.xml");
            return WorkbookTable.read(path, name, formatted, sheet, limits);
        } catch (IOException | RuntimeException damaged) {
            // The reading library answers damage with any kind of exception.
            throw new Rejected(new FileFault.Broken());
        }
    }

    private static FileFault.Format packed(Set<String> parts) {
        return parts.contains("content.xml")
                ? FileFault.Format.OPEN_DOCUMENT
                : FileFault.Format.ARCHIVE;
    }

    private static Optional<FileFault.Format> otherFormat(byte[] bytes) {
        if (begins(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            boolean locked =
                    new String(bytes, StandardCharsets.ISO_8859_1)
                            .contains("E\0n\0c\0r\0y\0p\0t\0e\0d\0P\0a\0c\0k\0a\0g\0e\0");
            return Optional.of(
                    locked ? FileFault.Format.LOCKED_WORKBOOK : FileFault.Format.OLD_WORKBOOK);
        }
        if (begins(bytes, '%', 'P', 'D', 'F')) {
            return Optional.of(FileFault.Format.PDF);
        }
        if (begins(bytes, 0x89, 'P', 'N', 'G')
                || begins(bytes, 0xFF, 0xD8, 0xFF)
                || begins(bytes, 'G', 'I', 'F', '8')) {
            return Optional.of(FileFault.Format.PICTURE);
        }
        return Optional.empty();
    }

    private static boolean begins(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }
}
