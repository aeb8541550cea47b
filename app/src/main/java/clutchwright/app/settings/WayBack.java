package clutchwright.app.settings;

import clutchwright.app.holding.Holding;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/// The page to go back to after something was taken back: where it was asked, if that page still
/// is there, else the journal.
record WayBack(Holding holding) {

    private static final String JOURNAL = "/journal";
    private static final Set<String> ALWAYS_THERE =
            Set.of("/", "/collection", "/season", "/eggs", "/settings", "/collection/places");
    private static final Pattern ANIMAL = Pattern.compile("/collection/([0-9]{1,18})");
    private static final Pattern CLUTCH = Pattern.compile("/eggs/([0-9]{1,18})(?:/hatch|/sheet)?");

    /// @param from the address of the page that asked, as the browser tells it
    String to(Optional<String> from) {
        return from.flatMap(WayBack::path).filter(this::isThere).orElse(JOURNAL);
    }

    private static Optional<String> path(String address) {
        try {
            return Optional.ofNullable(URI.create(address).getPath());
        } catch (IllegalArgumentException noAddress) {
            return Optional.empty();
        }
    }

    private boolean isThere(String path) {
        if (ALWAYS_THERE.contains(path)) {
            return true;
        }
        var animal = ANIMAL.matcher(path);
        if (animal.matches()) {
            var id = new AnimalId(Long.parseLong(animal.group(1)));
            return holding.database().read(tx -> new Animals(tx).find(id)).isPresent();
        }
        var clutch = CLUTCH.matcher(path);
        if (clutch.matches()) {
            var id = new ClutchId(Long.parseLong(clutch.group(1)));
            return holding.database().read(tx -> new Clutches(tx).find(id)).isPresent();
        }
        return false;
    }
}
