package clutchwright.app.wording;

import clutchwright.records.pairings.SignSeen;

/// Pairings and their signs, in a breeder's words.
public final class PairingWords {

    private PairingWords() {}

    public static String sign(SignSeen.Kind kind) {
        return switch (kind) {
            case LOCK -> "Lock";
            case BUILDING -> "Building";
            case OVULATION -> "Ovulation";
            case PRE_LAY_SHED -> "Pre-lay shed";
        };
    }

    /// Said where the same pair is planned twice in a season.
    public static String twice(int season) {
        return "This pair is in the season %d already.".formatted(season);
    }
}
