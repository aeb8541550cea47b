package clutchwright.records.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LatestMigrationTest {

    @Test
    void the_last_script_of_the_folder_is_the_one_a_start_looks_for() throws IOException {
        var folder = Path.of("src/main/resources/clutchwright/records/store");
        try (var files = Files.list(folder)) {
            var last =
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> name.matches("V\\d+__.*\\.sql"))
                            .mapToInt(
                                    name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                            .max();
            assertThat(last).hasValue(Integer.parseInt(Migrations.LATEST));
        }
    }
}
