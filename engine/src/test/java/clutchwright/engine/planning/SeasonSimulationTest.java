package clutchwright.engine.planning;

import static clutchwright.engine.casebook.TestGenes.animal;
import static clutchwright.engine.casebook.TestGenes.form;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.PriceList.Look;
import clutchwright.engine.planning.PriceList.Price;
import clutchwright.engine.probability.Fraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;
import org.junit.jupiter.api.Test;

/// What hatchlings sell for, held against sums over every number of visuals that a clutch may
/// have; and the season that is played through against the same.
class SeasonSimulationTest {

    private static final int RUNS = 40_000;
    private static final long SEED = 20_261_127;
    private static final GeneticModel MODEL = new TestGenes().recessive("clown", "Clown").model();
    private static final ParentGenotype HET = animal("clown", "Clown/+");
    private static final ParentGenotype VISUAL = animal("clown", "Clown/Clown");
    private static final Allele CLOWN = new Allele(new LocusId("clown"), "Clown");

    private static PriceList list(Price... prices) {
        return new PriceList(List.of(prices), new LinkedHashMap<>(Map.of(CLOWN, 30.0)));
    }

    private static Price clown(Optional<Sex> sex, PriceStep... steps) {
        return new Price(new Look(Set.of(form("clown", "Clown")), sex), List.of(steps));
    }

    @Test
    void a_price_of_a_sex_goes_before_one_of_either_and_a_look_without_a_price_is_named() {
        var prices =
                list(
                        clown(Optional.empty(), new PriceStep(9, 300)),
                        clown(Optional.of(Sex.FEMALE), new PriceStep(9, 400)));

        var kinds = ClutchKinds.of(Cross.of(MODEL, HET, VISUAL), prices);

        assertThat(kinds.priced())
                .containsExactlyInAnyOrderEntriesOf(Map.of("Clown", 0.25, "0.1 Clown", 0.25));
        assertThat(kinds.unpriced()).containsExactlyEntriesOf(Map.of("Normal", 0.5));
        assertThat(kinds.seen()).isEqualTo(1);
        // Half of them are proven het and nothing else.
        assertThat(kinds.hetWorth()).isEqualTo(15);
        assertThat(kinds.firstWorth()).isEqualTo(15 + 0.25 * 300 + 0.25 * 400);
    }

    /// Two thirds of the plain young of two hets are het: the handbook's 66 %.
    @Test
    void a_possible_het_is_worth_its_chance() {
        var kinds = ClutchKinds.of(Cross.of(MODEL, HET, HET), list());

        assertThat(kinds.hetWorth()).isCloseTo(0.75 * 2 / 3 * 30, within(1e-12));
    }

    @Test
    void no_look_is_priced_twice() {
        var price = clown(Optional.empty(), new PriceStep(9, 300));

        assertThatThrownBy(() -> list(price, price)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void later_ones_of_a_kind_sell_for_less() {
        var prices = list(clown(Optional.empty(), new PriceStep(2, 300), new PriceStep(99, 100)));
        var eggs = 6;
        var exact = 0.0;
        var squares = 0.0;
        for (var visuals = 0; visuals <= eggs; visuals++) {
            var worth =
                    300 * Math.min(visuals, 2)
                            + 100 * Math.max(visuals - 2, 0)
                            // Each hatchling is het at even chances beforehand: counted at its
                            // mean.
                            + eggs * 15;
            var chance = binomial(eggs, visuals, 0.5);
            exact += chance * worth;
            squares += chance * worth * worth;
        }

        var played = play(HET, VISUAL, prices, 1, eggs, 1, 0);

        assertThat(played.worth().mean())
                .isCloseTo(exact, within(4.5 * Math.sqrt((squares - exact * exact) / RUNS)));
        assertThat(played.hatchlings().mean()).isEqualTo(eggs);
        assertThat(played.worth().low()).isLessThan(exact);
        assertThat(played.worth().high()).isGreaterThan(exact);
    }

    /// All eggs of a clutch come from the same mother: if she is not het, none is visual.
    @Test
    void what_a_parent_may_carry_is_drawn_once_for_a_clutch() {
        var perhaps = TestGenes.perhaps(ParentGenotype.WILD, "clown", "Clown/+", Fraction.HALF);
        var prices =
                new PriceList(
                        List.of(clown(Optional.empty(), new PriceStep(1, 1), new PriceStep(99, 0))),
                        new LinkedHashMap<>());
        var exact = 0.5 * (1 - Math.pow(0.5, 6));

        var played = play(perhaps, VISUAL, prices, 1, 6, 1, 0);

        assertThat(played.worth().mean()).isCloseTo(exact, within(error(exact)));
    }

    @Test
    void who_lays_and_what_hatches_has_its_part() {
        var played = play(VISUAL, VISUAL, list(), 0.7, 5, 0.8, 100);

        assertThat(played.hatchlings().mean()).isCloseTo(0.7 * 5 * 0.8, within(0.06));
        assertThat(played.worth().mean()).isCloseTo(70, within(100 * error(0.7)));
        assertThat(played.kinds()).containsOnlyKeys("Clown");
    }

    @Test
    void the_same_seed_plays_the_same_season() {
        var prices = list(clown(Optional.empty(), new PriceStep(2, 300)));

        assertThat(play(HET, HET, prices, 0.8, 6, 0.9, 5))
                .isEqualTo(play(HET, HET, prices, 0.8, 6, 0.9, 5));
    }

    private static SeasonSimulation.Played play(
            ParentGenotype dam,
            ParentGenotype sire,
            PriceList prices,
            double lays,
            int eggs,
            double hatches,
            double worth) {
        var steps = new LinkedHashMap<String, List<PriceStep>>();
        steps.putAll(ClutchKinds.of(Cross.of(MODEL, dam, sire), prices).steps());
        SequencedMap<Integer, Double> sizes = new LinkedHashMap<>(Map.of(eggs, 1.0));
        return SeasonSimulation.play(
                List.of(
                        new SeasonSimulation.Clutch(
                                new ParentDraw(MODEL, dam, sire, new LinkedHashMap<>(), prices)
                                        ::draw,
                                lays,
                                sizes,
                                hatches,
                                worth)),
                steps,
                RUNS,
                SEED);
    }

    private static double error(double chance) {
        return 4.5 * Math.sqrt(chance * (1 - chance) / RUNS);
    }

    private static double binomial(int of, int found, double chance) {
        var ways = 1.0;
        for (var i = 1; i <= found; i++) {
            ways = ways * (of - found + i) / i;
        }
        return ways * Math.pow(chance, found) * Math.pow(1 - chance, of - found);
    }
}
