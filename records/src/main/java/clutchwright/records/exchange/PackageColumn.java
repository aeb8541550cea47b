package clutchwright.records.exchange;

import java.util.List;

/// A column of a file of the open package, and of the table behind it.
///
/// @param heading in the file
/// @param column  of the table; blank where it only names the row for other files
/// @param words   the only ones that may stand, where the kind is `WORD`
record PackageColumn(
        String heading, String column, Kind kind, boolean required, List<String> words) {

    PackageColumn {
        words = List.copyOf(words);
    }

    /// What stands in the cells, and how another row is named.
    enum Kind {
        TEXT("string"),
        WORD("string"),
        WHOLE("integer"),
        /// 0 or more.
        COUNT("integer"),
        /// 0 or more.
        AMOUNT("number"),
        /// Above zero.
        NUMBER("number"),
        /// Of either sign.
        SIGNED("number"),
        YES_NO("boolean"),
        DAY("date"),
        /// A name by which rows of other files call this one; not kept.
        NAME("string"),
        ANIMAL("string"),
        /// One tag, or candidates; as in `animals.csv`.
        SIRE("string"),
        PAIRING("string"),
        CLUTCH("string"),
        EGG("string"),
        BOX("string"),
        INCUBATOR("string"),
        PROJECT("string"),
        PLAN("string");

        private final String schemaType;

        Kind(String schemaType) {
            this.schemaType = schemaType;
        }

        /// As the Table Schema of the Frictionless Data Package names it.
        String schemaType() {
            return schemaType;
        }
    }

    static PackageColumn needed(String heading, String column, Kind kind) {
        return new PackageColumn(heading, column, kind, true, List.of());
    }

    static PackageColumn optional(String heading, String column, Kind kind) {
        return new PackageColumn(heading, column, kind, false, List.of());
    }

    static PackageColumn text(String heading, String column) {
        return optional(heading, column, Kind.TEXT);
    }

    static PackageColumn word(String heading, String column, String... words) {
        return new PackageColumn(heading, column, Kind.WORD, true, List.of(words));
    }
}
