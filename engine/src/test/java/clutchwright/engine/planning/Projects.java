package clutchwright.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.casebook.TestGenes;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/// A small language for writing down projects in tests.
public final class Projects {

    private final List<Stock.Own> animals = new ArrayList<>();

    public static Projects with() {
        return new Projects();
    }

    /// @param pairs locus and genotype in turn, as [TestGenes] writes them
    public Projects female(String... pairs) {
        return animal(Sex.FEMALE, TestGenes.animal(pairs), 1);
    }

    public Projects male(String... pairs) {
        return animal(Sex.MALE, TestGenes.animal(pairs), 1);
    }

    public Projects animal(Sex sex, ParentGenotype genotype, int firstSeason) {
        animals.add(new Stock.Own(new AnimalId(animals.size() + 1L), sex, genotype, firstSeason));
        return this;
    }

    public Stock stock() {
        return new Stock(animals);
    }

    /// One animal of either sex.
    public static Goal goal(String... pairs) {
        return goal(0, 0, 1, pairs);
    }

    public static Goal goal(int males, int females, int either, String... pairs) {
        var loci = new LinkedHashMap<LocusId, List<Genotype.Diploid>>();
        for (var i = 0; i < pairs.length; i += 2) {
            var pair = TestGenes.genotype(pairs[i], pairs[i + 1]).pair();
            loci.put(pair.locus(), List.of(pair));
        }
        return new Goal(loci, males, females, either);
    }

    /// All eggs hatch, and a hatchling breeds in the next season, as textbook cases have it.
    public static Biology textbook(int eggs) {
        return new Biology(eggs, Fraction.WHOLE, Fraction.HALF, 1, 1);
    }

    public static RouteLimits limits(int clutches, int seasons) {
        return new RouteLimits(clutches, 0.9, seasons, RouteLimits.USUAL_RUNS, 7);
    }

    public static List<Route> routes(Routes routes) {
        assertThat(routes).isInstanceOf(Routes.Found.class);
        var found = ((Routes.Found) routes).routes();
        assertThat(found).isNotEmpty();
        return found;
    }

    /// The best chance that a route has by a season.
    public static double best(Routes routes, int season) {
        return routes(routes).stream()
                .mapToDouble(route -> route.chanceBySeason().get(season - 1))
                .max()
                .orElseThrow();
    }

    /// Four and a half standard errors of a chance seen in so many runs: passed by chance once in
    /// some hundred thousand.
    public static double error(double chance) {
        return 4.5 * Math.sqrt(chance * (1 - chance) / RouteLimits.USUAL_RUNS);
    }
}
