package clutchwright.records.exchange;

/// What the keeper chose for one import.
///
/// @param species of rows that do not say theirs
public record Choices(
        DateOrder dateOrder, OnRecordAlready onRecord, StrangeParents parents, String species) {

    /// What to do with a row whose tag is on record.
    public enum OnRecordAlready {
        /// Import nothing.
        REFUSE,
        /// Pass over rows that say nothing new; refuse others.
        SKIP_IDENTICAL,
        /// Write what the file says over the record. Blank cells change nothing.
        UPDATE
    }

    /// What to do with parents that are neither in the file nor on record.
    public enum StrangeParents {
        /// Import nothing.
        REFUSE,
        /// Make an animal of that tag of which no more is known.
        CREATE,
        /// Leave the parent out and keep the text in the notes.
        KEEP_AS_NOTE
    }

    public static Choices usual(String species) {
        return new Choices(
                DateOrder.AS_THE_FILE_SHOWS,
                OnRecordAlready.REFUSE,
                StrangeParents.REFUSE,
                species);
    }

    public Choices withDateOrder(DateOrder changed) {
        return new Choices(changed, onRecord, parents, species);
    }

    public Choices withOnRecord(OnRecordAlready changed) {
        return new Choices(dateOrder, changed, parents, species);
    }

    public Choices withParents(StrangeParents changed) {
        return new Choices(dateOrder, onRecord, changed, species);
    }
}
