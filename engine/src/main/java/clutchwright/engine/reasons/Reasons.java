package clutchwright.engine.reasons;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.OwnRecords;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.probability.BayesFactor;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;

/// Why an animal is thought to carry an allele, or not: each claim, sighting, test, clutch and
/// relative with the factor by which it changes the odds.
///
/// To carry is to have at least one copy, unseen or not. Source of the formulas:
/// `docs/mathematics.md`, section "Why".
public final class Reasons {

    /// Ancestors and broods of siblings that are weighed one by one; the rest is weighed
    /// together.
    private static final int MOST_NAMED = 12;

    /// Factors nearer to one than that say nothing worth looking into.
    private static final double NOTHING = 1.005;

    /// Of the logarithm of the odds. That the animal may have the allele twice is as good as
    /// always far less likely than that, and a breeder reads no figure more exactly.
    private static final double ONE_PERCENT = 0.01;

    private final PedigreeInference inference;
    private final LocusChances chances;
    private final AnimalId animal;
    private final Allele allele;
    private final Family family;
    private final double prior;
    private final List<Reason> reasons;
    private final boolean multiply;

    private Reasons(
            PedigreeInference inference, LocusChances chances, AnimalId animal, Allele allele) {
        this.inference = inference;
        this.chances = chances;
        this.animal = animal;
        this.allele = allele;
        this.family = new Family(inference.records().pedigree(), animal);
        var before = without(inference.records().own().keySet());
        this.prior = before.map(this::carrying).orElse(0.0);
        var items = items();
        this.multiply = multiply(items);
        var all = new ArrayList<>(items);
        all.addAll(matesSides());
        this.reasons =
                all.stream()
                        .map(this::settling)
                        .filter(Reasons::isWorthSaying)
                        .sorted(Reason.STRONGEST_FIRST)
                        .toList();
    }

    /// Empty if the records contradict each other at the allele's locus.
    ///
    /// @throws IllegalArgumentException if the animal is not in the pedigree, or the model does
    ///     not know the allele, or it is the wild type
    public static Optional<Reasons> of(
            PedigreeInference inference, AnimalId animal, Allele allele) {
        var locus = inference.records().model().theLocus(allele.locus()).locus();
        if (!locus.alleles().contains(allele) || allele.isWild()) {
            throw new IllegalArgumentException(allele + " is not an allele to carry at " + locus);
        }
        inference.records().pedigree().theMember(animal);
        return inference
                .chancesAt(allele.locus())
                .map(chances -> new Reasons(inference, chances, animal, allele));
    }

    public AnimalId animal() {
        return animal;
    }

    public Allele allele() {
        return allele;
    }

    /// The chance that it carries the allele, given all records.
    public double chance() {
        return carrying(chances);
    }

    /// The chance that it would carry the allele if nothing were recorded of any animal at this
    /// locus, only who descends from whom.
    public double prior() {
        return prior;
    }

    public Method method() {
        return chances.method();
    }

    /// What leaves no doubt first, then by weight; what says nothing is left out, but for young.
    public List<Reason> strongestFirst() {
        return reasons;
    }

    /// Whether the prior odds times the factors of all reasons, the sides of mates apart, are
    /// the odds given all records, to within one percent. They are where the family has no
    /// loops and the animal is het or not at all; never where the question is settled for
    /// certain.
    public boolean multiply() {
        return multiply;
    }

    private List<Reason> items() {
        var items = new ArrayList<Reason>();
        var own = inference.records().of(animal);
        var locus = allele.locus();
        Optional.ofNullable(own.claims().get(locus))
                .filter(_ -> isFounder())
                .ifPresent(
                        claim ->
                                items.add(
                                        reason(
                                                new Source.OwnClaim(claim.genotypes()),
                                                alone(own.withoutClaim(locus)))));
        chances.lookAt(animal)
                .ifPresent(
                        look ->
                                items.add(
                                        reason(
                                                new Source.OwnSighting(look),
                                                alone(own.withoutSight(locus)))));
        var tests =
                own.tests().stream().filter(test -> test.allele().locus().equals(locus)).toList();
        if (!tests.isEmpty()) {
            items.add(reason(new Source.OwnTests(tests), alone(own.withoutTests(locus))));
        }
        family.branches.values().forEach(branch -> items.add(young(branch)));
        items.addAll(parentsSide());
        if (!recorded(family.mixed).isEmpty()) {
            var some = recorded(family.mixed);
            items.add(reason(new Source.Relatives(some.size()), without(some)));
        }
        return items;
    }

