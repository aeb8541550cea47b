package clutchwright.engine.agreement;

import static clutchwright.engine.casebook.TestGenes.part;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Masking;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The engine against every egg by every sperm: small species with all pairs of parents, and many
/// species drawn by seed.
class CrossAgreesWithEnumerationTest {

    @Test
    void for_every_pair_of_a_series_with_a_lethal_and_a_masking_form() {
        everyPair(
                new TestGenes()
                        .locus(
                                "white",
                                List.of("M", "L"),
                                "M/+",
                                "Mo",
                                "L/+",
                                "Le",
                                "M/M",
                                "White",
                                "L/M",
                                "White",
                                "L/L",
                                "White")
                        .viability("white", "L/L", Fraction.NONE)
                        .masking("white", "White", new Masking.Everything())
                        .incomplete("pastel", "Pastel")
                        .model());
    }

    @Test
    void for_every_pair_at_sex_linked_loci_of_males_or_females() {
        for (var sexes : SexDetermination.values()) {
            everyPair(
                    new TestGenes()
                            .sexes(sexes)
                            .sexLinked("banana", Fraction.of(1, 20), "B", "B/+", "B", "B/B", "SB")
                            .sexLinked("dot", Fraction.of(1, 3), "D", "D/D", "Dot")
                            .model());
        }
    }

    @Test
    void for_every_pair_at_linked_loci_one_of_which_masks_the_other() {
        everyPair(
                new TestGenes()
                        .recessive("clown", "Clown")
                        .incomplete("spider", "Spider")
                        .linked(List.of("spider", "clown"), Fraction.of(1, 10))
                        .masking("spider", "Super Spider", new Masking.Everything())
                        .model());
    }

    @Test
    void for_every_pair_of_a_combination_that_does_not_live() {
        everyPair(
                new TestGenes()
                        .incomplete("a", "A")
                        .dominant("b", "B")
                        .recessive("c", "C")
                        .combination(Fraction.of(1, 3), part("a", "A", 1), part("c", "C", 1))
                        .model());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void for_species_drawn_by_seed(long block) {
        for (var i = 0; i < 250; i++) {
            var seed = block * 1_000_000 + i;
            var random = new Random(seed);
            var world = new RandomWorld(random);
            agree(world.model, world.dam, world.sire, random, "seed " + seed);
        }
    }

    private static void everyPair(GeneticModel model) {
        var random = new Random(7);
        for (var dam : allParents(model, Sex.FEMALE)) {
            for (var sire : allParents(model, Sex.MALE)) {
                agree(model, dam, sire, random, dam + " x " + sire);
            }
        }
    }

    private static void agree(
            GeneticModel model,
            ParentGenotype dam,
            ParentGenotype sire,
            Random random,
            String what) {
        try {
            new CrossAgreement(model, dam, sire).check(random);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("%s: %s by %s".formatted(what, dam, sire), e);
        }
    }

    private static List<ParentGenotype> allParents(GeneticModel model, Sex sex) {
        List<ParentGenotype> all = List.of(ParentGenotype.WILD);
        for (var map : model.loci().values()) {
            var next = new ArrayList<ParentGenotype>();
            for (var parent : all) {
                for (var genotype : allGenotypes(map, sex == model.sexes().heterogametic())) {
                    next.add(parent.with(Distribution.certain(genotype)));
                }
            }
            all = next;
        }
        return all;
    }

    private static List<? extends Genotype> allGenotypes(PhenotypeMap map, boolean heterogametic) {
        if (!map.locus().isSexLinked() || !heterogametic) {
            return map.locus().allPairs();
        }
        var alleles = map.locus().alleles();
        return alleles.stream()
                .flatMap(one -> alleles.stream().map(other -> new Genotype.Phased(one, other)))
                .toList();
    }
}
