package clutchwright.app.wording;

import clutchwright.engine.inference.Held.Basis;

/// What a figure at a locus rests on, as one plain sentence.
public final class BasisWords {

    private BasisWords() {}

    public static String of(Basis basis) {
        return switch (basis) {
            case CLAIM -> "It rests on what was said of this animal.";
            case SIGHTING -> "It rests on what was seen of this animal.";
            case PARENTS ->
                    "It follows from its parents by Mendel’s law, given what was seen of it.";
            case SIGHTING_AGAINST_PARENTS ->
                    "It was seen, though the recorded parents cannot give it: what was seen is"
                            + " kept, and one of these records is wrong.";
            case CLAIM_AGAINST_PARENTS ->
                    "It was said, though the recorded parents cannot give it: what was said is"
                            + " kept, and one of these records is wrong.";
        };
    }

    /// Whether the records contradict each other there.
    public static boolean isContradicted(Basis basis) {
        return switch (basis) {
            case CLAIM, SIGHTING, PARENTS -> false;
            case SIGHTING_AGAINST_PARENTS, CLAIM_AGAINST_PARENTS -> true;
        };
    }
}
