package clutchwright.app.wording;

import clutchwright.records.checks.Field;

/// What fields, fates of eggs and uses of a record are called in a sentence.
final class FieldWords {

    private FieldWords() {}

    static String the(Field field) {
        return switch (field) {
            case TAG -> "the tag";
            case NAME -> "the name";
            case SPECIES -> "the species";
            case HATCHED -> "the day of hatching";
            case ACQUIRED -> "the day it came";
            case DAM -> "the dam";
            case SIRE -> "the sire";
            case GENE_LINE -> "the gene line";
            case SAID_OR_SEEN_ON -> "the day it was said or seen";
            case SEASON -> "the season";
            case PUT_TOGETHER -> "the day they were put together";
            case SEPARATED -> "the day they were separated";
            case SIGN_SEEN_ON -> "the day of the sign";
            case CLUTCH_NUMBER -> "the clutch’s number";
            case LAID -> "the day of laying";
            case EGGS -> "the number of eggs";
            case CANDLED -> "the day of candling";
            case LOST -> "the day the egg was found lost";
            case PIPPED -> "the day of pipping";
            case BOX -> "the box";
            case INCUBATOR -> "the incubator";
            case SENSOR -> "the sensor";
            case TOPIC -> "the topic";
            case WEIGHED -> "the day of weighing";
            case GRAMS -> "the weight";
            case FED -> "the day of the meal";
            case SHED -> "the day of the shed";
            case NOTED -> "the day of the note";
            case NOTE -> "the note";
            case ROOM -> "the room";
            case RACK -> "the rack";
            case TUB -> "the tub";
            case PHOTO -> "the photo";
            case PROJECT -> "the project";
            case LOCUS -> "the gene";
            case SETTING -> "the setting";
        };
    }

    /// @param fate as the records name it
    static String fate(String fate) {
        return switch (fate) {
            case "SLUG" -> "a slug";
            case "LOST" -> "lost";
            case "HATCHED" -> "hatched";
            default -> "incubating";
        };
    }

    /// @param kind as the records name it
    static String use(String kind, int count, Formats formats) {
        return switch (kind) {
            case "offspring" -> count == 1 ? "its young" : formats.whole(count) + " of its young";
            case "pairing" -> formats.count(count, "pairing", "pairings");
            case "clutch" -> formats.count(count, "clutch", "clutches");
            case "hatchling" -> formats.count(count, "hatchling", "hatchlings");
            case "egg" -> formats.count(count, "egg", "eggs");
            case "sensor" -> formats.count(count, "sensor", "sensors");
            case "box" -> formats.count(count, "box", "boxes");
            case "rack" -> formats.count(count, "rack", "racks");
            case "tub" -> formats.count(count, "tub", "tubs");
            default -> formats.count(count, "animal", "animals");
        };
    }
}
