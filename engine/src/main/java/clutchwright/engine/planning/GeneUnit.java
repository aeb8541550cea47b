package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.Young;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// Loci that are judged together, and of which no other locus tells anything: one locus, or
/// several that are linked, sex-linked, or hide each other.
///
/// States, looks and mixtures of states are numbered as they are met. What a pairing gives is
/// [Cross]'s answer for each pair of states, asked for once.
final class GeneUnit {

    /// The sex that a key says: one that the unit does not tell, or one of the two.
    private static final int EITHER = 0;

    /// What is no likelier than this is left out of account when routes are set apart by what is
    /// sure.
    private static final double ALL_BUT_CERTAIN = 0.05;

    private static final int FEMALE = 1;
    private static final int MALE = 2;

    final List<LocusId> loci;
    final boolean tellsSex;

    private final GeneticModel model;
    private final List<List<LocusId>> linked;
    private final Goal goal;
    private final Numbering<UnitState> states = new Numbering<>();
    private final Numbering<List<Phenotype>> looks = new Numbering<>();
    private final Numbering<SequencedMap<Integer, Fraction>> mixes = new Numbering<>();
    private final Map<Long, Offspring> pure = new HashMap<>();
    private final Map<Long, Groups> mixed = new HashMap<>();

    /// @param loci in naming order
    /// @param linked of these, those that lie on one chromosome, set by set
    GeneUnit(GeneticModel model, Goal goal, List<LocusId> loci, List<List<LocusId>> linked) {
        this.model = model;
        this.goal = goal;
        this.loci = List.copyOf(loci);
        this.linked = List.copyOf(linked);
        tellsSex = loci.stream().anyMatch(id -> model.theLocus(id).locus().isSexLinked());
    }

    /// Everything that values are numbered by.
    static final class Numbering<T> {
        private final Map<T, Integer> numbers = new HashMap<>();
        final List<T> values = new ArrayList<>();

        int of(T value) {
            return numbers.computeIfAbsent(
                    value,
                    met -> {
                        values.add(met);
                        return values.size() - 1;
                    });
        }
    }

    /// What two animals of known states give.
    ///
    /// @param alive share of embryos that live
    record Offspring(Fraction alive, List<Share> shares) {}

    /// @param key of look and sex, see [#key]
    /// @param chance among those that live
    record Share(int key, int state, Fraction chance, double value) {}

    /// What two mixtures give: those that live, by what can be told.
    record Groups(Fraction alive, List<Group> groups) {}

    /// @param mix of what they hold
    record Group(int key, Fraction chance, double value, int mix) {}

    private static int key(int look, int sex) {
        return look * 3 + sex;
    }

    static Optional<Sex> sexOf(int key) {
        return switch (key % 3) {
            case FEMALE -> Optional.of(Sex.FEMALE);
            case MALE -> Optional.of(Sex.MALE);
            default -> Optional.empty();
        };
    }

    List<Phenotype> lookOf(int key) {
        return looks.values.get(key / 3);
    }

    UnitState state(int number) {
        return states.values.get(number);
    }

    SequencedMap<Integer, Fraction> mix(int number) {
        return mixes.values.get(number);
    }

    /// The mixture that is held of an animal of the stock.
    int mixOf(ParentGenotype held, Sex sex) {
        var weights = new LinkedHashMap<Integer, Fraction>();
        spread(held, sex, List.of(), Fraction.WHOLE, weights);
        return mixes.of(weights);
    }

    private void spread(
            ParentGenotype held,
            Sex sex,
            List<Genotype> soFar,
            Fraction weight,
            SequencedMap<Integer, Fraction> weights) {
        if (soFar.size() == loci.size()) {
            var phases = phases(held, soFar);
            var each = weight.dividedBy(Fraction.of(phases.size(), 1));
            for (var phase : phases) {
                weights.merge(states.of(new UnitState(soFar, phase)), each, Fraction::plus);
            }
            return;
        }
        var locus = loci.get(soFar.size());
        var genotypes =
                Optional.ofNullable(held.loci().get(locus))
                        .orElseGet(() -> Distribution.certain(model.wildType(locus, sex)));
        genotypes
                .chances()
                .forEach(
                        (genotype, chance) -> {
                            var more = new ArrayList<>(soFar);
                            more.add(genotype);
                            spread(held, sex, more, weight.times(chance), weights);
                        });
    }

