package clutchwright.records.exchange;

import clutchwright.engine.notation.GeneLine;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/// The species that an import may name, each with the notation of its genes.
///
/// @param all at least one, in the order to offer them
public record SpeciesLines(List<GeneLine> all) {

    public SpeciesLines {
        all = List.copyOf(all);
        if (all.isEmpty()) {
            throw new IllegalArgumentException("no species");
        }
    }

    /// By short name, Latin name, or one of the common names.
    public Optional<GeneLine> find(String written) {
        var key = key(written);
        return all.stream()
                .filter(line -> names(line).map(SpeciesLines::key).anyMatch(key::equals))
                .findFirst();
    }

    List<String> expected() {
        return all.stream().map(line -> line.catalogue().species().id()).toList();
    }

    private static Stream<String> names(GeneLine line) {
        var species = line.catalogue().species();
        return Stream.concat(
                Stream.of(species.id(), species.latinName()),
                Stream.of(species.commonName().split(";")));
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", "");
    }
}
