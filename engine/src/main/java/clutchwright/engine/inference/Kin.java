package clutchwright.engine.inference;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.inference.LocusShape.Build;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Member;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/// A pedigree in numbers, the same for every locus: animals from 0, parents before their young.
final class Kin {

    static final int NONE = -1;

    final List<AnimalId> animals;
    final Map<AnimalId, Integer> numbers;
    final Build[] builds;
    final int[] dam;

    /// The sire where one is known for certain.
    final int[] sire;

    /// The question whose answer is the sire, where he is in doubt or there may be none.
    final int[] question;

    final boolean[] founder;
    final boolean[] withoutSire;
    final List<Question> questions;

    /// Who fathered the animals that share it.
    ///
    /// @param key of the pedigree's question; for a clutch without a recorded sire, made up
    ///     here
    /// @param candidates numbers of the males; empty where the question is whether there was
    ///     one
    /// @param prior chance of each answer; `sire, none` where the question is whether there was
    ///     one
    record Question(String key, List<Integer> candidates, List<Double> prior) {

        boolean isWhetherAny() {
            return candidates.isEmpty();
        }
    }

    Kin(Pedigree pedigree, SexDetermination sexes, Assumptions assumptions) {
        var size = pedigree.members().size();
        var order = new ArrayList<AnimalId>(size);
        numbers = HashMap.newHashMap(size);
        builds = new Build[size];
        dam = new int[size];
        sire = new int[size];
        question = new int[size];
        founder = new boolean[size];
        withoutSire = new boolean[size];
        var asked = new LinkedHashMap<String, Asked>();
        for (var member : pedigree.members()) {
            var number = order.size();
            order.add(member.id());
            numbers.put(member.id(), number);
            builds[number] = buildOf(pedigree, member);
            dam[number] = NONE;
            sire[number] = NONE;
            question[number] = NONE;
            place(number, member, sexes, assumptions, asked);
        }
        animals = List.copyOf(order);
        questions = asked.values().stream().map(Asked::weighed).toList();
    }

    int numberOf(AnimalId animal) {
        var number = numbers.get(animal);
        if (number == null) {
            throw new IllegalArgumentException("animal " + animal + " is not in the pedigree");
        }
        return number;
    }

    private void place(
            int number,
            Member member,
            SexDetermination sexes,
            Assumptions assumptions,
            Map<String, Asked> asked) {
        switch (member.parentage()) {
            case Parentage.Founder() -> founder[number] = true;
            case Parentage.Parthenogenetic(var mother) -> {
                dam[number] = numberOf(mother);
                withoutSire[number] = true;
            }
            case Parentage.Biparental(var mother, var father) -> {
                if (mother instanceof Dam.Known(var known)) {
                    dam[number] = numberOf(known);
                }
                switch (father) {
                    case Sire.Known(var known) -> sire[number] = numberOf(known);
                    case Sire.InDoubt(var doubt) ->
                            question[number] = ask(asked, doubt.key(), () -> which(doubt));
                    case Sire.Unknown() -> {
                        if (assumptions.parthenogenesis() > 0) {
                            var key = "sire of " + member.parentage().dams() + member.hatched();
                            question[number] = ask(asked, key, () -> whether(key, assumptions));
                            asked.values().stream()
                                    .filter(one -> one.key.equals(key))
                                    .forEach(
                                            one ->
                                                    one.count(
                                                            builds[number], sexes.heterogametic()));
                        }
                    }
                }
            }
        }
    }

    private static int ask(Map<String, Asked> asked, String key, Supplier<Asked> anew) {
        var found = asked.get(key);
        if (found == null) {
            found = anew.get();
            found.number = asked.size();
            asked.put(key, found);
        }
        return found.number;
    }

    private Asked which(Parentage.SireQuestion doubt) {
        var males = new ArrayList<Integer>();
        var prior = new ArrayList<Double>();
        doubt.candidates()
                .chances()
                .forEach(
                        (male, chance) -> {
                            males.add(numberOf(male));
                            prior.add(chance.value());
                        });
        return new Asked(doubt.key(), males, prior);
    }

    private static Asked whether(String key, Assumptions assumptions) {
        var none = assumptions.parthenogenesis();
        return new Asked(key, List.of(), List.of(1 - none, none));
    }

    /// The recorded sex, or the one that having young as dam or sire proves.
    private static Build buildOf(Pedigree pedigree, Member member) {
        return member.sex()
                .or(() -> provenSex(pedigree, member))
                .map(Build::of)
                .orElse(Build.UNSEXED);
    }

    private static Optional<Sex> provenSex(Pedigree pedigree, Member member) {
        return pedigree.offspringOf(member.id()).stream()
                .findFirst()
                .map(young -> pedigree.theMember(young).parentage())
                .map(found -> found.dams().contains(member.id()) ? Sex.FEMALE : Sex.MALE);
    }

    private static final class Asked {
        private final String key;
        private final List<Integer> candidates;
        private final double[] prior;
        private int number;

        Asked(String key, List<Integer> candidates, List<Double> prior) {
            this.key = key;
            this.candidates = candidates;
            this.prior = prior.stream().mapToDouble(Double::doubleValue).toArray();
        }

        /// Half-clones are all of the sex with two chromosomes alike: each young one of that sex
        /// counts twice, any other excludes it. Counted here, once, and not again at each locus.
        void count(Build young, Sex heterogametic) {
            if (young == Build.UNSEXED) {
                return;
            }
            prior[1] *= young == Build.of(heterogametic) ? 0 : 2;
            var sum = prior[0] + prior[1];
            // Nothing is left of a clutch that surely had no sire and yet has a hatchling of the
            // other sex: then both stay at zero.
            if (sum > 0) {
                prior[0] /= sum;
                prior[1] /= sum;
            }
        }

        Question weighed() {
            var weights = Arrays.stream(prior).boxed().toList();
            return new Question(key, List.copyOf(candidates), weights);
        }
    }
}
