package clutchwright.engine.agreement;

import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.CollectionRecords;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/// What every animal carries, the slow and obvious way: every answer to every question of a
/// sire, and under each every way in which the genes can have come down ([GeneDrop]).
///
/// A parent of whom nothing is recorded is one more animal. Shares no code with the inference.
final class PedigreeEnumeration {

    final CollectionRecords records;
    final Assumptions assumptions;
    private final List<Question> questions = new ArrayList<>();
    private final List<Combination> combinations = new ArrayList<>();
    private final List<LocusId> loci;

    /// @param dam its place among the bodies
    /// @param sire likewise; none with a dam is a half-clone
    record Body(Optional<AnimalId> animal, List<Sex> sexes, int dam, int sire, OwnRecords own) {
        static final int NONE = -1;
    }

    /// @param candidates empty where the question is whether there was a sire
    private record Question(String key, List<AnimalId> candidates, List<Double> prior) {}

    /// One answer to each question, and each locus under it.
    private record Combination(
            Map<String, Integer> answers, double prior, Map<LocusId, GeneDrop> drops) {

        /// With these loci's records.
        double weight(Set<LocusId> of) {
            var product = prior;
            for (var locus : of) {
                product *= drops.get(locus).total;
            }
            return product;
        }
    }

    PedigreeEnumeration(
            CollectionRecords records,
            Assumptions assumptions,
            List<LocusId> loci,
            AnimalId... pair) {
        this.records = records;
        this.assumptions = assumptions;
        this.loci = loci;
        ask();
        answer(new LinkedHashMap<>(), 1, pair);
    }

    private void ask() {
        var clutches = new LinkedHashMap<String, List<Member>>();
        for (var member : records.pedigree().members()) {
            switch (member.parentage()) {
                case Parentage.Biparental(_, Parentage.Sire.InDoubt(var doubt)) -> {
                    if (questions.stream().noneMatch(one -> one.key.equals(doubt.key()))) {
                        var candidates = List.copyOf(doubt.candidates().outcomes());
                        questions.add(
                                new Question(
                                        doubt.key(),
                                        candidates,
                                        candidates.stream()
                                                .map(doubt.candidates()::chanceOf)
                                                .map(chance -> chance.value())
                                                .toList()));
                    }
                }
                case Parentage.Biparental(_, Parentage.Sire.Unknown()) -> {
                    if (assumptions.parthenogenesis() > 0) {
                        clutches.computeIfAbsent(clutchOf(member), _ -> new ArrayList<>())
                                .add(member);
                    }
                }
                case Parentage _ -> {}
            }
        }
        clutches.forEach((key, young) -> questions.add(whether(key, young)));
    }

    static String clutchOf(Member member) {
        return "of " + member.parentage().dams() + " at " + member.hatched();
    }

    /// The recorded sexes of the clutch speak for themselves, once and for all loci.
    private Question whether(String key, List<Member> young) {
        var p = assumptions.parthenogenesis();
        var one = 1 - p;
        var none = p;
        for (var member : young) {
            for (var sex : sexesOf(member)) {
                if (sexesOf(member).size() == 1) {
                    one *= 0.5;
                    none *= sex == records.model().sexes().heterogametic() ? 0 : 1;
                }
            }
        }
        return one + none == 0
                ? new Question(key, List.of(), List.of(0.0, 0.0))
                : new Question(key, List.of(), List.of(one / (one + none), none / (one + none)));
    }

    private void answer(Map<String, Integer> given, double prior, AnimalId... pair) {
        if (given.size() == questions.size()) {
            var drops = new HashMap<LocusId, GeneDrop>();
            for (var locus : loci) {
                var map = records.model().theLocus(locus);
                drops.put(locus, new GeneDrop(this, map, bodies(given), pair));
            }
            combinations.add(new Combination(Map.copyOf(given), prior, drops));
            return;
        }
        var question = questions.get(given.size());
        for (var i = 0; i < question.prior.size(); i++) {
            var more = new LinkedHashMap<>(given);
            more.put(question.key, i);
            answer(more, prior * question.prior.get(i), pair);
        }
    }

