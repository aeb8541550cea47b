package clutchwright.app.wording;

import clutchwright.records.exchange.Column;

/// What a column of a file holds, as a choice to read.
public final class ColumnWords {

    private ColumnWords() {}

    public static String of(Column column) {
        return switch (column) {
            case TAG -> "Tag";
            case NAME -> "Name";
            case SEX -> "Sex";
            case HATCHED -> "Hatched on";
            case SIRE -> "Sire";
            case DAM -> "Dam";
            case STATED -> "Genes, as stated";
            case HETS -> "Genes it carries unseen";
            case POSSIBLE_HETS -> "Genes it may carry";
            case SHOWS -> "Genes it shows, as seen here";
            case STATUS -> "Status";
            case SPECIES -> "Species";
            case ROOM -> "Room";
            case RACK -> "Rack";
            case TUB -> "Tub";
            case PLACE -> "Place: room, rack and tub";
            case WEIGHT -> "Weight";
            case WEIGHED -> "Weighed on";
            case ORIGIN -> "Origin";
            case BREEDER -> "From whom it came";
            case LINE -> "Line";
            case CREDIT -> "Credit for the line";
            case ACQUIRED -> "Came on";
            case NOTES -> "Notes";
            case SIRE_QUESTION -> "Which sire question";
            case WITHOUT_SIRE -> "Without a sire";
            case AMONG_NOTES -> "Keep it in the notes";
            case LEFT_OUT -> "Leave it out";
        };
    }
}
