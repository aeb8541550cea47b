package clutchwright.app.steering;

import clutchwright.app.wording.PriceWords;
import clutchwright.app.wording.ReadingWords;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Reading;
import clutchwright.engine.planning.PriceList;
import clutchwright.engine.planning.PriceStep;
import clutchwright.records.plans.Price;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// A house's prices as lines of text, one a price: `0.1 Clown: 400; 6 a year, then 250`.
public final class PriceLines {

    private static final String NUMBER = "([0-9]{1,9}(?:[.,][0-9]{1,2})?)";
    private static final Pattern LINE =
            Pattern.compile(
                    "(.+?)\\s*:\\s*"
                            + NUMBER
                            + "\\s*(?:;\\s*([0-9]{1,5})\\s+a\\s+year\\s*,?\\s*then\\s+"
                            + NUMBER
                            + "\\s*)?");

    /// Left alone where any number sells at the price.
    private static final double ANY_NUMBER = 1e6;

    private final GeneLine lines;
    private final String species;

    public PriceLines(GeneLine lines, String species) {
        this.lines = lines;
        this.species = species;
    }

    public sealed interface Read {

        record Understood(List<Price> prices) implements Read {

            public Understood {
                prices = List.copyOf(prices);
            }
        }

        /// @param faults each with its line, counted from 1, and what was expected
        record Faulty(List<String> faults) implements Read {

            public Faulty {
                faults = List.copyOf(faults);
            }
        }
    }

    /// What a price is of.
    private sealed interface Priced {

        record OfLook(PriceList.Look look) implements Priced {}

        record OfHet(Allele allele) implements Priced {}

        record Unclear(String sentence) implements Priced {}
    }

    public Read read(String text) {
        var prices = new ArrayList<Price>();
        var faults = new ArrayList<String>();
        var seen = new LinkedHashSet<Priced>();
        var number = 0;
        for (var line : text.lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            var parts = LINE.matcher(line.strip());
            if (!parts.matches()) {
                faults.add(PriceWords.priceLine(number, PriceWords.PRICE_EXPECTED));
                continue;
            }
            var priced = priced(parts.group(1));
            if (priced instanceof Priced.Unclear(var sentence)) {
                faults.add(PriceWords.priceLine(number, sentence));
            } else if (!seen.add(priced)) {
                faults.add(PriceWords.priceLine(number, PriceWords.PRICED_TWICE));
            } else {
                var first = amount(parts.group(2));
                var later =
                        Optional.ofNullable(parts.group(3))
                                .map(Integer::parseInt)
                                .map(sells -> new Sells(sells, amount(parts.group(4))));
                if (later.filter(one -> one.amount() > first || one.sells() < 1).isPresent()) {
                    faults.add(PriceWords.priceLine(number, PriceWords.LATER_IS_MORE));
                } else {
                    prices.add(price(parts.group(1), first, later));
                }
            }
        }
        return faults.isEmpty() ? new Read.Understood(prices) : new Read.Faulty(faults);
    }

    private record Sells(int sells, double amount) {}

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Price price(String line, double amount, Optional<Sells> later) {
        var genes = genes(line).orElseThrow();
        return new Price(
                species,
                lines.write(new Genes(genes.statements(), Optional.empty(), genes.remarks())),
                genes.sex(),
                amount,
                later.map(one -> new Price.Later(one.sells(), one.amount())));
    }

    private static double amount(String text) {
        return new BigDecimal(text.replace(',', '.')).doubleValue();
    }

    private Optional<Genes> genes(String line) {
        return lines.read(line) instanceof Reading.Understood(var genes, _, _)
                ? Optional.of(genes)
                : Optional.empty();
    }

    private Priced priced(String line) {
        return switch (lines.read(line)) {
            case Reading.Unclear(var faults, _) ->
                    new Priced.Unclear(
                            faults.stream().map(ReadingWords::of).collect(Collectors.joining(" ")));
            case Reading.Understood(var genes, _, _) -> priced(genes);
        };
    }

    private Priced priced(Genes genes) {
        var shows = new LinkedHashSet<Phenotype>();
        var hets = new ArrayList<Allele>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Genes.Statement.Shows seen -> {
                    var map = lines.catalogue().model().theLocus(seen.locus());
                    var looks =
                            seen.pairs().stream().map(map::phenotypeOf).collect(Collectors.toSet());
                    if (seen.doubtful() || looks.size() != 1) {
                        return new Priced.Unclear(PriceWords.PRICE_IN_DOUBT);
                    }
                    looks.stream().filter(Phenotype::visible).forEach(shows::add);
                }
                case Genes.Statement.Carries(var allele, var chance) -> {
                    if (!chance.isWhole()) {
                        return new Priced.Unclear(PriceWords.HET_FOR_CERTAIN);
                    }
                    hets.add(allele);
                }
            }
        }
        if (hets.isEmpty()) {
            return new Priced.OfLook(new PriceList.Look(shows, genes.sex()));
        }
        return shows.isEmpty() && hets.size() == 1 && genes.sex().isEmpty()
                ? new Priced.OfHet(hets.getFirst())
                : new Priced.Unclear(PriceWords.HET_BY_ITSELF);
    }

    /// The list as the engine takes it. A price whose genes the catalogue does not know any more
    /// is left out.
    public PriceList list(List<Price> prices) {
        var looks = new ArrayList<PriceList.Price>();
        var hets = new LinkedHashMap<Allele, Double>();
        for (var price : prices) {
            switch (priced(price.genes())) {
                case Priced.OfLook(var look) ->
                        looks.add(
                                new PriceList.Price(
                                        new PriceList.Look(look.shows(), price.sex()),
                                        steps(price)));
                case Priced.OfHet(var allele) -> hets.put(allele, price.amount());
                case Priced.Unclear _ -> {}
            }
        }
        return new PriceList(looks, hets);
    }

    private static List<PriceStep> steps(Price price) {
        return price.later()
                .map(
                        later ->
                                List.of(
                                        new PriceStep(later.sells(), price.amount()),
                                        new PriceStep(ANY_NUMBER, later.amount())))
                .orElseGet(() -> List.of(new PriceStep(ANY_NUMBER, price.amount())));
    }

    /// The lines of a list, as [#read] takes them.
    public static String write(List<Price> prices) {
        return prices.stream().map(PriceLines::write).collect(Collectors.joining("\n"));
    }

    private static String write(Price price) {
        return "%s%s: %s%s"
                .formatted(
                        price.sex().map(sex -> sex == Sex.MALE ? "1.0 " : "0.1 ").orElse(""),
                        price.genes(),
                        plain(price.amount()),
                        price.later()
                                .map(
                                        later ->
                                                "; %d a year, then %s"
                                                        .formatted(
                                                                later.sells(),
                                                                plain(later.amount())))
                                .orElse(""));
    }

    private static String plain(double amount) {
        return BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
    }
}
