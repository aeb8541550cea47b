package clutchwright.app.wording;

import java.time.LocalDate;

/// How full the incubators get, in words.
public final class OccupancyWords {

    private OccupancyWords() {}

    /// @param boxes that are on record
    public static String of(
            LocalDate fullest, double mean, int from, int to, int boxes, Formats formats) {
        return "Fullest about %s, with %s clutches in the incubators; 9 in 10 between %s. %s on record."
                .formatted(
                        formats.date(fullest),
                        formats.decimals(mean, 1),
                        range(from, to).replace(" to ", " and "),
                        formats.count(boxes, "box is", "boxes are"));
    }

    public static String range(int from, int to) {
        return from + " to " + to;
    }
}
