package clutchwright.engine.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Inbreeding;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.pedigree.KinshipAssumptions;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/// Kinship against every way in which genes can come down: all pedigrees up to five animals, and
/// many by seed with half-clones and sires in doubt.
class KinshipAgreesWithGeneDroppingTest {

    /// Sums of a few thousand products of chances.
    private static final double ROUNDING = 1e-12;

    private static final double SECOND_DIVISION = 0.3;
    private static final KinshipAssumptions ASSUMPTIONS =
            KinshipAssumptions.STANDARD.withSecondDivision(SECOND_DIVISION);

    private int compared;

    @Test
    void for_every_pedigree_up_to_five_animals() {
        for (int size = 1; size <= 5; size++) {
            grow(List.of(), size);
        }
        assertThat(compared).isEqualTo(1 + 4 + 4 * 9 + 4 * 9 * 16 + 4 * 9 * 16 * 25);
    }

    @Test
    void for_pedigrees_by_seed_with_sires_in_doubt_and_half_clones() {
        long seed = 20_261_125L;
        System.out.println("KinshipAgreesWithGeneDroppingTest seed " + seed);
        var random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            compare(RandomKindred.of(random, 4 + random.nextInt(4), true));
        }
    }

    @Test
    void in_numbers_it_is_the_same_as_by_name() {
        var random = new Random(11);
        for (int round = 0; round < 100; round++) {
            int size = 200;
            var dams = new int[size];
            var sires = new int[size];
            var members = new ArrayList<Member>();
            for (int i = 0; i < size; i++) {
                dams[i] = i < 4 || random.nextInt(8) == 0 ? -1 : random.nextInt(i);
                sires[i] = i < 4 || random.nextInt(8) == 0 ? -1 : random.nextInt(i);
                if (dams[i] == sires[i]) {
                    dams[i] = -1;
                }
                if (i % 3 > 0) {
                    dams[i] = dams[i - 1];
                    sires[i] = sires[i - 1];
                }
                var id = new AnimalId(i);
                members.add(
                        new Member(id, Optional.empty(), Optional.empty(), of(dams[i], sires[i])));
            }
            var kinship = kinship(members);
            var inbreeding = Inbreeding.ofNumbered(dams, sires);
            for (int i = 0; i < size; i++) {
                assertThat(inbreeding[i]).isCloseTo(kinship.inbreeding(new AnimalId(i)), within());
            }
        }
    }

    @Test
    void relabelled_animals_are_related_as_before() {
        var random = new Random(7);
        for (int round = 0; round < 50; round++) {
            var members = RandomKindred.of(random, 30, true);
            var labels = new ArrayList<Long>();
            members.forEach(member -> labels.add(random.nextLong()));
            var relabelled = new ArrayList<Member>();
            members.forEach(member -> relabelled.add(relabelled(member, labels)));
            Collections.shuffle(relabelled, random);
            var before = kinship(members);
            var after = kinship(relabelled);
            for (var one : members) {
                var other = members.get(random.nextInt(members.size())).id();
                assertThat(after.between(label(one.id(), labels), label(other, labels)))
                        .isCloseTo(before.between(one.id(), other), within());
            }
        }
    }

    @Test
    void barren_young_change_nothing_for_others() {
        var random = new Random(8);
        for (int round = 0; round < 50; round++) {
            var members = RandomKindred.of(random, 40, true);
            var fewer = members.subList(0, 25);
            var before = kinship(fewer);
            var after = kinship(members);
            for (var one : fewer) {
                for (var other : fewer) {
                    assertThat(after.between(one.id(), other.id()))
                            .isCloseTo(before.between(one.id(), other.id()), within());
                }
            }
        }
    }

    /// Each of the answers by itself, its chance as the weight: forty animals are too many for
    /// dropping genes.
    @Test
    void sires_in_doubt_are_the_mean_over_all_answers() {
        var random = new Random(9);
        for (int round = 0; round < 12; round++) {
            var members = RandomKindred.of(random, 40, true);
            var expected = new double[members.size()][members.size()];
            answer(members, 1, expected);
            var kinship = kinship(members);
            for (int i = 0; i < members.size(); i++) {
                for (int j = 0; j < members.size(); j++) {
                    assertThat(kinship.between(members.get(i).id(), members.get(j).id()))
                            .as("round %d, %d with %d", round, i, j)
                            .isCloseTo(expected[i][j], within());
                }
            }
        }
    }

    @Test
    void shares_of_common_ancestors_and_of_founders_sum_to_the_whole() {
        var random = new Random(10);
        for (int round = 0; round < 100; round++) {
            var members = RandomKindred.of(random, 40, true);
            var kinship = kinship(members);
            var one = members.get(30 + random.nextInt(10)).id();
            var other = members.get(20 + random.nextInt(10)).id();
            assertThat(
                            kinship.commonAncestors(one, other).stream()
                                    .mapToDouble(found -> found.share())
                                    .sum())
                    .isCloseTo(kinship.between(one, other), within());
            var shares = kinship.founderShares(one);
            assertThat(
                            shares.unrecorded()
                                    + shares.founders().values().stream()
                                            .mapToDouble(Double::doubleValue)
                                            .sum())
                    .isCloseTo(1, within());
        }
    }

    private void answer(List<Member> members, double weight, double[][] sums) {
        var question =
                members.stream()
                        .map(Member::parentage)
                        .flatMap(parents -> openQuestion(parents).stream())
                        .findFirst();
        if (question.isEmpty()) {
            var kinship = kinship(members);
            for (int i = 0; i < members.size(); i++) {
                for (int j = 0; j < members.size(); j++) {
                    sums[i][j] +=
                            weight * kinship.between(members.get(i).id(), members.get(j).id());
                }
            }
            return;
        }
        question.get()
                .candidates()
                .chances()
                .forEach(
                        (sire, chance) ->
                                answer(
                                        settled(members, question.get().key(), sire),
                                        weight * chance.value(),
                                        sums));
    }

    private static Optional<SireQuestion> openQuestion(Parentage parentage) {
        return parentage instanceof Parentage.Biparental(_, Sire.InDoubt(var question))
                ? Optional.of(question)
                : Optional.empty();
    }

    private static List<Member> settled(List<Member> members, String key, AnimalId sire) {
        return members.stream()
                .map(
                        member ->
                                openQuestion(member.parentage())
                                        .filter(question -> question.key().equals(key))
                                        .map(_ -> with(member, new Sire.Known(sire)))
                                        .orElse(member))
                .toList();
    }

    private static Member with(Member member, Sire sire) {
        var dam =
                member.parentage().dams().stream()
                        .findFirst()
                        .<Dam>map(Dam.Known::new)
                        .orElseGet(Dam.Unknown::new);
        return new Member(member.id(), member.sex(), member.hatched(), Parentage.of(dam, sire));
    }

    private void grow(List<Member> before, int size) {
        if (before.size() == size) {
            compare(before);
            compared++;
            return;
        }
        var id = new AnimalId(before.size());
        for (int dam = -1; dam < before.size(); dam++) {
            for (int sire = -1; sire < before.size(); sire++) {
                if (dam < 0 || dam != sire) {
                    grow(
                            with(
                                    before,
                                    new Member(
                                            id, Optional.empty(), Optional.empty(), of(dam, sire))),
                            size);
                }
            }
            if (dam >= 0) {
                var alone = new Parentage.Parthenogenetic(new AnimalId(dam));
                grow(with(before, new Member(id, Optional.empty(), Optional.empty(), alone)), size);
            }
        }
    }

    private static Parentage of(int dam, int sire) {
        return Parentage.of(
                dam < 0 ? new Dam.Unknown() : new Dam.Known(new AnimalId(dam)),
                sire < 0 ? new Sire.Unknown() : new Sire.Known(new AnimalId(sire)));
    }

    private static List<Member> with(List<Member> members, Member another) {
        var more = new ArrayList<>(members);
        more.add(another);
        return more;
    }

    private static void compare(List<Member> members) {
        var pedigree = pedigree(members);
        var dropped = new GeneDropping(pedigree, SECOND_DIVISION);
        var kinship = Kinship.of(pedigree, ASSUMPTIONS);
        for (var one : members) {
            assertThat(kinship.inbreeding(one.id()))
                    .as("inbreeding of %s in %s", one.id(), members)
                    .isCloseTo(dropped.inbreeding(one.id()), within());
            for (var other : members) {
                assertThat(kinship.between(one.id(), other.id()))
                        .as("%s with %s in %s", one.id(), other.id(), members)
                        .isCloseTo(dropped.between(one.id(), other.id()), within());
            }
        }
    }

    private static Kinship kinship(List<Member> members) {
        return Kinship.of(pedigree(members), ASSUMPTIONS);
    }

    private static Pedigree pedigree(List<Member> members) {
        return ((Pedigree.Result.Sound) Pedigree.of(members)).pedigree();
    }

    private static Member relabelled(Member member, List<Long> labels) {
        Parentage parentage =
                switch (member.parentage()) {
                    case Parentage.Founder() -> new Parentage.Founder();
                    case Parentage.Parthenogenetic(var dam) ->
                            new Parentage.Parthenogenetic(label(dam, labels));
                    case Parentage.Biparental(var dam, var sire) ->
                            new Parentage.Biparental(
                                    dam instanceof Dam.Known(var known)
                                            ? new Dam.Known(label(known, labels))
                                            : dam,
                                    switch (sire) {
                                        case Sire.Known(var known) ->
                                                new Sire.Known(label(known, labels));
                                        case Sire.Unknown() -> sire;
                                        case Sire.InDoubt(var question) ->
                                                new Sire.InDoubt(
                                                        new SireQuestion(
                                                                question.key(),
                                                                question.candidates()
                                                                        .map(
                                                                                one ->
                                                                                        label(
                                                                                                one,
                                                                                                labels))));
                                    });
                };
        return new Member(label(member.id(), labels), member.sex(), member.hatched(), parentage);
    }

    private static AnimalId label(AnimalId animal, List<Long> labels) {
        return new AnimalId(labels.get(Math.toIntExact(animal.value())));
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(ROUNDING);
    }

    /// Animals in an order that has parents first, numbered from 0.
    private static final class RandomKindred {

        private static final int MOST_QUESTIONS = 4;

        private final Random random;
        private final List<Member> members = new ArrayList<>();
        private final List<SireQuestion> questions = new ArrayList<>();

        private RandomKindred(Random random) {
            this.random = random;
        }

        static List<Member> of(Random random, int size, boolean withDoubts) {
            var kindred = new RandomKindred(random);
            for (int i = 0; i < size; i++) {
                kindred.members.add(
                        new Member(
                                new AnimalId(i),
                                Optional.empty(),
                                Optional.empty(),
                                i < 3 ? new Parentage.Founder() : kindred.parentage(withDoubts)));
            }
            return List.copyOf(kindred.members);
        }

        private Parentage parentage(boolean withDoubts) {
            var dam = anyone();
            double drawn = random.nextDouble();
            if (drawn < 0.1) {
                return new Parentage.Founder();
            }
            if (drawn < 0.2) {
                return new Parentage.Parthenogenetic(dam);
            }
            if (drawn < 0.3) {
                return Parentage.of(new Dam.Known(dam), new Sire.Unknown());
            }
            var sire = anyone();
            while (sire.equals(dam)) {
                sire = anyone();
            }
            if (drawn < 0.4) {
                return Parentage.of(new Dam.Unknown(), new Sire.Known(sire));
            }
            if (withDoubts && drawn < 0.7) {
                var question = question(dam);
                if (question.isPresent()) {
                    return new Parentage.Biparental(
                            new Dam.Known(dam), new Sire.InDoubt(question.get()));
                }
            }
            return Parentage.of(new Dam.Known(dam), new Sire.Known(sire));
        }

        /// One that was asked before, or a new one.
        private Optional<SireQuestion> question(AnimalId dam) {
            if (!questions.isEmpty() && random.nextInt(3) > 0) {
                var again = questions.get(random.nextInt(questions.size()));
                return again.candidates().outcomes().contains(dam)
                        ? Optional.empty()
                        : Optional.of(again);
            }
            var weights = new LinkedHashMap<AnimalId, Fraction>();
            for (int i = 0; i < 3; i++) {
                var candidate = anyone();
                if (!candidate.equals(dam)) {
                    weights.put(candidate, Fraction.of(1 + random.nextInt(4), 1));
                }
            }
            if (weights.size() < 2 || questions.size() == MOST_QUESTIONS) {
                return Optional.empty();
            }
            var asked =
                    new SireQuestion(
                            "question " + questions.size(),
                            Distribution.proportionalTo(weights).orElseThrow());
            questions.add(asked);
            return Optional.of(asked);
        }

        private AnimalId anyone() {
            return members.get(random.nextInt(members.size())).id();
        }
    }
}
