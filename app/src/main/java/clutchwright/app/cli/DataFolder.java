package clutchwright.app.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/// The folder in which a collection is kept.
public record DataFolder(Path path) {

    /// The environment variable that names it where no argument does.
    public static final String VARIABLE = "CLUTCHWRIGHT_DATA";

    /// The folder that was named, else the one of the environment, else the platform's own place
    /// for what a user's programs keep.
    public static DataFolder choose(Optional<Path> named) {
        return choose(
                named,
                System.getenv(),
                System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home", ".")));
    }

    static DataFolder choose(
            Optional<Path> named, Map<String, String> environment, String system, Path home) {
        var chosen =
                named.or(() -> findPath(environment, VARIABLE))
                        .orElseGet(() -> platformFolder(environment, system, home));
        return new DataFolder(chosen.toAbsolutePath().normalize());
    }

    private static Path platformFolder(Map<String, String> environment, String system, Path home) {
        var name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Clutchwright");
        }
        if (name.startsWith("windows")) {
            return findPath(environment, "APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Clutchwright");
        }
        return findPath(environment, "XDG_DATA_HOME")
                .orElse(home.resolve(".local").resolve("share"))
                .resolve("clutchwright");
    }

    private static Optional<Path> findPath(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
