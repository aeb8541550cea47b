package clutchwright.app.wording;

import clutchwright.engine.inference.Held;
import clutchwright.engine.inference.Held.Basis;

/// What a figure at a locus rests on, as one plain sentence.
public final class BasisWords {

    private BasisWords() {}

    /// The convention of lists, headings and labels.
    public static final String CONVENTION =
            "Hets stand in the trade’s figures: 100, 66, 50, 33 and 25 % where that is right within"
                    + " half a percent, else the nearest whole percent. What is no likelier than in"
                    + " any animal of unknown origin is not listed.";

    /// With what is to be said of the figures themselves.
    public static String of(Held.AtLocus at) {
        var words = of(at.basis());
        if (at.basis() == Basis.SIGHTING_AGAINST_RECORDS) {
            words += " That it looks so has a chance of " + Chances.percent(at.asRecorded()) + ".";
        }
        if (at.error() > 0) {
            words +=
                    " The figure is an estimate that may be off by about "
                            + Chances.percent(at.error())
                            + ".";
        }
        return words;
    }

    public static String of(Basis basis) {
        return switch (basis) {
            case CLAIM -> "It rests on what was said of this animal.";
            case SIGHTING -> "It rests on what was seen of this animal.";
            case ALL_RECORDS ->
                    "It follows from all records together, by Mendel’s law: its own, and those of"
                            + " its parents, its young and their kin.";
            case SIGHTING_AGAINST_RECORDS ->
                    "It was seen, though the other records make a misreading, or a wrong record,"
                            + " likelier: what was seen is kept.";
            case CONTRADICTED ->
                    "It rests on this animal’s own records alone: what is recorded of all animals"
                            + " cannot be true together.";
            case FOR_NOW ->
                    "It rests on this animal’s own records alone, until all records together are"
                            + " worked out.";
        };
    }

    /// Whether the records contradict each other there.
    public static boolean isContradicted(Basis basis) {
        return switch (basis) {
            case CLAIM, SIGHTING, ALL_RECORDS, FOR_NOW -> false;
            case SIGHTING_AGAINST_RECORDS, CONTRADICTED -> true;
        };
    }
}
