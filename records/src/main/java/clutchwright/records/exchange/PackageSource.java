package clutchwright.records.exchange;

import clutchwright.records.exchange.Problem.Where;
import clutchwright.records.exchange.sheets.FileFault;
import clutchwright.records.exchange.sheets.Limits;
import clutchwright.records.exchange.sheets.Sheet;
import clutchwright.records.exchange.sheets.SheetFile;
import clutchwright.records.exchange.sheets.SheetReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

/// A package to be read: a folder, or the folder that a packed file was unpacked into.
final class PackageSource implements AutoCloseable {

    /// Our own files may be of a whole life's journal.
    private static final Limits LIMITS = new Limits(500L << 20, 0, 2_000_000, 200, 100_000);

    private static final long MOST_UNPACKED = 4L << 30;
    private static final String PHOTO = "photos/[0-9a-f]{64}\\.jpg";

    private final Path folder;
    private final boolean temporary;
    private final List<Problem> problems = new ArrayList<>();

    private PackageSource(Path folder, boolean temporary) {
        this.folder = folder;
        this.temporary = temporary;
    }

    /// Whether a path could be a package: a folder, or a packed file with animals in it.
    static boolean isOne(Path path) {
        if (Files.isDirectory(path)) {
            return true;
        }
        try (var zip = new ZipFile(path.toFile(), StandardCharsets.UTF_8)) {
            return zip.stream().anyMatch(entry -> isAnimals(entry.getName()));
        } catch (IOException | RuntimeException noPackedFile) {
            return false;
        }
    }

    static PackageSource open(Path path) throws IOException {
        if (Files.isDirectory(path)) {
            return new PackageSource(path, false);
        }
        var unpacked = new PackageSource(Files.createTempDirectory("package"), true);
        try {
            unpacked.unpack(path);
            return unpacked;
        } catch (IOException | RuntimeException damaged) {
            unpacked.problems.add(
                    new Problem(
                            new Where.WholeFile(), new Finding.Unreadable(new FileFault.Broken())));
            return unpacked;
        }
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    boolean isOurs() {
        var description = folder.resolve("datapackage.json");
        try {
            return Files.isRegularFile(description)
                    && Files.size(description) < (8L << 20)
                    && PackageDescription.isOurs(Files.readString(description));
        } catch (IOException noText) {
            return false;
        }
    }

    boolean has(String file) {
        return Files.isRegularFile(folder.resolve(file));
    }

    /// The rows of a file; none if it is not there or has no rows.
    Optional<Sheet> read(String file, List<String> headings) {
        if (!has(file)) {
            return Optional.empty();
        }
        var known = headings.stream().map(Headings::key).collect(Collectors.toSet());
        var reading =
                new SheetFile(text -> known.contains(Headings.key(text)), LIMITS)
                        .read(folder.resolve(file), file, "");
        return switch (reading) {
            case SheetReading.Read(var sheet) -> Optional.of(sheet);
            case SheetReading.Unreadable(FileFault.OnlyHeader _) -> Optional.empty();
            case SheetReading.Unreadable(FileFault.Empty _) -> Optional.empty();
            case SheetReading.Unreadable(var fault) -> {
                problems.add(
                        new Problem(new Where.OtherFile(file, 1), new Finding.Unreadable(fault)));
                yield Optional.empty();
            }
        };
    }

    /// The bytes of a photo; empty if there is none of that name.
    Optional<byte[]> photo(String name) throws IOException {
        var file = folder.resolve(name);
        return name.matches(PHOTO) && Files.isRegularFile(file)
                ? Optional.of(Files.readAllBytes(file))
                : Optional.empty();
    }

    /// Only files of names that belong into a package are unpacked, so that none can be written
    /// elsewhere.
    private void unpack(Path path) throws IOException {
        long total = 0;
        var buffer = new byte[1 << 16];
        try (var zip = new ZipFile(path.toFile(), StandardCharsets.UTF_8)) {
            var inside = prefix(zip);
            for (var entry : zip.stream().toList()) {
                var name = entry.getName();
                if (!name.startsWith(inside) || !belongs(name.substring(inside.length()))) {
                    continue;
                }
                var file = folder.resolve(name.substring(inside.length()));
                Files.createDirectories(file.getParent());
                try (var in = zip.getInputStream(entry);
                        var out = Files.newOutputStream(file)) {
                    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                        total += n;
                        if (total > MOST_UNPACKED) {
                            problems.add(
                                    new Problem(
                                            new Where.WholeFile(),
                                            new Finding.Unreadable(
                                                    new FileFault.UnpacksTooLarge(MOST_UNPACKED))));
                            return;
                        }
                        out.write(buffer, 0, n);
                    }
                }
            }
        }
    }

    /// A folder that was packed as a whole has its name before each file's.
    private static String prefix(ZipFile zip) {
        return zip.stream()
                .map(java.util.zip.ZipEntry::getName)
                .filter(PackageSource::isAnimals)
                .map(name -> name.substring(0, name.length() - "animals.csv".length()))
                .min(Comparator.comparingInt(String::length))
                .orElse("");
    }

    private static boolean isAnimals(String name) {
        return name.equals("animals.csv")
                || (name.endsWith("/animals.csv") && name.indexOf('/') == name.lastIndexOf('/'));
    }

    private static boolean belongs(String name) {
        return name.equals("datapackage.json")
                || OwnColumns.files().anyMatch(name::equals)
                || name.matches(PHOTO);
    }

    @Override
    public void close() {
        if (!temporary) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (var path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
