package clutchwright.engine.catalogue;

import static clutchwright.engine.catalogue.InventedSpecies.loaded;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// The examples of the keeper's guide are what it says they are.
class GuideTest {

    private static final Path GUIDE = Path.of("..", "docs", "guide", "species-files.md");
    private static final Pattern EXAMPLE = Pattern.compile("(?s)\n```\n(.*?)\n```\n");

    @Test
    void the_guide_s_species_loads_and_its_own_entries_lie_over_it() throws IOException {
        var examples = examples();
        assertThat(examples).hasSize(2);

        var species = loaded(CatalogueText.read("guide", examples.getFirst()));
        var over = loaded(CatalogueText.readOver(species, "own", examples.getLast()));

        var catalogue = Catalogue.of(over);
        assertThat(catalogue.find("hazy")).get().isInstanceOf(Meaning.OneOf.class);
        assertThat(catalogue.find("BLACK BOARD")).isEqualTo(catalogue.find("Chalk"));
        assertThat(catalogue.find("hearth")).isPresent();
        assertThat(catalogue.ownEntries()).hasSize(1);
    }

    private static List<String> examples() throws IOException {
        return EXAMPLE.matcher(Files.readString(GUIDE))
                .results()
                .map(MatchResult::group)
                .map(block -> block.replaceAll("```\n?", ""))
                .toList();
    }
}
