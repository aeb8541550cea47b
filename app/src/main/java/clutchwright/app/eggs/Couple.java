package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Biparental;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.stream.Collectors;

/// The parents of a clutch, as a page shows them.
///
/// @param sires empty where he is not known or there was none, several where he is in doubt
public record Couple(Parent dam, List<Parent> sires, boolean withoutMale) {

    public Couple {
        sires = List.copyOf(sires);
    }

    /// @param chance of having been the parent
    public record Parent(
            AnimalId id, String tag, String name, GeneLineMarkup genes, Fraction chance) {

        public String link() {
            return "/collection/" + id;
        }

        /// Tag and name.
        public String called() {
            return name.isEmpty() ? tag : tag + " " + name;
        }
    }

    static Couple of(Holding holding, Parentage parentage) {
        var dam = parent(holding, parentage.dams().getFirst(), Fraction.WHOLE);
        var sires =
                switch (parentage) {
                    case Biparental(_, Sire.InDoubt(var question)) ->
                            question.candidates().chances().entrySet().stream()
                                    .map(each -> parent(holding, each.getKey(), each.getValue()))
                                    .toList();
                    case Parentage other ->
                            other.sires().stream()
                                    .map(sire -> parent(holding, sire, Fraction.WHOLE))
                                    .toList();
                };
        return new Couple(dam, sires, parentage instanceof Parentage.Parthenogenetic);
    }

    public boolean inDoubt() {
        return sires.size() > 1;
    }

    /// Both by their tags: `D-30 × E-11 or E-12`.
    public String inWords() {
        return dam.tag() + " × " + sireInWords();
    }

    /// The sire by his tag, or why there is none to name.
    public String sireInWords() {
        if (withoutMale) {
            return "no male";
        }
        return sires.isEmpty()
                ? "sire not known"
                : sires.stream().map(Parent::tag).collect(Collectors.joining(" or "));
    }

    private static Parent parent(Holding holding, AnimalId id, Fraction chance) {
        var animal = holding.knowledge().find(id);
        return new Parent(
                id,
                animal.map(found -> found.tag().value()).orElse("no longer on record"),
                animal.map(found -> found.name()).orElse(""),
                holding.line(id),
                chance);
    }
}
