package clutchwright.engine.notation;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.probability.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/// What this house writes, it reads as the same genes.
class RoundTripTest {

    private static final int ANIMALS = 2_000;

    @ParameterizedTest
    @MethodSource("species")
    void random_genes_come_back_as_they_were(GeneLine line) {
        long seed = Seed.of(RoundTripTest.class);
        var genes = new RandomGenes(line, new SplittableRandom(seed));
        for (int i = 0; i < ANIMALS; i++) {
            comesBack(line, genes.next(), "seed " + seed);
        }
    }

    @ParameterizedTest
    @MethodSource("species")
    void every_pair_of_every_locus_comes_back(GeneLine line) {
        for (var map : line.catalogue().model().loci().values()) {
            for (var pair : map.locus().allPairs()) {
                if (RandomGenes.isSayable(pair, map)) {
                    comesBack(line, only(line.showing(List.of(pair))), map.locus().id() + "");
                } else if (!pair.isHomozygous()) {
                    hiddenPair(pair).forEach(genes -> comesBack(line, genes, pair + ""));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("species")
    void every_look_comes_back_with_all_its_pairs(GeneLine line) {
        for (var map : line.catalogue().model().loci().values()) {
            for (var look : map.phenotypes()) {
                if (look.visible()) {
                    var shown = line.showing(map.showing(look));
                    comesBack(line, only(shown), map.locus().id() + " " + look);
                }
            }
        }
    }

    private static Stream<Genes> hiddenPair(Diploid pair) {
        return pair.alleles().stream()
                .filter(allele -> !allele.isWild())
                .map(allele -> only(new Carries(allele, Fraction.WHOLE)));
    }

    private static Genes only(Genes.Statement statement) {
        return new Genes(List.of(statement), Optional.empty(), List.of());
    }

    private static void comesBack(GeneLine line, Genes genes, String context) {
        var written = line.write(genes);
        var reading = line.read(written);
        assertThat(Shorthand.of(reading))
                .as("%s: %s", context, written)
                .isEqualTo(Shorthand.of(genes));
        assertThat(reading)
                .isInstanceOfSatisfying(
                        Reading.Understood.class,
                        understood -> assertThat(understood.genes()).isEqualTo(genes));
    }

    static Stream<GeneLine> species() {
        return Stream.of(ShippedLines.ROYAL, ShippedLines.CORN, ShippedLines.BOA);
    }
}
