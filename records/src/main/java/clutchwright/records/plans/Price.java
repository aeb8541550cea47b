package clutchwright.records.plans;

import clutchwright.engine.genetics.Sex;
import java.util.Optional;

/// What the house asks for a hatchling, in its own money.
///
/// @param genes as the keeper writes them: what it shows, or one allele that it is het for
/// @param sex only of that sex; empty for either
/// @param amount 0 or more
/// @param later what more of them in a year are worth; empty where any number sells
public record Price(
        String species, String genes, Optional<Sex> sex, double amount, Optional<Later> later) {

    /// @param sells so many a year sell at the first price, at least 1
    /// @param amount of one more, from 0 to the first price
    public record Later(int sells, double amount) {

        public Later {
            if (sells < 1 || !(amount >= 0)) {
                throw new IllegalArgumentException(sells + " sell, then " + amount);
            }
        }
    }

    public Price {
        genes = genes.strip();
        var most = amount;
        if (genes.isEmpty()
                || !(amount >= 0 && Double.isFinite(amount))
                || later.filter(one -> one.amount() > most).isPresent()) {
            throw new IllegalArgumentException("no price: %s at %s".formatted(genes, amount));
        }
    }
}
