package clutchwright.records.plans;

import clutchwright.engine.pedigree.AnimalId;

/// What the keeper says of one pair for a season's plan.
///
/// @param reason why; never blank where a hindrance is overruled
public record PlanWord(long id, int season, AnimalId dam, AnimalId sire, Word word, String reason) {

    public enum Word {
        /// It is to be made.
        PINNED,
        /// It is not to be made.
        FORBIDDEN,
        /// It may be made, though something speaks against it.
        OVERRULED
    }

    public PlanWord {
        reason = reason.strip();
        if (word == Word.OVERRULED && reason.isEmpty()) {
            throw new IllegalArgumentException("overruled without a reason");
        }
    }
}
