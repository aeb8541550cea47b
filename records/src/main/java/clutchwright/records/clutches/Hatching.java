package clutchwright.records.clutches;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Status;
import clutchwright.records.animals.Tag;
import clutchwright.records.places.TubId;
import clutchwright.records.statements.GeneText;
import java.time.LocalDate;
import java.util.Optional;

/// What a keeper finds in an egg that has hatched.
///
/// @param shows   what it is seen to show; empty where nobody has looked
/// @param doubted whether that is in doubt
/// @param grams   its weight, if it was weighed; above zero
public record Hatching(
        LocalDate pipped,
        Tag tag,
        String name,
        Optional<Sex> sex,
        Status status,
        Optional<TubId> place,
        Optional<GeneText> shows,
        boolean doubted,
        Optional<Double> grams,
        String notes) {

    /// A hatchling of which no more than its tag is known.
    public static Hatching of(LocalDate pipped, Tag tag) {
        return new Hatching(
                pipped,
                tag,
                "",
                Optional.empty(),
                Status.KEPT,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                "");
    }

    public Hatching withSex(Sex changed) {
        return new Hatching(
                pipped,
                tag,
                name,
                Optional.of(changed),
                status,
                place,
                shows,
                doubted,
                grams,
                notes);
    }

    public Hatching showing(GeneText seen, boolean inDoubt) {
        return new Hatching(
                pipped, tag, name, sex, status, place, Optional.of(seen), inDoubt, grams, notes);
    }

    public Hatching weighing(double weighed) {
        return new Hatching(
                pipped, tag, name, sex, status, place, shows, doubted, Optional.of(weighed), notes);
    }
}
