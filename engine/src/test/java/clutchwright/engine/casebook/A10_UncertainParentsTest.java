package clutchwright.engine.casebook;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.carries;
import static clutchwright.engine.casebook.TestGenes.chanceOf;
import static clutchwright.engine.casebook.TestGenes.form;
import static clutchwright.engine.casebook.TestGenes.outcome;
import static clutchwright.engine.casebook.TestGenes.perhaps;
import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Wanted;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.reference.Reference;
import clutchwright.engine.reference.Reference.Kind;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// Parents of whom it is not known what they carry, with the trade's percentages.
class A10_UncertainParentsTest {

    private final GeneticModel model = new TestGenes().recessive("clown", "Clown").model();
    private final ParentGenotype visual = animal("clown", "Clown/Clown");
    private final ParentGenotype het = animal("clown", "Clown/+");
    private final ParentGenotype twoThirds = possible(Fraction.of(2, 3));
    private final ParentGenotype half = possible(Fraction.HALF);
    private final Wanted clowns = new Wanted(Set.of(form("clown", "Clown")), Set.of());

    private static ParentGenotype possible(Fraction chance) {
        return perhaps(ParentGenotype.WILD, "clown", "Clown/+", chance);
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Mendel's first law over a prior of carrying; the trade's percentages",
            locator = "possible hets at 66 % and 50 % by normal, visual, het and each other")
    void the_percentages_of_the_trade() {
        assertPair(twoThirds, ParentGenotype.WILD, Fraction.NONE, Fraction.of(1, 3));
        assertPair(half, ParentGenotype.WILD, Fraction.NONE, Fraction.of(1, 4));
        assertPair(twoThirds, visual, Fraction.of(1, 3), Fraction.WHOLE);
        assertPair(half, het, Fraction.of(1, 8), Fraction.of(4, 7));
        assertPair(twoThirds, het, Fraction.of(1, 6), Fraction.of(3, 5));
        assertPair(twoThirds, twoThirds, Fraction.of(1, 9), Fraction.HALF);
        assertPair(half, half, Fraction.of(1, 16), Fraction.of(2, 5));
    }

    private void assertPair(
            ParentGenotype dam, ParentGenotype sire, Fraction visuals, Fraction normalCarries) {
        var cross = Cross.of(model, dam, sire);
        assertThat(chanceOf(cross, "Clown")).isEqualTo(visuals);
        assertThat(carries(cross, "Normal")).isEqualTo(normalCarries + " Clown");
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "eggs of one clutch share what their parents carry",
            locator = "50 % possible het by visual, six eggs: 1/2 (1 - (1/2)^6)")
    void a_clutch_of_a_possible_het_shares_the_doubt() {
        var cross = Cross.of(model, half, visual);

        // Not 1 - (3/4)^6, as if each egg had a dam of its own.
        assertThat(cross.atLeastOne(clowns, 6)).isEqualTo(Fraction.of(63, 128));
        assertThat(cross.atLeastOne(outcome(cross, "Clown"), 6)).isEqualTo(Fraction.of(63, 128));
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Bayes' rule over both parents together",
            locator = "66 % by 66 %, no visual in n eggs: the next one visual at 1/9, 3/32, 9/116")
    void clutches_of_two_possible_hets_are_not_independent() {
        var cross = Cross.of(model, twoThirds, twoThirds);

        // P(next visual | n plain) = 1 - P(n + 1 plain) / P(n plain)
        assertThat(nextVisual(cross, 0)).isEqualTo(Fraction.of(1, 9));
        assertThat(nextVisual(cross, 1)).isEqualTo(Fraction.of(3, 32));
        assertThat(nextVisual(cross, 2)).isEqualTo(Fraction.of(9, 116));
        assertThat(nextVisual(cross, 4)).isEqualTo(Fraction.of(81, 1604));
        assertThat(nextVisual(cross, 12)).isEqualTo(Fraction.of(531441, 86011844));
    }

    private static Fraction nextVisual(Cross cross, int plain) {
        var before = cross.clutchChance(List.of(new Cross.Found(Set.of(), plain)));
        var after = cross.clutchChance(List.of(new Cross.Found(Set.of(), plain + 1)));
        return after.dividedBy(before).complement();
    }

    @Test
    @Reference(
            kind = Kind.DERIVED,
            source = "Bayes' rule over the possible sires",
            locator = "het dam, sire het at 1/2, two visuals of six: 1/2 15 (1/4)^2 (3/4)^4")
    void a_clutch_with_visuals_has_the_mean_of_its_chances() {
        var cross = Cross.of(model, het, half);
        var found =
                List.of(
                        new Cross.Found(Set.of(form("clown", "Clown")), 2),
                        new Cross.Found(Set.of(), 4));

        assertThat(cross.clutchChance(found))
                .isEqualTo(Fraction.of(81, 8192).times(Fraction.of(15, 1)));
    }

    @Test
    void embryos_that_die_weigh_the_parents_of_those_that_all_hatch() {
        // Both het at 1/2 each: lethal when doubled. All six hatch at (3/4)^6 if both are.
        var lethal =
                new TestGenes()
                        .locus("l", List.of("L"), "L/+", "One", "L/L", "Two")
                        .viability("l", "L/L", Fraction.NONE)
                        .model();
        var dam = perhaps(ParentGenotype.WILD, "l", "L/+", Fraction.HALF);
        var cross = Cross.of(lethal, dam, animal("l", "L/+"));

        var plain = cross.clutchChance(List.of(new Cross.Found(Set.of(), 6)));

        // (1/2 (1/4)^6 + 1/2 (1/2)^6) / (1/2 (3/4)^6 + 1/2) = (1 + 64) / (729 + 4096)
        assertThat(plain).isEqualTo(Fraction.of(65, 4825));
    }
}
