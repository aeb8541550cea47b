package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/// What must not change what an animal carries, in collections drawn by seed.
class InferenceLawsTest {

    private static final int WORLDS = 300;

    /// Other numbers and another order change the order of sums of positive terms: some hundred
    /// roundings of 2^-53, where chances below 10^-12 are left out.
    private static final double TOLERANCE = 1e-11;

    @Test
    void neither_the_numbers_of_the_animals_nor_the_order_of_the_statements() {
        eachWorld(
                "relabelled",
                (world, random) -> {
                    var numbers = new ArrayList<Long>();
                    world.members.forEach(member -> numbers.add(member.id().value()));
                    Collections.shuffle(numbers, random);
                    UnaryOperator<AnimalId> renamed =
                            id -> new AnimalId(1000 + numbers.get((int) id.value()));
                    var members =
                            new ArrayList<>(
                                    world.members.stream().map(m -> renamed(m, renamed)).toList());
                    Collections.shuffle(members, random);
                    var own = new HashMap<AnimalId, OwnRecords>();
                    world.own.forEach((id, records) -> own.put(renamed.apply(id), turned(records)));
                    same(world, records(world, members, own), renamed);
                });
    }

    @Test
    void nor_young_that_nobody_looked_at() {
        eachWorld(
                "barren",
                (world, random) -> {
                    var members = new ArrayList<>(world.members);
                    var parent = members.get(random.nextInt(members.size()));
                    Parentage parents =
                            isDam(world, parent)
                                    ? Parentage.of(
                                            new Parentage.Dam.Known(parent.id()),
                                            new Parentage.Sire.Unknown())
                                    : Parentage.of(
                                            new Parentage.Dam.Unknown(),
                                            new Parentage.Sire.Known(parent.id()));
                    members.add(unsexed(500, parents));
                    members.add(
                            unsexed(
                                    501,
                                    Parentage.of(
                                            new Parentage.Dam.Known(new AnimalId(500)),
                                            new Parentage.Sire.Unknown())));
                    // Where some die, young that live say that its parents can have such.
                    var allLive =
                            world.genes.model.loci().values().stream()
                                    .flatMap(map -> map.viabilities().values().stream())
                                    .noneMatch(viability -> viability.counted().isNone());
                    if (allLive && (isDam(world, parent) || isSire(world, parent))) {
                        same(world, records(world, members, world.own), UnaryOperator.identity());
                    }
                });
    }

    @Test
    void a_look_in_doubt_is_either_look_by_its_likelihood() {
        eachWorld(
                "split",
                (world, random) -> {
                    var seen = List.copyOf(world.own.keySet());
                    var map = List.copyOf(world.genes.model.loci().values()).getFirst();
                    var forms = List.copyOf(map.phenotypes());
                    if (seen.isEmpty() || forms.size() < 2) {
                        return;
                    }
                    var animal = seen.get(random.nextInt(seen.size()));
                    var locus = map.locus().id();
                    var one = withLook(world, animal, locus, Set.of(forms.getFirst()));
                    var other = withLook(world, animal, locus, Set.of(forms.getLast()));
                    var either =
                            withLook(
                                    world,
                                    animal,
                                    locus,
                                    Set.of(forms.getFirst(), forms.getLast()));
                    if (one.isPresent() && other.isPresent() && either.isPresent()) {
                        mixes(one.get(), other.get(), either.get());
                    }
                });
    }

    private static void mixes(LocusChances one, LocusChances other, LocusChances either) {
        var a = Math.exp(one.logLikelihood());
        var b = Math.exp(other.logLikelihood());
        assertThat(Math.exp(either.logLikelihood())).isEqualTo(a + b, within(TOLERANCE));
    }

    /// Only where the prior does not depend on the look, and no other locus on its masking.
    private static Optional<LocusChances> withLook(
            RandomCollection world, AnimalId animal, LocusId locus, Set<Phenotype> look) {
        var own = world.own.getOrDefault(animal, OwnRecords.NONE).withLook(locus, look);
        if (world.assumptions.acquiredForLook() > 0
                || own.seen().orElseThrow().unread().contains(locus)) {
            return Optional.empty();
        }
        return PedigreeInference.of(world.records().with(animal, own), world.assumptions)
                .chancesAt(locus);
    }

    private interface Law {
        void hold(RandomCollection world, Random random);
    }