    /// Every phase that the haplotypes known of the animal allow, alike.
    private List<List<List<Allele>>> phases(ParentGenotype held, List<Genotype> genotypes) {
        List<List<List<Allele>>> all = List.of(List.of());
        for (var set : linked) {
            var here = set.stream().map(id -> genotypes.get(loci.indexOf(id))).toList();
            var allowed = UnitState.phases(here);
            for (var haplotype : held.haplotypes()) {
                var named = haplotype.alleles().sequencedValues();
                var agreeing =
                        allowed.stream()
                                .filter(
                                        phase ->
                                                phase.stream()
                                                        .anyMatch(
                                                                strand ->
                                                                        strand.containsAll(named)))
                                .toList();
                // A haplotype of an animal that lacks one of the alleles says nothing.
                allowed = agreeing.isEmpty() ? allowed : agreeing;
            }
            var next = new ArrayList<List<List<Allele>>>();
            for (var before : all) {
                for (var phase : allowed) {
                    var more = new ArrayList<>(before);
                    more.addAll(phase);
                    next.add(more);
                }
            }
            all = next;
        }
        return all;
    }

    /// Routes are played through side by side, and all ask here.
    synchronized Offspring offspring(int dam, int sire) {
        return pure.computeIfAbsent(pair(dam, sire), _ -> cross(state(dam), state(sire)));
    }

    private Offspring cross(UnitState dam, UnitState sire) {
        var cross = Cross.of(model, dam.asParent(), sire.asParent());
        var alive = cross.dying().complement();
        var sums = new LinkedHashMap<List<Integer>, Fraction>();
        if (!alive.isNone()) {
            for (var young : cross.everyYoung()) {
                var sex =
                        young.sex()
                                .map(found -> found == Sex.FEMALE ? FEMALE : MALE)
                                .orElse(EITHER);
                var at = List.of(key(looks.of(young.shows()), sex), states.of(stateOf(young)));
                sums.merge(at, young.chance(), Fraction::plus);
            }
        }
        var shares = new ArrayList<Share>();
        sums.forEach(
                (at, chance) ->
                        shares.add(new Share(at.getFirst(), at.getLast(), chance, chance.value())));
        return new Offspring(alive, List.copyOf(shares));
    }

    private UnitState stateOf(Young young) {
        var genotypes = new ArrayList<Genotype>();
        var sex = young.sex().orElse(Sex.FEMALE);
        for (var id : loci) {
            genotypes.add(genotype(id, at(young.fromDam(), id), at(young.fromSire(), id), sex));
        }
        var strands = new ArrayList<List<Allele>>();
        for (var set : linked) {
            strands.addAll(
                    UnitState.ordered(
                            set.stream().map(id -> at(young.fromDam(), id)).toList(),
                            set.stream().map(id -> at(young.fromSire(), id)).toList()));
        }
        return new UnitState(genotypes, strands);
    }

    private Genotype genotype(LocusId id, Allele fromDam, Allele fromSire, Sex sex) {
        var sexes = model.sexes();
        if (!model.theLocus(id).locus().isSexLinked() || sex != sexes.heterogametic()) {
            return new Genotype.Diploid(fromDam, fromSire);
        }
        // The chromosome that only one sex has comes from the parent of that sex.
        return sexes.heterogametic() == Sex.MALE
                ? new Genotype.Phased(fromDam, fromSire)
                : new Genotype.Phased(fromSire, fromDam);
    }

    /// A locus that the pairing does not touch is wild type.
    private static Allele at(List<Allele> strand, LocusId id) {
        return strand.stream()
                .filter(allele -> allele.locus().equals(id))
                .findFirst()
                .orElseGet(() -> Allele.wildOf(id));
    }

    Groups groups(int damMix, int sireMix) {
        return mixed.computeIfAbsent(pair(damMix, sireMix), _ -> mixture(damMix, sireMix));
    }

    private Groups mixture(int damMix, int sireMix) {
        var alive = Fraction.NONE;
        var byKey = new LinkedHashMap<Integer, SequencedMap<Integer, Fraction>>();
        for (var dam : mix(damMix).entrySet()) {
            for (var sire : mix(sireMix).entrySet()) {
                var found = offspring(dam.getKey(), sire.getKey());
                var weight = dam.getValue().times(sire.getValue()).times(found.alive());
                alive = alive.plus(weight);
                for (var share : found.shares()) {
                    byKey.computeIfAbsent(share.key(), _ -> new LinkedHashMap<>())
                            .merge(share.state(), share.chance().times(weight), Fraction::plus);
                }
            }
        }
        var groups = new ArrayList<Group>();
        for (var entry : byKey.entrySet()) {
            var all = entry.getValue().values().stream().reduce(Fraction.NONE, Fraction::plus);
            if (!all.isNone()) {
                var chance = all.dividedBy(alive);
                groups.add(
                        new Group(
                                entry.getKey(),
                                chance,
                                chance.value(),
                                mixes.of(parts(entry.getValue(), all))));
            }
        }
        return new Groups(alive, List.copyOf(groups));
    }

