package clutchwright.records.settings;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.records.Notebook;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {

    @TempDir Path folder;

    @Test
    void a_setting_holds_the_last_that_was_put_until_it_is_removed() {
        try (var notebook = new Notebook(folder)) {
            notebook.write(
                    tx -> {
                        var settings = new Settings(tx);
                        settings.put(Settings.TAG_PATTERN, "{yy}-{n}");
                        settings.put(Settings.TAG_PATTERN, "{n}");
                        settings.put(Settings.FILTERS + "unsexed", "sex=none");
                        settings.put(Settings.FILTERS + "100%", "all");
                        return settings;
                    });

            Optional<String> pattern =
                    notebook.read(tx -> new Settings(tx).find(Settings.TAG_PATTERN));
            assertThat(pattern).contains("{n}");
            var filters = notebook.read(tx -> new Settings(tx).under(Settings.FILTERS));
            assertThat(filters).containsOnlyKeys("filter/100%", "filter/unsexed");

            boolean removed = notebook.write(tx -> new Settings(tx).remove(Settings.TAG_PATTERN));
            boolean again = notebook.write(tx -> new Settings(tx).remove(Settings.TAG_PATTERN));
            assertThat(removed).isTrue();
            assertThat(again).isFalse();
        }
    }
}
