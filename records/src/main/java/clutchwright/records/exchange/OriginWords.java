package clutchwright.records.exchange;

import clutchwright.records.animals.Origin;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/// The words by which breeders say how an animal came to them.
final class OriginWords {

    private static final Set<String> HERE =
            Set.of(
                    "hatched here",
                    "home bred",
                    "homebred",
                    "bred here",
                    "own",
                    "produced here",
                    "self produced",
                    "in house",
                    "own breeding",
                    "produced");
    private static final Set<String> BOUGHT =
            Set.of("bought", "purchased", "purchase", "acquired", "traded", "gift", "bought in");
    private static final Set<String> WILD =
            Set.of("wild caught", "wildcaught", "wc", "wild", "import", "imported");
    private static final Set<String> UNKNOWN = Set.of("", "unknown", "unk", "n a");

    private OriginWords() {}

    static String write(Origin.How how) {
        return how.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /// Empty where the words are none of ours, such as the name of a place or a breeder.
    static Optional<Origin.How> read(String written) {
        var key = written.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ").strip();
        if (HERE.contains(key)) {
            return Optional.of(Origin.How.HATCHED_HERE);
        }
        if (BOUGHT.contains(key)) {
            return Optional.of(Origin.How.BOUGHT);
        }
        if (WILD.contains(key)) {
            return Optional.of(Origin.How.WILD_CAUGHT);
        }
        return UNKNOWN.contains(key) ? Optional.of(Origin.How.UNKNOWN) : Optional.empty();
    }
}
