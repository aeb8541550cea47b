package clutchwright.app.eggs;

import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Biparental;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animals;
import clutchwright.records.store.Transaction;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.SequencedMap;
import java.util.stream.Collectors;

/// Who fathered the eggs, as a form says it: ticked males, and others by tag, `E-11:0.7 | E-12:0.3`
/// where they are not equally likely.
///
/// @param weights of each candidate, above zero; empty where he is not known
record SireChoice(SequencedMap<AnimalId, Fraction> weights, boolean withoutMale) {

    static final String TICKED = "sire";
    static final String OTHER = "others";
    static final String WITHOUT = "alone";

    static Fields.Read<SireChoice> read(Fields fields, Form form, Transaction tx) {
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        for (var id : form.texts(TICKED)) {
            if (id.matches("\\d{1,18}")) {
                weights.put(new AnimalId(Long.parseLong(id)), Fraction.WHOLE);
            }
        }
        for (var part : form.text(OTHER).split("\\|", -1)) {
            if (!part.isBlank()) {
                var colon = part.lastIndexOf(':');
                var tag = (colon < 0 ? part : part.substring(0, colon)).strip();
                var male = new Animals(tx).byTag(tag);
                if (male.isEmpty()) {
                    return fields.faulty(OTHER, "No animal has the tag “%s”.".formatted(tag));
                }
                var weight = colon < 0 ? Fraction.WHOLE : weight(part.substring(colon + 1));
                if (weight.isNone()) {
                    return fields.faulty(
                            OTHER,
                            "Write the weight of %s as a number above 0, such as %s:0.7."
                                    .formatted(tag, tag));
                }
                weights.put(male.get().id(), weight);
            }
        }
        if (fields.ticked(WITHOUT) && !weights.isEmpty()) {
            return fields.faulty(
                    OTHER, "Either she was with a male or she was not: take one of the two away.");
        }
        return fields.understood(new SireChoice(weights, fields.ticked(WITHOUT)));
    }

    /// The candidates as this form's text, their weights in whole numbers.
    static String text(Couple couple) {
        if (!couple.inDoubt()) {
            return couple.sires().stream().map(Couple.Parent::tag).collect(Collectors.joining());
        }
        var parts =
                couple.sires().stream()
                        .map(sire -> sire.chance().denominator())
                        .reduce(BigInteger.ONE, (a, b) -> a.multiply(b).divide(a.gcd(b)));
        return couple.sires().stream()
                .map(
                        sire ->
                                sire.tag()
                                        + ":"
                                        + sire.chance()
                                                .times(Fraction.of(parts, BigInteger.ONE))
                                                .numerator())
                .collect(Collectors.joining(" | "));
    }

    Parentage parentage(AnimalId dam) {
        if (withoutMale) {
            return new Parentage.Parthenogenetic(dam);
        }
        Sire sire =
                switch (weights.size()) {
                    case 0 -> new Sire.Unknown();
                    case 1 -> new Sire.Known(weights.firstEntry().getKey());
                    default ->
                            new Sire.InDoubt(
                                    new SireQuestion(
                                            "clutch",
                                            Distribution.proportionalTo(weights).orElseThrow()));
                };
        return new Biparental(new Dam.Known(dam), sire);
    }

    /// None where the text is not a number above zero.
    private static Fraction weight(String text) {
        var bare = text.strip().replace(',', '.');
        if (!bare.matches("\\d{1,6}(\\.\\d{1,6})?")) {
            return Fraction.NONE;
        }
        var number = new BigDecimal(bare);
        return Fraction.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }
}
