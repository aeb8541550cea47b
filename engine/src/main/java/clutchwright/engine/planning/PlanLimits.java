package clutchwright.engine.planning;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.OptionalInt;
import java.util.SequencedMap;

/// What a season's plan has to keep to.
///
/// @param clutches altogether; empty for as many as there are females
/// @param kinship of a pair at most
/// @param uses of each male at most
/// @param boxes that there are, by week
/// @param places for hatchlings that there are, by week
/// @param projects how many clutches each is to get
public record PlanLimits(
        OptionalInt clutches,
        double kinship,
        SequencedMap<String, Integer> uses,
        SequencedMap<String, Double> boxes,
        SequencedMap<String, Double> places,
        SequencedMap<String, Share> projects) {

    /// @param least 0 or more
    /// @param most no less than that
    public record Share(int least, int most) {

        public Share {
            if (least < 0 || most < least) {
                throw new IllegalArgumentException("from " + least + " to " + most);
            }
        }
    }

    public PlanLimits {
        uses = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(uses));
        boxes = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(boxes));
        places = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(places));
        projects = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(projects));
    }
}
