package clutchwright.app.eggs;

import clutchwright.engine.genetics.Group;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.Optional;
import java.util.Set;

/// What a hatchling's looks say about the parents on record.
public sealed interface Judgement {

    /// These parents give such hatchlings.
    record Usual(Expected.Guess guess) implements Judgement {}

    /// They do, and seldom anything as unlikely.
    ///
    /// @param asUnlikely the chance of a hatchling that is no likelier than this one
    record Rare(Expected.Guess guess, Fraction asUnlikely) implements Judgement {}

    /// They do, but seldom or never of that sex.
    ///
    /// @param ofThatSex the chance that a hatchling which looks so is of it
    record SeldomOfSex(Expected.Guess guess, Sex sex, Fraction ofThatSex) implements Judgement {}

    /// They cannot give it as they are recorded.
    record Impossible() implements Judgement {}

    /// Nothing is known to hold it against.
    record Unjudged() implements Judgement {}

    /// Above so many groups none is called rare: each of them is.
    int FEW = 4000;

    Fraction RARE = Fraction.of(1, 200);

    /// Where a gene is linked to the sex, sexing a hatchling again costs little.
    Fraction SELDOM = Fraction.of(1, 10);

    static Judgement of(Expected expected, Set<Phenotype> shows, Optional<Sex> sex) {
        var found = expected.find(shows);
        if (found.isEmpty()) {
            return new Impossible();
        }
        var guess = found.get();
        if (sex.isPresent()) {
            var ofThatSex = expected.chanceOf(sex.get(), shows);
            if (ofThatSex.compareTo(SELDOM) < 0) {
                return new SeldomOfSex(guess, sex.get(), ofThatSex);
            }
        }
        if (expected.parts().size() > 1 || expected.groups() > FEW) {
            return new Usual(guess);
        }
        var asUnlikely =
                expected.parts().getFirst().cross().groups(FEW).stream()
                        .map(Group::chance)
                        .filter(chance -> chance.compareTo(guess.chance()) <= 0)
                        .reduce(Fraction.NONE, Fraction::plus);
        return asUnlikely.compareTo(RARE) < 0 ? new Rare(guess, asUnlikely) : new Usual(guess);
    }

    default boolean isSurprising() {
        return switch (this) {
            case Usual _, Unjudged _ -> false;
            case Rare _, SeldomOfSex _, Impossible _ -> true;
        };
    }
}
