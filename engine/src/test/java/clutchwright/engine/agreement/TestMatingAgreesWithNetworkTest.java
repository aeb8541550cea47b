package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Inheritance;
import clutchwright.engine.genetics.LinkageMap;
import clutchwright.engine.genetics.Locus;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.genetics.Standing;
import clutchwright.engine.genetics.Viability;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Fraction;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.TestMating;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/// What a test mating promises, against the records as they would be: the hatchlings are put
/// into the pedigree, each with its look, and everything is inferred anew.
class TestMatingAgreesWithNetworkTest {

    private static final int HATCHLINGS = 3;
    private static final LocusId ID = new LocusId("gene");

    /// Sums of a few hundred products of doubles on either side.
    private static final double ROUNDING = 1e-10;

    static Stream<Arguments> worlds() {
        return IntStream.range(0, 120).mapToObj(seed -> Arguments.of(seed));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("worlds")
    void what_is_promised_is_what_the_records_would_say(long seed) {
        var random = new Random(seed);
        var world = new World(random);
        var before = PedigreeInference.of(world.records(), world.assumptions).chancesAt(ID);
        if (before.isEmpty()) {
            return;
        }
        var inference = PedigreeInference.of(world.records(), world.assumptions);
        var test = CarrierTest.of(inference, world.dam, world.allele).orElseThrow();
        var mating = test.with(world.sire).orElseThrow();

        var expectedLeft = 0.0;
        var none = 0.0;
        for (var found = 0; found < 1 << HATCHLINGS; found++) {
            var with = Integer.bitCount(found);
            var after = world.after(mating, found);
            if (after.isEmpty()) {
                assertThat(mating.chanceAfter(with, HATCHLINGS - with)).isEmpty();
                continue;
            }
            var chance = after.get().chanceOfCarrying(world.dam, world.allele);
            var weight = Math.exp(after.get().logLikelihood() - before.get().logLikelihood());
            assertThat(mating.chanceAfter(with, HATCHLINGS - with))
                    .hasValueCloseTo(chance, within(ROUNDING));
            expectedLeft += weight * unknownBits(chance);
            none += found == 0 ? weight : 0;
        }
        assertThat(mating.chanceOfTrait(HATCHLINGS)).isEqualTo(1 - none, within(ROUNDING));
        assertThat(mating.bits(HATCHLINGS))
                .isEqualTo(unknownBits(test.chance()) - expectedLeft, within(ROUNDING));
    }

    private static double unknownBits(double chance) {
        return chance <= 0 || chance >= 1
                ? 0
                : -(chance * Math.log(chance) + (1 - chance) * Math.log(1 - chance)) / Math.log(2);
    }

    /// A locus, a few relatives, and two of them that are to be mated.
    private static final class World {

        private final Random random;
        private final PhenotypeMap map;
        private final GeneticModel model;
        private final Assumptions assumptions;
        private final Allele allele;
        private final List<Member> members = new ArrayList<>();
        private final Map<AnimalId, OwnRecords> own = new HashMap<>();
        private final AnimalId dam;
        private final AnimalId sire;

        World(Random random) {
            this.random = random;
            map = randomLocus();
            model =
                    new GeneticModel(
                            random.nextBoolean() ? SexDetermination.XY : SexDetermination.ZW,
                            new LinkedHashMap<>(Map.of(ID, map)),
                            new LinkageMap(List.of()),
                            List.of(),
                            List.of());
            assumptions = new Assumptions(0.15, random.nextBoolean() ? 0 : 0.1);
            allele = map.locus().alleles().getLast();
            var grandDam = add(Optional.of(Sex.FEMALE), new Parentage.Founder());
            var grandSire = add(Optional.of(Sex.MALE), new Parentage.Founder());
            var other = add(Optional.of(Sex.MALE), new Parentage.Founder());
            dam = add(Optional.of(Sex.FEMALE), both(grandDam, grandSire));
            // Her brother, her half-brother, her father or a stranger.
            sire =
                    switch (random.nextInt(4)) {
                        case 0 -> add(Optional.of(Sex.MALE), both(grandDam, grandSire));
                        case 1 -> add(Optional.of(Sex.MALE), both(grandDam, other));
                        case 2 -> grandSire;
                        default -> other;
                    };
            add(Optional.empty(), both(dam, other));
            for (var member : members) {
                if (random.nextInt(3) > 0) {
                    own.put(member.id(), looking(Set.of(anyForm())));
                }
            }
        }

        private PhenotypeMap randomLocus() {
            var alleles = new ArrayList<Allele>();
            alleles.add(Allele.wildOf(ID));
            for (var i = 0; i <= random.nextInt(2); i++) {
                alleles.add(new Allele(ID, "a" + i));
            }
            var inheritance =
                    random.nextInt(3) == 0
                            ? new Inheritance.SexLinked(Fraction.of(random.nextInt(3), 4))
                            : new Inheritance.Autosomal();
            var locus = new Locus(ID, inheritance, alleles);
            var looks = new LinkedHashMap<Genotype.Diploid, Phenotype>();
            var viabilities = new HashMap<Genotype.Diploid, Viability>();
            var pairs = locus.allPairs();
            for (var pair : pairs) {
                var form = random.nextInt(3);
                looks.put(
                        pair,
                        form == 0 || pair.equals(pairs.getFirst())
                                ? Phenotype.normalOf(ID)
                                : new Phenotype(ID, "form " + form, true));
                if (random.nextInt(6) == 0 && !pair.equals(pairs.getFirst())) {
                    viabilities.put(
                            pair,
                            new Viability(Fraction.of(random.nextInt(2), 2), Standing.SETTLED));
                }
            }
            return new PhenotypeMap(locus, looks, viabilities, Map.of());
        }

        private Phenotype anyForm() {
            var forms = List.copyOf(map.phenotypes());
            return forms.get(random.nextInt(forms.size()));
        }

        private AnimalId add(Optional<Sex> sex, Parentage parentage) {
            var id = new AnimalId(members.size() + 1L);
            members.add(new Member(id, sex, Optional.empty(), parentage));
            return id;
        }

        private static Parentage both(AnimalId dam, AnimalId sire) {
            return Parentage.of(new Parentage.Dam.Known(dam), new Parentage.Sire.Known(sire));
        }

        private static OwnRecords looking(Set<Phenotype> looks) {
            return OwnRecords.NONE.withLook(ID, looks);
        }

        CollectionRecords records() {
            return records(members, own);
        }

        private CollectionRecords records(List<Member> all, Map<AnimalId, OwnRecords> known) {
            if (Pedigree.of(all) instanceof Pedigree.Result.Sound(var pedigree)) {
                return new CollectionRecords(model, pedigree, known);
            }
            throw new IllegalStateException("not a sound pedigree: " + all);
        }

        /// With hatchlings of the two, those with the trait by the bits of a number.
        Optional<LocusChances> after(TestMating mating, int found) {
            var all = new ArrayList<>(members);
            var known = new HashMap<>(own);
            var plain = new HashSet<>(map.phenotypes());
            plain.removeAll(mating.telling());
            for (var h = 0; h < HATCHLINGS; h++) {
                var id = new AnimalId(100L + h);
                all.add(new Member(id, Optional.empty(), Optional.empty(), both(dam, sire)));
                var look = (found >> h & 1) == 1 ? mating.telling() : plain;
                if (look.isEmpty()) {
                    return Optional.empty();
                }
                known.put(id, looking(Set.copyOf(look)));
            }
            return PedigreeInference.of(records(all, known), assumptions).chancesAt(ID);
        }
    }
}
