package clutchwright.engine.planning;

/// What so many hatchlings of a kind sell for in a year: the first at the highest price, later ones
/// for no more.
///
/// @param hatchlings that sell at this price, above zero
/// @param price of one, 0 or more, in the breeder's own money
public record PriceStep(double hatchlings, double price) {

    public PriceStep {
        if (!(hatchlings > 0 && price >= 0 && Double.isFinite(price))) {
            throw new IllegalArgumentException(hatchlings + " at " + price);
        }
    }
}
