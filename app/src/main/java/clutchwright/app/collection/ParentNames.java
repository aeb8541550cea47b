package clutchwright.app.collection;

import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Function;

/// Dam and sire by their tags, as a form holds them: one sire, or several with weights where he is
/// in doubt.
final class ParentNames {

    static final List<String> SIRES = List.of("sire", "sire2", "sire3", "sire4");

    private static final String ALONE = "alone";

    private ParentNames() {}

    static String weightOf(String sire) {
        return sire.replace("sire", "weight");
    }

    /// @param before what was on record of the animal: a question about its sire that did not
    ///     change stays the same question, which its clutch-mates may share
    /// @param key of a new question
    static Parentage read(Form form, Fields fields, Animals animals, Parentage before, String key) {
        var dam = find(form, fields, animals, "dam").<Dam>map(Dam.Known::new);
        var sires = new LinkedHashMap<AnimalId, Fraction>();
        for (var field : SIRES) {
            find(form, fields, animals, field)
                    .ifPresent(id -> sires.put(id, weight(form, fields, weightOf(field))));
        }
        if (fields.ticked(ALONE)) {
            if (dam.isEmpty()) {
                fields.faulty("dam", "Hatched without a sire: write who the dam is.");
            }
            if (!sires.isEmpty()) {
                fields.faulty("sire", "Hatched without a sire: leave the sire empty.");
            }
            return dam.filter(Dam.Known.class::isInstance)
                    .map(Dam.Known.class::cast)
                    .<Parentage>map(known -> new Parentage.Parthenogenetic(known.animal()))
                    .orElseGet(Parentage.Founder::new);
        }
        return Parentage.of(dam.orElseGet(Dam.Unknown::new), sire(sires, before, key));
    }

    /// The fields of a parentage on record.
    static void fill(
            Map<String, String> texts, Parentage parentage, Function<AnimalId, String> tag) {
        parentage.dams().forEach(dam -> texts.put("dam", tag.apply(dam)));
        var sires = parentage.sires();
        for (int i = 0; i < Math.min(sires.size(), SIRES.size()); i++) {
            texts.put(SIRES.get(i), tag.apply(sires.get(i)));
        }
        switch (parentage) {
            case Parentage.Founder() -> {}
            case Parentage.Parthenogenetic _ -> texts.put(ALONE, "yes");
            case Parentage.Biparental(_, Sire.InDoubt(var question)) -> {
                for (int i = 0; i < Math.min(sires.size(), SIRES.size()); i++) {
                    texts.put(
                            weightOf(SIRES.get(i)),
                            inHundred(question.candidates().chanceOf(sires.get(i))));
                }
            }
            case Parentage.Biparental _ -> {}
        }
    }

    private static Sire sire(
            SequencedMap<AnimalId, Fraction> weights, Parentage before, String key) {
        if (weights.isEmpty()) {
            return new Sire.Unknown();
        }
        if (weights.size() == 1) {
            return new Sire.Known(weights.firstEntry().getKey());
        }
        var candidates = Distribution.proportionalTo(weights).orElseThrow();
        return before instanceof Parentage.Biparental(_, Sire.InDoubt(var question))
                        && question.candidates().equals(candidates)
                ? new Sire.InDoubt(question)
                : new Sire.InDoubt(new Parentage.SireQuestion(key, candidates));
    }

    private static Optional<AnimalId> find(
            Form form, Fields fields, Animals animals, String field) {
        var tag = form.text(field);
        if (tag.isEmpty()) {
            return Optional.empty();
        }
        var found = animals.byTag(tag);
        if (found.isEmpty()) {
            fields.faulty(
                    field,
                    "There is no animal with the tag %s. Add it first, or correct the tag."
                            .formatted(tag));
        }
        return found.map(Animal::id);
    }

    /// Where no weight is given, each male weighs alike.
    private static Fraction weight(Form form, Fields fields, String field) {
        var text = form.text(field).replace("%", "").strip().replace(',', '.');
        if (text.isEmpty()) {
            return Fraction.WHOLE;
        }
        if (text.matches("[0-9]{1,6}([.][0-9]{1,6})?")) {
            var written = new BigDecimal(text);
            var weight = Fraction.of(written.unscaledValue(), BigInteger.TEN.pow(written.scale()));
            if (!weight.isNone()) {
                return weight;
            }
        }
        if (text.matches("[1-9][0-9]{0,5}/[1-9][0-9]{0,5}")) {
            return Fraction.parse(text);
        }
        fields.faulty(field, "Write a weight above 0, such as 70, not “%s”.".formatted(text));
        return Fraction.WHOLE;
    }

    private static String inHundred(Fraction chance) {
        var hundred = chance.times(Fraction.of(100, 1));
        return hundred.denominator().equals(BigInteger.ONE)
                ? hundred.numerator().toString()
                : chance.toString();
    }
}