    private boolean isFounder() {
        var parentage = inference.records().pedigree().theMember(animal).parentage();
        return parentage.dams().isEmpty() && parentage.sires().isEmpty();
    }

    private Optional<LocusChances> alone(OwnRecords fewer) {
        return settled(chances.with(Map.of(animal, fewer)));
    }

    private Reason young(Family.Branch branch) {
        var further = recorded(branch.further());
        var some = new ArrayList<>(branch.young());
        some.addAll(further);
        var less = without(some);
        return reason(
                new Source.Young(
                        branch.mates(),
                        Tally.of(chances, branch.young(), further.size()),
                        likelihood(less, chance(), less.map(this::carrying)),
                        likelihood(less, not(chances), less.map(this::not))),
                less);
    }

    /// The chance of some records given an event, from the event's chances with them and
    /// without.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private OptionalDouble likelihood(
            Optional<LocusChances> less, double with, Optional<Double> without) {
        if (less.isEmpty() || without.isEmpty() || without.get() == 0) {
            return OptionalDouble.empty();
        }
        var log = chances.logLikelihood() - less.get().logLikelihood();
        return OptionalDouble.of(Math.min(1, Math.exp(log) * with / without.get()));
    }

    private List<Reason> matesSides() {
        var sides = new ArrayList<Reason>();
        for (var branch : family.branches.values()) {
            var some = recorded(branch.mateSide());
            if (!some.isEmpty()) {
                sides.add(reason(new Source.MatesSide(branch.mates(), some.size()), without(some)));
            }
        }
        return sides;
    }

    private List<Reason> parentsSide() {
        var some = recorded(family.parentsSide);
        if (some.isEmpty()) {
            return List.of();
        }
        var whole = reason(new Source.ParentsSide(some.size()), without(some));
        if (whole.factor().weight() < NOTHING) {
            return List.of(whole);
        }
        var parts = new ArrayList<Reason>();
        var left = new LinkedHashSet<>(some);
        for (var entry : family.ancestors().entrySet()) {
            if (parts.size() < MOST_NAMED && left.remove(entry.getKey())) {
                parts.add(
                        reason(
                                new Source.Ancestor(entry.getKey(), entry.getValue()),
                                without(List.of(entry.getKey()))));
            }
        }
        siblings(left).forEach(parts::add);
        if (!left.isEmpty()) {
            parts.add(reason(new Source.Relatives(left.size()), without(left)));
        }
        return List.of(
                new Reason(
                        whole.source(),
                        whole.factor(),
                        whole.chanceWithout(),
                        whole.settles(),
                        parts.stream()
                                .filter(Reasons::isWorthSaying)
                                .sorted(Reason.STRONGEST_FIRST)
                                .toList()));
    }

    /// Takes those that it weighs out of those that are left.
    private List<Reason> siblings(Set<AnimalId> left) {
        var own = new HashSet<AnimalId>();
        var parentage = inference.records().pedigree().theMember(animal).parentage();
        own.addAll(parentage.dams());
        own.addAll(parentage.sires());
        var all = new ArrayList<Reason>();
        for (var brood : family.siblings()) {
            var young = brood.young().stream().filter(left::contains).toList();
            if (young.isEmpty() || all.size() == MOST_NAMED) {
                continue;
            }
            var some = family.descendants(young);
            some.retainAll(left);
            left.removeAll(some);
            var shared = new LinkedHashSet<>(brood.dams());
            shared.addAll(brood.sires());
            shared.retainAll(own);
            all.add(
                    reason(
                            new Source.Siblings(
                                    brood.dams(),
                                    brood.sires(),
                                    List.copyOf(shared),
                                    Tally.of(chances, young, some.size() - young.size())),
                            without(some)));
        }
        return all;
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private Reason reason(Source source, Optional<LocusChances> less) {
        return less.map(
                        fewer ->
                                new Reason(
                                        source,
                                        factor(fewer),
                                        OptionalDouble.of(carrying(fewer)),
                                        false,
                                        List.of()))
                .orElseGet(
                        () ->
                                new Reason(
                                        source,
                                        BayesFactor.NONE,
                                        OptionalDouble.empty(),
                                        false,
                                        List.of()));
    }

    private BayesFactor factor(LocusChances less) {
        // Cross-multiplied: where either side is certain there are no odds to divide by.
        var above = chance() * not(less);
        var below = not(chances) * carrying(less);
        if (above == 0 && below == 0) {
            return BayesFactor.NONE;
        }
        return new BayesFactor(below == 0 ? Double.POSITIVE_INFINITY : above / below);
    }

    /// Where no doubt is left: the same, and whether these records alone leave none.
    private Reason settling(Reason reason) {
        if (not(chances) > 0 && chance() > 0) {
            return reason;
        }
        var kept = keptFor(reason.source());
        if (kept.isEmpty()) {
            return reason;
        }
        var others = new HashMap<AnimalId, OwnRecords>();
        for (var one : inference.records().own().keySet()) {
            if (!kept.get().contains(one)) {
                others.put(one, inference.records().of(one).without(allele.locus()));
            }
        }
        if (!(reason.source() instanceof Source.ParentsSide)
                && !(reason.source() instanceof Source.Young)) {
            others.put(animal, onlyOwn(reason.source()).apply(inference.records().of(animal)));
        }
        var settles =
                settled(chances.with(others))
                        .filter(alone -> not(alone) == 0 || carrying(alone) == 0)
                        .isPresent();
        return new Reason(
                reason.source(), reason.factor(), reason.chanceWithout(), settles, reason.parts());
    }

    /// The animals whose records stay when a source is taken alone; empty where a source says
    /// nothing alone.
    private Optional<Set<AnimalId>> keptFor(Source source) {
        return switch (source) {
            case Source.OwnClaim _, Source.OwnSighting _, Source.OwnTests _ ->
                    Optional.of(Set.of());
            case Source.Young young ->
                    Optional.ofNullable(family.branches.get(young.mates()))
                            .map(
                                    branch -> {
                                        var kept = new HashSet<>(branch.young());
                                        kept.addAll(branch.further());
                                        kept.addAll(branch.mateSide());
                                        return kept;
                                    });
            case Source.ParentsSide _ -> Optional.of(new HashSet<>(family.parentsSide));
            case Source.MatesSide _, Source.Ancestor _, Source.Siblings _, Source.Relatives _ ->
                    Optional.empty();
        };
    }

    private UnaryOperator<OwnRecords> onlyOwn(Source source) {
        var locus = allele.locus();
        return switch (source) {
            case Source.OwnClaim _ -> own -> own.withoutSight(locus).withoutTests(locus);
            case Source.OwnSighting _ -> own -> own.withoutClaim(locus).withoutTests(locus);
            case Source.OwnTests _ -> own -> own.withoutClaim(locus).withoutSight(locus);
            case Source.Young _,
                    Source.MatesSide _,
                    Source.ParentsSide _,
                    Source.Ancestor _,
                    Source.Siblings _,
                    Source.Relatives _ ->
                    own -> own.without(locus);
        };
    }

    private boolean multiply(List<Reason> items) {
        var logOdds = Math.log(prior) - Math.log1p(-prior);
        for (var item : items) {
            logOdds += Math.log(item.factor().value());
        }
        var found = Math.log(chance()) - Math.log(not(chances));
        // Comparisons with what is not finite are false.
        return Math.abs(logOdds - found) < ONE_PERCENT;
    }

    private static boolean isWorthSaying(Reason reason) {
        return reason.settles()
                || reason.chanceWithout().isEmpty()
                || reason.factor().weight() >= NOTHING
                || reason.source() instanceof Source.Young;
    }

    /// Those of whom anything is recorded that bears on the locus.
    private List<AnimalId> recorded(Collection<AnimalId> some) {
        return some.stream()
                .filter(
                        one -> {
                            var own = inference.records().of(one);
                            return own.claims().containsKey(allele.locus())
                                    || chances.lookAt(one).isPresent()
                                    || own.tests().stream()
                                            .anyMatch(
                                                    test ->
                                                            test.allele()
                                                                    .locus()
                                                                    .equals(allele.locus()));
                        })
                .toList();
    }

    /// Empty where the other records could not be true without them: a claim may be all that
    /// makes them possible.
    private Optional<LocusChances> without(Collection<AnimalId> some) {
        var fewer = new LinkedHashMap<AnimalId, OwnRecords>();
        for (var one : recorded(some)) {
            fewer.put(one, inference.records().of(one).without(allele.locus()));
        }
        return fewer.isEmpty() ? Optional.of(chances) : settled(chances.with(fewer));
    }

    private static Optional<LocusChances> settled(LocusAnswer answer) {
        return answer instanceof LocusAnswer.Settled(var less)
                ? Optional.of(less)
                : Optional.empty();
    }

    private double carrying(LocusChances of) {
        return of.chanceOfCarrying(animal, allele);
    }

    private double not(LocusChances of) {
        return of.chanceThat(animal, genotype -> !genotype.carries(allele));
    }
}
