package clutchwright.engine.planning;

import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/// What two kinds of animals give, by what can be told of a hatchling.
final class Pairing {

    /// What is rarer among hatchlings is not waited for.
    private static final double RAREST = 1.0 / 5_000;

    final Kind dam;
    final Kind sire;

    private final GenePool pool;
    private final List<GeneUnit.Groups> byUnit = new ArrayList<>();
    private @Nullable List<Group> groups;
    private @Nullable PairingOdds odds;
    private final Map<Optional<Sex>, Optional<Target>> goals = new HashMap<>();
    private final Map<List<Target>, List<Case>> cases = new HashMap<>();

    Pairing(GenePool pool, Kind dam, Kind sire) {
        this.pool = pool;
        this.dam = dam;
        this.sire = sire;
        for (var u = 0; u < pool.units.size(); u++) {
            byUnit.add(pool.units.get(u).groups(dam.mixes().get(u), sire.mixes().get(u)));
        }
    }

    /// Hatchlings that look alike.
    ///
    /// @param target by which they are told
    /// @param chance per hatchling, sex included
    /// @param kind what is held of them
    record Group(Target target, double chance, Kind kind) {}

    /// Which hatchlings are meant: by unit the keys of look and sex any of which will do.
    ///
    /// Each is met once for each pairing, and is no other's equal.
    static final class Target {

        private final List<Set<Integer>> keys;
        private final @Nullable Sex sex;

        private Target(List<Set<Integer>> keys, @Nullable Sex sex) {
            this.keys = List.copyOf(keys);
            this.sex = sex;
        }

        List<Set<Integer>> keys() {
            return keys;
        }

        /// Empty where either will do.
        Optional<Sex> sex() {
            return Optional.ofNullable(sex);
        }
    }

    /// What the parents may be in truth, as far as it matters.
    ///
    /// @param weight its chance
    /// @param perEgg of each target, the chance that an egg hatches into one; targets exclude each
    ///     other
    record Case(double weight, List<Double> perEgg) {
        Case {
            perEgg = List.copyOf(perEgg);
        }
    }

    PairingOdds odds(RouteLimits limits) {
        var known = odds;
        if (known == null) {
            known = new PairingOdds(pool, this, limits);
            odds = known;
        }
        return known;
    }

    /// All groups that are not too rare.
    List<Group> groups() {
        var known = groups;
        if (known == null) {
            var found = new ArrayList<Group>();
            for (var sex : Sex.values()) {
                addTo(found, sex, new ArrayList<>(), new ArrayList<>(), shareOf(sex));
            }
            known = List.copyOf(found);
            groups = known;
        }
        return known;
    }

    private double shareOf(Sex sex) {
        // A unit that tells the sex has it half and half.
        var share = pool.biology.shareOf(sex).value();
        return pool.units.stream().anyMatch(unit -> unit.tellsSex) ? 2 * share : share;
    }

    private void addTo(
            List<Group> found,
            Sex sex,
            List<Set<Integer>> keys,
            List<Integer> mixes,
            double chance) {
        if (chance < RAREST) {
            return;
        }
        if (keys.size() == byUnit.size()) {
            found.add(new Group(new Target(keys, sex), chance, pool.kind(sex, mixes)));
            return;
        }
        for (var group : byUnit.get(keys.size()).groups()) {
            if (GeneUnit.sexOf(group.key()).orElse(sex) == sex) {
                keys.add(Set.of(group.key()));
                mixes.add(group.mix());
                addTo(found, sex, keys, mixes, chance * group.value());
                keys.removeLast();
                mixes.removeLast();
            }
        }
    }

    /// Those that are surely what the goal asks for; empty if none can be.
    ///
    /// @param sex empty for both
    Optional<Target> goal(Optional<Sex> sex) {
        return goals.computeIfAbsent(sex, this::goalOf);
    }

    private Optional<Target> goalOf(Optional<Sex> sex) {
        var keys = new ArrayList<Set<Integer>>();
        for (var u = 0; u < byUnit.size(); u++) {
            var some = new HashSet<Integer>();
            for (var group : byUnit.get(u).groups()) {
                if (GeneUnit.sexOf(group.key()).equals(sex)
                        || sex.isEmpty()
                        || GeneUnit.sexOf(group.key()).isEmpty()) {
                    if (pool.units.get(u).meeting(group.mix()).compareTo(GenePool.SURE) >= 0) {
                        some.add(group.key());
                    }
                }
            }
            if (some.isEmpty()) {
                return Optional.empty();
            }
            keys.add(some);
        }
        return Optional.of(new Target(keys, sex.orElse(null)));
    }

    /// Among hatchlings, exactly, sex included.
    Fraction chanceOf(Target target) {
        var chance = Fraction.WHOLE;
        for (var u = 0; u < byUnit.size(); u++) {
            var sum = Fraction.NONE;
            for (var group : byUnit.get(u).groups()) {
                if (target.keys().get(u).contains(group.key())) {
                    sum = sum.plus(group.chance().times(sexFactor(u, group.key())));
                }
            }
            chance = chance.times(sum);
        }
        return tellsSex() || target.sex().isEmpty()
                ? chance
                : chance.times(pool.biology.shareOf(target.sex().get()));
    }