    private static SequencedMap<Integer, Fraction> parts(
            SequencedMap<Integer, Fraction> weights, Fraction all) {
        var parts = new LinkedHashMap<Integer, Fraction>();
        weights.forEach(
                (state, weight) -> {
                    if (!weight.isNone()) {
                        parts.put(state, weight.dividedBy(all));
                    }
                });
        return parts;
    }

    /// The chance that an animal of the mixture has what the goal asks for at these loci.
    Fraction meeting(int mix) {
        var chance = Fraction.NONE;
        for (var entry : mix(mix).entrySet()) {
            if (state(entry.getKey()).genotypes().stream().allMatch(goal::isMetBy)) {
                chance = chance.plus(entry.getValue());
            }
        }
        return chance;
    }

    /// How many copies of alleles that the goal asks for, each counted no oftener than it is asked
    /// for; a mean over the mixture.
    double wantedCopies(int mix) {
        var copies = 0.0;
        for (var entry : mix(mix).entrySet()) {
            copies +=
                    entry.getValue().value()
                            * state(entry.getKey()).genotypes().stream()
                                    .mapToInt(this::wantedCopies)
                                    .sum();
        }
        return copies;
    }

    /// The most that the chance of meeting the goal at these loci can be for young of an animal of
    /// the mixture, whoever the other parent is; 1 where that is not plain.
    double mostWithBestMate(int mix) {
        if (loci.size() > 1 || tellsSex || !goal.loci().containsKey(loci.getFirst())) {
            return 1;
        }
        var most = 0.0;
        for (var pair : goal.loci().getOrDefault(loci.getFirst(), List.of())) {
            most = Math.max(most, pair.carries(wild()) ? 1 : gametesOf(mix, pair));
        }
        return most;
    }

    private Allele wild() {
        return Allele.wildOf(loci.getFirst());
    }

    private double gametesOf(int mix, Genotype.Diploid pair) {
        var share = 0.0;
        for (var entry : mix(mix).entrySet()) {
            for (var allele : state(entry.getKey()).genotypes().getFirst().alleles()) {
                share += pair.carries(allele) ? entry.getValue().value() / 2 : 0;
            }
        }
        return share;
    }

    /// How unsure it is whether an animal of the mixture has something that is wanted: 0 where it
    /// is all but certain, 1 where it is at least as likely as not, else more.
    int unsure(int mix) {
        if (mix(mix).size() == 1) {
            return 0;
        }
        var having = 0.0;
        for (var entry : mix(mix).entrySet()) {
            var has = state(entry.getKey()).genotypes().stream().anyMatch(this::isWanted);
            having += has ? entry.getValue().value() : 0;
        }
        if (having < ALL_BUT_CERTAIN || having > 1 - ALL_BUT_CERTAIN) {
            return 0;
        }
        return having >= 0.5 - 1e-9 ? 1 : 2;
    }

    private boolean isWanted(Genotype genotype) {
        return wantedCopies(genotype) > 0;
    }

    /// How many copies the goal asks for at these loci.
    int wantedCopiesOfGoal() {
        return loci.stream()
                .flatMap(id -> goal.loci().getOrDefault(id, List.of()).stream().limit(1))
                .mapToInt(this::wantedCopies)
                .sum();
    }

    /// Whether an animal of the mixture surely has at least one wanted copy at each locus.
    boolean carriesWanted(int mix) {
        return mix(mix).keySet().stream()
                .allMatch(
                        state ->
                                state(state).genotypes().stream()
                                        .filter(held -> goal.loci().containsKey(held.locus()))
                                        .allMatch(held -> wantedCopies(held) > 0));
    }

    private int wantedCopies(Genotype genotype) {
        return goal.loci().getOrDefault(genotype.locus(), List.of()).stream()
                .mapToInt(
                        pair ->
                                pair.alleles().stream()
                                        .distinct()
                                        .filter(allele -> !allele.isWild())
                                        .mapToInt(
                                                allele ->
                                                        Math.min(
                                                                genotype.copiesOf(allele),
                                                                pair.copiesOf(allele)))
                                        .sum())
                .max()
                .orElse(0);
    }

