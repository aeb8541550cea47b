package clutchwright.app.wording;

/// The house's price list, in a breeder's words.
public final class PriceWords {

    public static final String PRICE_EXPECTED =
            "write what it shows, a colon and a price, such as “Clown: 300” or “0.1 Clown: 400; 6 a"
                    + " year, then 250”.";
    public static final String PRICED_TWICE = "this has a price already, further up.";
    public static final String LATER_IS_MORE =
            "later ones cannot sell for more than the first, and at least one sells at the first"
                    + " price.";
    public static final String PRICE_IN_DOUBT =
            "name one look for certain: what a price is of is not in doubt.";
    public static final String HET_FOR_CERTAIN =
            "write the price of a het that is proven; each hatchling counts it at its own chance.";
    public static final String HET_BY_ITSELF =
            "give a het a line of its own, without a sex, such as “het Clown: 60”: it is added to"
                    + " what the look sells for.";

    private PriceWords() {}

    /// @param number of the line, from 1
    public static String priceLine(int number, String sentence) {
        return "Line %d: %s".formatted(number, sentence);
    }
}
