package clutchwright.records.exchange;

/// What a column of a file may hold.
public enum Column {
    TAG("tag"),
    NAME("name"),
    SEX("sex"),
    HATCHED("hatched"),
    SIRE("sire"),
    DAM("dam"),
    /// A gene line, or a part of one; several columns are joined in the file's order.
    STATED("stated"),
    /// Genes that the animal carries unseen, with or without the word `het`; joins `STATED`.
    HETS("hets"),
    /// Genes that it may carry; the column's name or the cell says the chance; joins `STATED`.
    POSSIBLE_HETS("possible hets"),
    SHOWS("shows"),
    STATUS("status"),
    SPECIES("species"),
    ROOM("room"),
    RACK("rack"),
    TUB("tub"),
    /// Room, rack and tub in one cell, divided by `/`, `>` or commas; or the tub alone.
    PLACE("place"),
    /// The latest weight.
    WEIGHT("weight"),
    WEIGHED("weighed"),
    ORIGIN("origin"),
    /// Of whom, or from where, it came.
    BREEDER("from"),
    LINE("line"),
    CREDIT("credit"),
    ACQUIRED("acquired"),
    NOTES("notes"),
    /// Animals with the same word here have the same sire, where he is in doubt.
    SIRE_QUESTION("sire question"),
    /// `yes` for young that the dam made alone.
    WITHOUT_SIRE("without sire"),
    /// No column of ours: kept in the notes, as `heading: value`.
    AMONG_NOTES("kept in the notes"),
    LEFT_OUT("left out");

    private final String label;

    Column(String label) {
        this.label = label;
    }

    /// The word for it in our own files; for columns that our files do not have, plain words.
    public String label() {
        return label;
    }

    /// Whether several columns of a file may hold this.
    public boolean mayRepeat() {
        return switch (this) {
            case STATED, HETS, POSSIBLE_HETS, NOTES, AMONG_NOTES, LEFT_OUT -> true;
            case TAG,
                    NAME,
                    SEX,
                    HATCHED,
                    SIRE,
                    DAM,
                    SHOWS,
                    STATUS,
                    SPECIES,
                    ROOM,
                    RACK,
                    TUB,
                    PLACE,
                    WEIGHT,
                    WEIGHED,
                    ORIGIN,
                    BREEDER,
                    LINE,
                    CREDIT,
                    ACQUIRED,
                    SIRE_QUESTION,
                    WITHOUT_SIRE ->
                    false;
        };
    }
}
