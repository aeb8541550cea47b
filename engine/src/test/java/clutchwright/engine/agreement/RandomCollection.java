package clutchwright.engine.agreement;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Pedigree;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/// A few related animals and what is recorded of them, drawn from a seed: anything that records
/// can say, loops included.
final class RandomCollection {

    /// Ways in which genes can come down, beyond which no animal is added.
    private static final double MOST_WAYS = 3_000;

    final RandomGenes genes;
    final Assumptions assumptions;
    final List<Member> members = new ArrayList<>();
    final Map<AnimalId, OwnRecords> own = new HashMap<>();

    private final Draws draws;
    private final List<Sex> sexes = new ArrayList<>();
    private final List<Integer> generation = new ArrayList<>();
    private final List<Parentage.SireQuestion> questions = new ArrayList<>();

    RandomCollection(Random random) {
        draws = new Draws(random);
        genes = new RandomGenes(draws);
        assumptions = assume();
        var count = 2 + draws.below(genes.hasLongSeries() ? 2 : genes.loci() > 1 ? 5 : 7);
        for (var i = 0; i < count && ways() < MOST_WAYS; i++) {
            sexes.add(draws.pick(List.of(Sex.values())));
            var parentage = draws.oneIn(i < 2 ? 20 : 4) || i == 0 ? founder() : parents(i);
            members.add(member(i, parentage));
        }
        var truth = new RandomTruth(draws, genes, members, sexes, assumptions);
        for (var i = 0; i < members.size(); i++) {
            if (!draws.oneIn(5)) {
                own.put(new AnimalId(i), truth.recordsOf(i));
            }
        }
    }

    CollectionRecords records() {
        if (Pedigree.of(members) instanceof Pedigree.Result.Sound(var pedigree)) {
            return new CollectionRecords(genes.model, pedigree, own);
        }
        throw new IllegalStateException("not sound: " + Pedigree.of(members));
    }

    /// At the most: a pair of genes a founder, four kinds of young a couple, each answer of a
    /// sire.
    private double ways() {
        var most = 0.0;
        for (var map : genes.model.loci().values()) {
            var pairs = Math.pow(map.locus().alleles().size(), 2);
            var ways = 1.0;
            for (var member : members) {
                var isUnsexed = map.locus().isSexLinked() && member.sex().isEmpty();
                ways *= isUnsexed ? 2 : 1;
                ways *=
                        switch (member.parentage()) {
                            case Parentage.Founder() -> pairs;
                            case Parentage.Parthenogenetic _ -> 3;
                            case Parentage.Biparental both ->
                                    both.dams().isEmpty() || both.sires().isEmpty() ? 4 * pairs : 4;
                        };
            }
            most = Math.max(most, ways);
        }
        for (var question : questions) {
            most *= question.candidates().outcomes().size();
        }
        return most;
    }

    private Assumptions assume() {
        var background =
                genes.hasLongSeries() ? 0.01 : draws.pick(List.of(0.0, 0.0, 0.005, 0.1, 0.25));
        return new Assumptions(
                background,
                draws.pick(List.of(0.0, 0.0, 0.005, 0.1)),
                draws.pick(List.of(0.0, 0.0, 0.5, 1.0)),
                draws.pick(List.of(0.0, 0.0, 0.0, 0.2)),
                draws.pick(List.of(0.0, 1.0 / 3, 2.0 / 3)));
    }

    private Member member(int i, Parentage parentage) {
        var sex = genes.maySexBeUnknown() && draws.oneIn(3) ? null : sexes.get(i);
        var year = 2000 + 2 * generation.get(i) + draws.below(2);
        return new Member(
                new AnimalId(i),
                Optional.ofNullable(sex),
                draws.oneIn(2) ? Optional.empty() : Optional.of(Member.Span.year(year)),
                parentage);
    }

    private Parentage founder() {
        generation.add(0);
        return new Parentage.Founder();
    }

    private Parentage parents(int i) {
        var dams = earlier(Sex.FEMALE);
        var sires = earlier(Sex.MALE);
        Parentage.Dam dam =
                dams.isEmpty() || draws.oneIn(8)
                        ? new Parentage.Dam.Unknown()
                        : new Parentage.Dam.Known(draws.pick(dams));
        var found = Parentage.of(dam, sire(sires));
        if (dam instanceof Parentage.Dam.Known(var mother) && draws.oneIn(12)) {
            found = new Parentage.Parthenogenetic(mother);
            if (!draws.oneIn(8)) {
                sexes.set(i, genes.model.sexes().heterogametic().opposite());
            }
        }
        var older = 0;
        for (var parents : List.of(found.dams(), found.sires())) {
            for (var parent : parents) {
                older = Math.max(older, 1 + generation.get((int) parent.value()));
            }
        }
        generation.add(older);
        return found;
    }

    private Parentage.Sire sire(List<AnimalId> sires) {
        if (sires.isEmpty() || draws.oneIn(7)) {
            return new Parentage.Sire.Unknown();
        }
        if (!questions.isEmpty() && draws.oneIn(2)) {
            return new Parentage.Sire.InDoubt(draws.pick(questions));
        }
        if (sires.size() < 2 || !draws.oneIn(3)) {
            return new Parentage.Sire.Known(draws.pick(sires));
        }
        var some = new ArrayList<>(sires);
        draws.shuffle(some);
        var weights = new LinkedHashMap<AnimalId, Fraction>();
        for (var male : some.subList(0, 2 + draws.below(Math.min(2, some.size() - 1)))) {
            weights.put(male, Fraction.of(1 + draws.below(4), 1));
        }
        var question =
                new Parentage.SireQuestion(
                        "sire of clutch " + questions.size(),
                        Distribution.<AnimalId>proportionalTo(weights).orElseThrow());
        questions.add(question);
        return new Parentage.Sire.InDoubt(question);
    }

    private List<AnimalId> earlier(Sex sex) {
        var found = new ArrayList<AnimalId>();
        for (var i = 0; i < members.size(); i++) {
            if (sexes.get(i) == sex) {
                found.add(new AnimalId(i));
            }
        }
        return found;
    }

    /// What a seed decides, in small questions.
    static final class Draws {
        private final Random random;

        Draws(Random random) {
            this.random = random;
        }

        int below(int bound) {
            return random.nextInt(bound);
        }

        boolean oneIn(int many) {
            return random.nextInt(many) == 0;
        }

        boolean with(double chance) {
            return random.nextDouble() < chance;
        }

        <T> T pick(List<T> from) {
            return from.get(random.nextInt(from.size()));
        }

        void shuffle(List<?> list) {
            Collections.shuffle(list, random);
        }
    }
}
