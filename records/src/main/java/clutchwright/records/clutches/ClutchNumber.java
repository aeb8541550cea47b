package clutchwright.records.clutches;

import java.util.Optional;
import java.util.regex.Pattern;

/// A clutch's number: `24-07` is the seventh of season 2024.
///
/// @param running from one
public record ClutchNumber(int season, int running) implements Comparable<ClutchNumber> {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{2}|\\d{4})-(\\d{1,4})");

    public ClutchNumber {
        if (season < 1900 || season > 2999 || running < 1) {
            throw new IllegalArgumentException("season " + season + ", clutch " + running);
        }
    }

    /// Reads `24-07` or `2024-7`; two digits are a year of this century.
    public static Optional<ClutchNumber> find(String text) {
        var parts = WRITTEN.matcher(text.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        int year = Integer.parseInt(parts.group(1));
        int season = year < 100 ? 2000 + year : year;
        int running = Integer.parseInt(parts.group(2));
        return season < 1900 || season > 2999 || running < 1
                ? Optional.empty()
                : Optional.of(new ClutchNumber(season, running));
    }

    @Override
    public int compareTo(ClutchNumber that) {
        int bySeason = Integer.compare(season, that.season);
        return bySeason != 0 ? bySeason : Integer.compare(running, that.running);
    }

    @Override
    public String toString() {
        return "%02d-%02d".formatted(season % 100, running);
    }
}
