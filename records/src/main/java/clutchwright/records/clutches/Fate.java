package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import java.time.LocalDate;
import java.util.List;

/// What has become of an egg.
public sealed interface Fate {

    /// Still waited for.
    record Incubating() implements Fate {}

    /// Never was fertile.
    record Slug() implements Fate {}

    /// @param noticed the day it was found, which is not the day it died
    record Lost(LocalDate noticed, String finding) implements Fate {}

    /// @param hatchlings none if what came out was not kept on record; two are twins
    record Hatched(LocalDate pipped, List<AnimalId> hatchlings) implements Fate {

        public Hatched {
            hatchlings = List.copyOf(hatchlings);
        }
    }
}
