package clutchwright.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/// The search against a second one that lists every route: nothing better is left aside.
class RoutesAgreeWithEnumerationTest {

    /// What is alike within 0.001 is left aside, once a generation.
    private static final double LEFT_ASIDE = 0.004;

    private static final List<String> GENES = List.of("a", "b", "c");

    @Test
    void two_genes_and_two_or_three_founders() {
        for (var seed = 1; seed <= 24; seed++) {
            compare(seed, 2, 2 + seed % 2, 3);
        }
    }

    @Test
    void three_genes_and_three_or_four_founders() {
        for (var seed = 1; seed <= 6; seed++) {
            compare(seed, 3, 3 + seed % 2, 3);
        }
    }

    private static void compare(long seed, int genes, int founders, int seasons) {
        var random = new SplittableRandom(seed);
        var eggs = 3 + random.nextInt(8);
        var model = new TestGenes();
        var wanted = new ArrayList<String>();
        for (var gene : GENES.subList(0, genes)) {
            model.recessive(gene, "R" + gene);
            wanted.add(gene);
            wanted.add("R" + gene + "/R" + gene);
        }
        var projects = Projects.with();
        var slow = new RouteEnumeration(genes, eggs, 0.8, seasons);
        for (var animal = 0; animal < founders; animal++) {
            var sex = animal % 2 == 0 ? Sex.FEMALE : Sex.MALE;
            var genotype = ParentGenotype.WILD;
            var held = new double[genes][];
            for (var g = 0; g < genes; g++) {
                var gene = GENES.get(g);
                // Between the founders every gene is there: each brings its own at least.
                var copies = g == animal % genes ? 2 : random.nextInt(3);
                var possible = copies == 1 && random.nextInt(3) == 0;
                genotype = genotype.with(genotypes(gene, copies, possible));
                held[g] = new double[3];
                held[g][copies] = possible ? 0.5 : 1;
                held[g][0] += possible ? 0.5 : 0;
            }
            projects.animal(sex, genotype, 1);
            slow.own(sex, held);
        }
        var goal = Projects.goal(wanted.toArray(String[]::new));
        var biology = new Biology(eggs, Fraction.of(8, 10), Fraction.HALF, 1, 1);
        var limits = new RouteLimits(1, 0.9, seasons, 1, 1);
        var pool = new GenePool(model.model(), goal, projects.stock(), biology);
        var search = new Prospects(pool, projects.stock(), limits, SearchWatch.NONE);
        search.search();
        var best = slow.best();

        assertThat(search.isComplete()).isTrue();
        for (var s = 1; s <= seasons; s++) {
            var season = s;
            var found =
                    search.arrivals().stream()
                            .mapToDouble(arrival -> arrival.reached().by(season))
                            .max()
                            .orElse(0);
            assertThat(found)
                    .as("seed %d, season %d, of %d animals", seed, season, slow.animals())
                    .isLessThanOrEqualTo(best[s] + 1e-9)
                    .isEqualTo(best[s], within(LEFT_ASIDE));
        }
    }

    private static Distribution<Genotype> genotypes(String gene, int copies, boolean possible) {
        var pairs = List.of("+/+", "+/R" + gene, "R" + gene + "/R" + gene);
        var chances = new LinkedHashMap<Genotype, Fraction>();
        if (possible) {
            chances.put(TestGenes.genotype(gene, "+/+"), Fraction.HALF);
            chances.put(TestGenes.genotype(gene, pairs.get(copies)), Fraction.HALF);
        } else {
            chances.put(TestGenes.genotype(gene, pairs.get(copies)), Fraction.WHOLE);
        }
        return new Distribution<>(chances);
    }
}