    /// The chance that an animal of the mixture carries one of these alleles of a locus.
    private Fraction carrying(int mix, Set<Allele> alleles) {
        var place = loci.indexOf(alleles.iterator().next().locus());
        var chance = Fraction.NONE;
        for (var entry : mix(mix).entrySet()) {
            var held = state(entry.getKey()).genotypes().get(place);
            if (alleles.stream().anyMatch(held::carries)) {
                chance = chance.plus(entry.getValue());
            }
        }
        return chance;
    }

    /// Alleles that an animal of the mixture may carry and that its look does not reveal. Those
    /// of which any will do for the goal are told together, by the name of the first.
    List<Outcome.Held> unseen(int mix, List<Phenotype> shows) {
        var all = new ArrayList<Outcome.Held>();
        for (var id : loci) {
            var map = model.theLocus(id);
            var told = new HashSet<Allele>();
            for (var allele : map.locus().alleles()) {
                var alike = alikeForGoal(allele);
                var revealed =
                        shows.stream()
                                .filter(form -> form.locus().equals(id))
                                .anyMatch(
                                        form ->
                                                alike.stream()
                                                        .anyMatch(one -> map.reveals(form, one)));
                if (!allele.isWild() && told.addAll(alike) && !revealed) {
                    var chance = carrying(mix, alike);
                    if (!chance.isNone()) {
                        all.add(new Outcome.Held(allele, chance));
                    }
                }
            }
        }
        return all;
    }

    private Set<Allele> alikeForGoal(Allele allele) {
        return alikeForGoal(allele.locus()).stream()
                .filter(some -> some.contains(allele))
                .findFirst()
                .orElseGet(() -> Set.of(allele));
    }

    /// Whether an animal of the one mixture is worth as much to the goal as one of the other,
    /// whatever is done with it. `false` also where that is not plain.
    boolean isAtLeast(int mix, int other) {
        if (mix == other) {
            return true;
        }
        if (loci.size() > 1 || tellsSex) {
            return false;
        }
        var alike = alikeForGoal(loci.getFirst());
        if (alike.size() == 1) {
            return hasMore(mix, other, alike.getFirst(), 1)
                    && hasMore(mix, other, alike.getFirst(), 2);
        }
        return !alike.isEmpty()
                && alike.stream().allMatch(some -> least(mix, some) >= most(other, some));
    }

    /// The alleles that the goal asks for, those together of which any pair will do.
    private List<Set<Allele>> alikeForGoal(LocusId locus) {
        var pairs = Set.copyOf(goal.loci().getOrDefault(locus, List.of()));
        var alleles =
                goal.alleles().stream().filter(allele -> allele.locus().equals(locus)).toList();
        var anyPairDoes =
                alleles.stream()
                        .allMatch(
                                one ->
                                        alleles.stream()
                                                .allMatch(
                                                        two ->
                                                                pairs.contains(
                                                                        new Genotype.Diploid(
                                                                                one, two))));
        return anyPairDoes && !alleles.isEmpty()
                ? List.of(Set.copyOf(alleles))
                : alleles.stream().map(Set::of).toList();
    }

    private boolean hasMore(int mix, int other, Set<Allele> alleles, int copies) {
        return withCopies(mix, alleles, copies).compareTo(withCopies(other, alleles, copies)) >= 0;
    }

    private Fraction withCopies(int mix, Set<Allele> alleles, int copies) {
        var chance = Fraction.NONE;
        for (var entry : mix(mix).entrySet()) {
            if (copiesOf(entry.getKey(), alleles) >= copies) {
                chance = chance.plus(entry.getValue());
            }
        }
        return chance;
    }

    private int copiesOf(int state, Set<Allele> alleles) {
        return (int)
                state(state).genotypes().getFirst().alleles().stream()
                        .filter(alleles::contains)
                        .count();
    }

    private int least(int mix, Set<Allele> alleles) {
        return mix(mix).keySet().stream().mapToInt(s -> copiesOf(s, alleles)).min().orElse(0);
    }

    private int most(int mix, Set<Allele> alleles) {
        return mix(mix).keySet().stream().mapToInt(s -> copiesOf(s, alleles)).max().orElse(0);
    }

    private static long pair(int dam, int sire) {
        return (long) dam << Integer.SIZE | sire;
    }
}