    private static void eachWorld(String law, Law holds) {
        for (var i = 0; i < WORLDS; i++) {
            var seed = 77_000_000L + i;
            var random = new Random(seed);
            try {
                holds.hold(new RandomCollection(random), random);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(law + ", seed " + seed, e);
            }
        }
    }

    private static void same(
            RandomCollection world, CollectionRecords other, UnaryOperator<AnimalId> renamed) {
        var one = PedigreeInference.of(world.records(), world.assumptions);
        var two = PedigreeInference.of(other, world.assumptions);
        assertThat(two.loci()).isEqualTo(one.loci());
        for (var locus : one.loci()) {
            switch (one.at(locus)) {
                case LocusAnswer.Settled(var chances) -> {
                    var again = two.chancesAt(locus).orElseThrow();
                    assertThat(again.logLikelihood())
                            .isEqualTo(chances.logLikelihood(), within(TOLERANCE));
                    for (var member : world.members) {
                        close(chances.of(member.id()), again.of(renamed.apply(member.id())));
                    }
                }
                case LocusAnswer answer -> assertThat(two.at(locus)).isEqualTo(answer);
            }
        }
    }

    private static void close(Map<Genotype, Double> one, Map<Genotype, Double> two) {
        one.forEach(
                (genotype, chance) ->
                        assertThat(two.getOrDefault(genotype, 0.0))
                                .isEqualTo(chance, within(TOLERANCE)));
    }

    private static CollectionRecords records(
            RandomCollection world, Collection<Member> members, Map<AnimalId, OwnRecords> own) {
        if (Pedigree.of(members) instanceof Pedigree.Result.Sound(var pedigree)) {
            return new CollectionRecords(world.genes.model, pedigree, own);
        }
        throw new IllegalStateException("not sound: " + Pedigree.of(members));
    }

    private static Member renamed(Member member, UnaryOperator<AnimalId> to) {
        Parentage parentage =
                switch (member.parentage()) {
                    case Parentage.Founder founder -> founder;
                    case Parentage.Parthenogenetic(var dam) ->
                            new Parentage.Parthenogenetic(to.apply(dam));
                    case Parentage.Biparental(var dam, var sire) ->
                            new Parentage.Biparental(
                                    dam instanceof Parentage.Dam.Known(var known)
                                            ? new Parentage.Dam.Known(to.apply(known))
                                            : dam,
                                    renamed(sire, to));
                };
        return new Member(to.apply(member.id()), member.sex(), member.hatched(), parentage);
    }

    private static Parentage.Sire renamed(Parentage.Sire sire, UnaryOperator<AnimalId> to) {
        return switch (sire) {
            case Parentage.Sire.Known(var known) -> new Parentage.Sire.Known(to.apply(known));
            case Parentage.Sire.Unknown unknown -> unknown;
            case Parentage.Sire.InDoubt(var question) ->
                    new Parentage.Sire.InDoubt(
                            new Parentage.SireQuestion(
                                    question.key(), question.candidates().map(to)));
        };
    }

    /// The same said in the opposite order.
    private static OwnRecords turned(OwnRecords records) {
        var claims = new LinkedHashMap<LocusId, OwnRecords.Claim>();
        records.claims()
                .reversed()
                .forEach(
                        (locus, claim) ->
                                claims.put(
                                        locus,
                                        new OwnRecords.Claim(
                                                turned(claim.genotypes()), claim.shows())));
        return new OwnRecords(
                claims,
                records.seen()
                        .map(seen -> new OwnRecords.Seen(seen.looks().reversed(), seen.unread())),
                records.tests().reversed());
    }

    private static Distribution<Genotype> turned(Distribution<Genotype> said) {
        return new Distribution<>(said.chances().reversed());
    }

    private static boolean isDam(RandomCollection world, Member member) {
        return member.sex().stream().anyMatch(sex -> sex == Sex.FEMALE)
                || world.members.stream()
                        .anyMatch(one -> one.parentage().dams().contains(member.id()));
    }

    private static boolean isSire(RandomCollection world, Member member) {
        return member.sex().stream().anyMatch(sex -> sex == Sex.MALE)
                || world.members.stream()
                        .anyMatch(one -> one.parentage().sires().contains(member.id()));
    }

    private static Member unsexed(int id, Parentage parentage) {
        // A clutch of its own: its sex, which its young prove, would speak of its clutch-mates'
        // sire.
        var hatched = Member.Span.year(2090 + id % 100);
        return new Member(new AnimalId(id), Optional.empty(), Optional.of(hatched), parentage);
    }
}
