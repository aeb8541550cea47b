package clutchwright.app.season;

import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.SignSeen;
import java.util.List;

/// How far a pairing has come, by the last that was seen of it.
enum Stage {
    PRE_LAY_SHED("Pre-lay shed seen", Part.WAITING),
    OVULATION("Ovulation seen", Part.WAITING),
    BUILDING("Building seen", Part.TOGETHER),
    LOCKED("Locked", Part.TOGETHER),
    TOGETHER("Together", Part.TOGETHER),
    PLANNED("Planned", Part.PLANNED),
    SEPARATED("Separated", Part.SEPARATED),
    LAID("Laid", Part.LAID);

    /// A part of the list.
    enum Part {
        WAITING("Waiting for eggs"),
        TOGETHER("Together"),
        PLANNED("Planned"),
        SEPARATED("Separated, without a sign yet"),
        LAID("Laid");

        private final String title;

        Part(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }
    }

    private final String words;
    private final Part part;

    Stage(String words, Part part) {
        this.words = words;
        this.part = part;
    }

    String words() {
        return words;
    }

    Part part() {
        return part;
    }

    /// @param laid whether a clutch came of it
    static Stage of(Pairing pairing, List<SignSeen> signs, boolean laid) {
        if (laid) {
            return LAID;
        }
        if (has(signs, SignSeen.Kind.PRE_LAY_SHED)) {
            return PRE_LAY_SHED;
        }
        if (has(signs, SignSeen.Kind.OVULATION)) {
            return OVULATION;
        }
        return switch (pairing.state()) {
            case PLANNED -> PLANNED;
            case DONE -> SEPARATED;
            case ACTIVE ->
                    has(signs, SignSeen.Kind.BUILDING)
                            ? BUILDING
                            : has(signs, SignSeen.Kind.LOCK) ? LOCKED : TOGETHER;
        };
    }

    private static boolean has(List<SignSeen> signs, SignSeen.Kind kind) {
        return signs.stream().anyMatch(sign -> sign.kind() == kind);
    }
}