    private boolean tellsSex() {
        return pool.units.stream().anyMatch(unit -> unit.tellsSex);
    }

    /// Two times the share of the sex where the unit tells it, half and half.
    private Fraction sexFactor(int unit, int key) {
        return pool.units.get(unit).tellsSex
                ? GeneUnit.sexOf(key)
                        .map(sex -> pool.biology.shareOf(sex).times(Fraction.of(2, 1)))
                        .orElse(Fraction.WHOLE)
                : Fraction.WHOLE;
    }

    /// What is seen of hatchlings of a target that names one look.
    List<Phenotype> lookOf(Target target) {
        var shows = new ArrayList<Phenotype>();
        for (var u = 0; u < pool.units.size(); u++) {
            shows.addAll(pool.units.get(u).lookOf(target.keys().get(u).iterator().next()));
        }
        return shows;
    }

    /// What is seen of every hatchling of a target, whichever of its looks it has.
    List<Phenotype> commonLookOf(Target target) {
        var shows = new ArrayList<Phenotype>();
        for (var u = 0; u < pool.units.size(); u++) {
            var unit = pool.units.get(u);
            var looks = target.keys().get(u).stream().map(unit::lookOf).toList();
            looks.getFirst().stream()
                    .filter(form -> looks.stream().allMatch(look -> look.contains(form)))
                    .forEach(shows::add);
        }
        return shows;
    }

    /// What is held of hatchlings of a target that names one look; sex does not matter to it.
    Kind kindOf(Target target) {
        var mixes = new ArrayList<Integer>();
        for (var u = 0; u < byUnit.size(); u++) {
            var keys = target.keys().get(u);
            byUnit.get(u).groups().stream()
                    .filter(group -> keys.contains(group.key()))
                    .findFirst()
                    .ifPresent(group -> mixes.add(group.mix()));
        }
        return new Kind(-1, target.sex().orElse(Sex.FEMALE), mixes);
    }

    /// What an egg becomes, for each thing that the parents may be in truth.
    List<Case> cases(List<Target> targets) {
        return cases.computeIfAbsent(targets, this::casesOf);
    }

    private List<Case> casesOf(List<Target> targets) {
        Map<List<Double>, Double> all = new HashMap<>();
        var start = new Double[targets.size()];
        for (var t = 0; t < start.length; t++) {
            var share =
                    tellsSex()
                            ? 1
                            : targets.get(t)
                                    .sex()
                                    .map(sex -> pool.biology.shareOf(sex).value())
                                    .orElse(1.0);
            start[t] = pool.biology.hatchRate().value() * share;
        }
        all.put(Arrays.asList(start), 1.0);
        for (var u = 0; u < pool.units.size(); u++) {
            var here = casesOf(u, targets);
            if (here.size() == 1) {
                var only = here.entrySet().iterator().next().getKey();
                all = times(all, only);
                continue;
            }
            var next = new HashMap<List<Double>, Double>();
            for (var entry : here.entrySet()) {
                times(all, entry.getKey())
                        .forEach(
                                (shares, weight) ->
                                        next.merge(shares, weight * entry.getValue(), Double::sum));
            }
            all = next;
        }
        return all.entrySet().stream()
                .map(entry -> new Case(entry.getValue(), entry.getKey()))
                .toList();
    }

    private static Map<List<Double>, Double> times(
            Map<List<Double>, Double> all, List<Double> factors) {
        var product = new HashMap<List<Double>, Double>();
        all.forEach(
                (shares, weight) -> {
                    var more = new Double[shares.size()];
                    for (var t = 0; t < more.length; t++) {
                        more[t] = shares.get(t) * factors.get(t);
                    }
                    product.merge(Arrays.asList(more), weight, Double::sum);
                });
        return product;
    }

    private Map<List<Double>, Double> casesOf(int u, List<Target> targets) {
        var unit = pool.units.get(u);
        var found = new HashMap<List<Double>, Double>();
        for (var mother : unit.mix(dam.mixes().get(u)).entrySet()) {
            for (var father : unit.mix(sire.mixes().get(u)).entrySet()) {
                var offspring = unit.offspring(mother.getKey(), father.getKey());
                var shares = new Double[targets.size()];
                for (var t = 0; t < shares.length; t++) {
                    var sum = 0.0;
                    for (var share : offspring.shares()) {
                        if (targets.get(t).keys().get(u).contains(share.key())) {
                            sum += share.value() * sexFactor(u, share.key()).value();
                        }
                    }
                    shares[t] = sum * offspring.alive().value();
                }
                found.merge(
                        Arrays.asList(shares),
                        mother.getValue().times(father.getValue()).value(),
                        Double::sum);
            }
        }
        return found;
    }
}
