package clutchwright.records.plans;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// The house's own price list.
public final class Prices {

    private static final String ANY = "ANY";

    private final Transaction tx;

    public Prices(Transaction tx) {
        this.tx = tx;
    }

    /// In the order in which they were first written.
    public List<Price> of(String species) {
        return tx.list(Prices::read, "select * from price where species = ? order by id", species);
    }

    /// Puts a whole list in place of the one of that species; what stays as it is is not written.
    ///
    /// @throws IllegalArgumentException if two prices are of the same genes and sex, or one is of
    ///     another species
    public void replace(String species, List<Price> prices) {
        var wanted = new LinkedHashMap<String, Price>();
        for (var price : prices) {
            if (!price.species().equals(species) || wanted.put(key(price), price) != null) {
                throw new IllegalArgumentException("twice or of another species: " + price);
            }
        }
        var there =
                tx.list(
                        row -> new Kept(row.number("id"), read(row)),
                        "select * from price where species = ?",
                        species);
        for (var kept : there) {
            var now = wanted.remove(key(kept.price()));
            if (now == null) {
                tx.delete("price", kept.id());
            } else if (!now.equals(kept.price())) {
                tx.update("price", kept.id(), values(now));
            }
        }
        wanted.values().forEach(price -> tx.insert("price", values(price)));
    }

    private record Kept(long id, Price price) {}

    private static String key(Price price) {
        return Words.key(price.genes()) + "\n" + sex(price);
    }

    private static String sex(Price price) {
        return price.sex().map(Sex::name).orElse(ANY);
    }

    private static Values values(Price price) {
        return Values.of()
                .set("species", price.species())
                .set("genes", price.genes())
                .set("genes_key", Words.key(price.genes()))
                .set("sex", sex(price))
                .set("amount", price.amount())
                .setIfAny("sells", price.later().map(Price.Later::sells))
                .setIfAny("later", price.later().map(Price.Later::amount));
    }

    private static Price read(Row row) {
        var sex = row.text("sex");
        return new Price(
                row.text("species"),
                row.text("genes"),
                sex.equals(ANY) ? Optional.empty() : Optional.of(Sex.valueOf(sex)),
                row.real("amount"),
                row.findNumber("sells")
                        .map(sells -> new Price.Later(Math.toIntExact(sells), row.real("later"))));
    }
}