    private List<Body> bodies(Map<String, Integer> answers) {
        var bodies = new ArrayList<Body>();
        var places = new HashMap<AnimalId, Integer>();
        var fathers = new HashMap<String, Integer>();
        for (var member : records.pedigree().members()) {
            var dam = Body.NONE;
            var sire = Body.NONE;
            if (member.parentage() instanceof Parentage.Parthenogenetic(var mother)) {
                dam = places.get(mother);
            } else if (member.parentage() instanceof Parentage.Biparental(var mother, var father)) {
                dam =
                        mother instanceof Parentage.Dam.Known(var known)
                                ? places.get(known)
                                : stranger(bodies, Sex.FEMALE);
                sire =
                        switch (father) {
                            case Parentage.Sire.Known(var known) -> places.get(known);
                            case Parentage.Sire.InDoubt(var doubt) -> {
                                var answer = answers.get(doubt.key());
                                yield places.get(
                                        List.copyOf(doubt.candidates().outcomes()).get(answer));
                            }
                            case Parentage.Sire.Unknown() -> {
                                var answer = answers.get(clutchOf(member));
                                if (answer == null) {
                                    yield stranger(bodies, Sex.MALE);
                                }
                                yield answer == 1
                                        ? Body.NONE
                                        : fathers.computeIfAbsent(
                                                clutchOf(member), _ -> stranger(bodies, Sex.MALE));
                            }
                        };
            }
            places.put(member.id(), bodies.size());
            bodies.add(
                    new Body(
                            Optional.of(member.id()),
                            sexesOf(member),
                            dam,
                            sire,
                            records.of(member.id())));
        }
        return bodies;
    }

    private static int stranger(List<Body> bodies, Sex sex) {
        bodies.add(new Body(Optional.empty(), List.of(sex), Body.NONE, Body.NONE, OwnRecords.NONE));
        return bodies.size() - 1;
    }

    /// The recorded sex, or what being a parent proves; else both.
    private List<Sex> sexesOf(Member member) {
        if (member.sex().isPresent()) {
            return List.of(member.sex().get());
        }
        for (var other : records.pedigree().members()) {
            if (other.parentage().dams().contains(member.id())) {
                return List.of(Sex.FEMALE);
            }
            if (other.parentage().sires().contains(member.id())) {
                return List.of(Sex.MALE);
            }
        }
        return List.of(Sex.FEMALE, Sex.MALE);
    }

    /// Whether these loci's records can be true together.
    private boolean canBe(Set<LocusId> some) {
        return some.isEmpty() || combinations.stream().anyMatch(one -> one.weight(some) > 0);
    }

    /// Loci that are part of a conflict that would vanish without them.
    Set<LocusId> contradicted() {
        var found = new HashSet<LocusId>();
        for (var chosen = 1; chosen < 1 << loci.size(); chosen++) {
            var some = new HashSet<LocusId>();
            for (var i = 0; i < loci.size(); i++) {
                if ((chosen >> i & 1) == 1) {
                    some.add(loci.get(i));
                }
            }
            if (!canBe(some)
                    && some.stream()
                            .allMatch(
                                    left -> {
                                        var rest = new HashSet<>(some);
                                        rest.remove(left);
                                        return canBe(rest);
                                    })) {
                found.addAll(some);
            }
        }
        return found;
    }

    /// The loci that bear on the sires: all that are not contradicted.
    private Set<LocusId> sound() {
        var sound = new HashSet<>(loci);
        sound.removeAll(contradicted());
        return sound;
    }

    /// Of the records at one locus, whoever the sires.
    double logLikelihood(LocusId locus) {
        return Math.log(combinations.stream().mapToDouble(c -> c.weight(Set.of(locus))).sum());
    }

    Map<Genotype, Double> of(LocusId locus, AnimalId animal) {
        return shares(locus, drop -> drop.of(animal));
    }

    /// Of the pair that was asked for at the start.
    Map<List<Genotype>, Double> together(LocusId locus) {
        return shares(locus, GeneDrop::together);
    }

    private <T> Map<T, Double> shares(LocusId locus, Function<GeneDrop, Map<T, Double>> part) {
        var others = sound();
        others.remove(locus);
        var sums = new HashMap<T, Double>();
        var all = 0.0;
        for (var one : combinations) {
            var weight = one.weight(others);
            var drop = one.drops.get(locus);
            all += weight * drop.total;
            part.apply(drop)
                    .forEach((what, chance) -> sums.merge(what, weight * chance, Double::sum));
        }
        var total = all;
        sums.replaceAll((_, chance) -> chance / total);
        return sums;
    }

    /// The chances of a question's answers, in the order of the candidates; `sire, none` for a
    /// clutch without one on record.
    Map<String, List<Double>> answers() {
        var sound = sound();
        var all = combinations.stream().mapToDouble(one -> one.weight(sound)).sum();
        var found = new LinkedHashMap<String, List<Double>>();
        for (var question : questions) {
            var chances = new ArrayList<Double>();
            for (var i = 0; i < question.prior.size(); i++) {
                var answer = i;
                chances.add(
                        combinations.stream()
                                        .filter(one -> one.answers.get(question.key) == answer)
                                        .mapToDouble(one -> one.weight(sound))
                                        .sum()
                                / all);
            }
            found.put(question.key, chances);
        }
        return found;
    }
}
