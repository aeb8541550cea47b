package clutchwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/// Where a collection is kept.
class DataFolderTest {

    private static final Path HOME = Path.of("/home/ada");

    @Test
    void an_argument_wins_over_the_environment_and_that_over_the_platform() {
        var environment = Map.of("CLUTCHWRIGHT_DATA", "/data/snakes");
        assertThat(folder(Optional.of(Path.of("/elsewhere")), environment, "Linux"))
                .isEqualTo(Path.of("/elsewhere"));
        assertThat(folder(Optional.empty(), environment, "Linux"))
                .isEqualTo(Path.of("/data/snakes"));
    }

    /// Sources: XDG Base Directory Specification 0.8, `XDG_DATA_HOME`; Apple, File System
    /// Programming Guide, "Application Support".
    @Test
    void each_platform_has_its_own_place() {
        assertThat(folder(Optional.empty(), Map.of(), "Linux"))
                .isEqualTo(Path.of("/home/ada/.local/share/clutchwright"));
        assertThat(folder(Optional.empty(), Map.of("XDG_DATA_HOME", "/x"), "Linux"))
                .isEqualTo(Path.of("/x/clutchwright"));
        assertThat(folder(Optional.empty(), Map.of(), "Mac OS X"))
                .isEqualTo(Path.of("/home/ada/Library/Application Support/Clutchwright"));
        assertThat(folder(Optional.empty(), Map.of("CLUTCHWRIGHT_DATA", " "), "Linux"))
                .isEqualTo(Path.of("/home/ada/.local/share/clutchwright"));
    }

    private static Path folder(
            Optional<Path> named, Map<String, String> environment, String system) {
        return DataFolder.choose(named, environment, system, HOME).path();
    }
}
