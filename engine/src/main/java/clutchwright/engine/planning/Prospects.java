package clutchwright.engine.planning;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.planning.Acquisition.Owned;
import clutchwright.engine.planning.Acquisition.Raised;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;

/// Builds up ways to come by animals from the stock on, best first, until one leads to the goal
/// and no other can be better.
///
/// A way is left aside if another gives animals worth as much, at no season with less chance and
/// for no more clutches.
final class Prospects {

    /// Beyond so many the search ends with the best found: where few units leave hope that all can
    /// be weighed, and where they do not.
    private static final int MOST_OF_FEW = 900_000;

    private static final int MOST_OF_MANY = 250_000;

    private static final int FEW_UNITS = 3;

    private static final int MOST_OF_AN_ORDER = 5;

    private static final int MOST_PYRAMIDS = 6;

    /// As unsure may be what an animal has that is kept; see [GenePool#unsure].
    private static final int MOST_UNSURE = 1;

    private static final int MOST_MORE = 60_000;

    private static final int MOST_HELD_BACK = 200_000;

    private final GenePool pool;
    private final RouteLimits limits;
    private final SearchWatch watch;
    private final Map<Sex, List<Acquisition>> settled = new EnumMap<>(Sex.class);
    private final Map<Integer, List<Raised>> byKind = new HashMap<>();

    /// What is still to be looked at, by how much of the goal it holds.
    private final TreeMap<Integer, PriorityQueue<Raised>> waiting = new TreeMap<>();

    private final Map<Integer, Double> copies = new HashMap<>();
    private final Map<GenePool.Hope, Chances> hopes = new HashMap<>();
    private final List<Arrival> arrivals = new ArrayList<>();
    private final List<Mating> stacked = new ArrayList<>();
    private int numbers;
    private int matings;
    private int weighed;
    private final List<Offer> heldBack = new ArrayList<>();

    /// What is unsurer than this waits for later.
    private int unsure;

    private boolean complete;

    /// A mating that brings the goal.
    record Arrival(Mating mating, Chances reached, double clutches) {

        boolean isAtLeast(Arrival that) {
            return clutches <= that.clutches + 1e-9 && reached.isAtLeast(that.reached);
        }
    }

    /// A group that a mating offers.
    private record Offer(Mating mating, Pairing.Group group) {}

    Prospects(GenePool pool, Stock stock, RouteLimits limits, SearchWatch watch) {
        this.pool = pool;
        this.limits = limits;
        this.watch = watch;
        for (var sex : Sex.values()) {
            settled.put(sex, new ArrayList<>());
        }
        var groups = new LinkedHashMap<Kind, List<Stock.Own>>();
        for (var own : stock.animals()) {
            groups.computeIfAbsent(pool.kindOf(own.genotype(), own.sex()), _ -> new ArrayList<>())
                    .add(own);
        }
        groups.forEach((kind, animals) -> of(kind.sex()).add(owned(kind, animals)));
        if (hasFewUnits()) {
            return;
        }
        for (var sex : Sex.values()) {
            var all = List.copyOf(of(sex));
            of(sex).removeIf(animal -> all.stream().anyMatch(other -> stands(other, animal)));
        }
    }

    /// Whether one of the house's animals can stand for another, which then is left aside where
    /// there are many units.
    private boolean stands(Acquisition other, Acquisition animal) {
        return replaces(other, animal)
                && (other.number() < animal.number() || !replaces(animal, other));
    }

    private Owned owned(Kind kind, List<Stock.Own> animals) {
        List<AnimalId> ids = animals.stream().map(Stock.Own::id).toList();
        return Owned.of(
                numbers++,
                kind,
                ids,
                animals.stream().map(Stock.Own::firstSeason).toList(),
                limits.seasons());
    }

    private List<Acquisition> of(Sex sex) {
        return settled.getOrDefault(sex, List.of());
    }

    int weighed() {
        return weighed;
    }

    /// Whether everything was looked at that could be better.
    boolean isComplete() {
        return complete;
    }

    /// Ways on which it is certain what every animal has come first: there are few of them, and
    /// what they lead to shows most others to be hopeless.
    void search() {
        var dams = List.copyOf(of(Sex.FEMALE));
        var sires = List.copyOf(of(Sex.MALE));
        stacked.addAll(new StackedRoute(this, pool, dams, sires).matings());
        stacked.addAll(bestOf(new PyramidRoute(this, pool, dams, sires).matings()));
        stacked.forEach(this::arrive);
        for (var dam : dams) {
            for (var sire : sires) {
                mate(dam, sire);
            }
        }
        var most = hasFewUnits() ? MOST_OF_FEW : MOST_OF_MANY;
        complete = exhaust(most);
        for (unsure = 1; complete && unsure <= MOST_UNSURE; unsure++) {
            release();
            complete = exhaust(most);
        }
        if (complete) {
            // What is unsurer still is looked into a little, in case nothing else is there.
            unsure = Integer.MAX_VALUE;
            release();
            exhaust(weighed + MOST_MORE);
        }
    }

    /// Those with the most chance in the end, and all of them among what may lead to the goal.
    private List<Mating> bestOf(List<Mating> pyramids) {
        pyramids.forEach(this::arrive);
        return pyramids.stream()
                .filter(mating -> mating.goalReached().isPresent())
                .sorted(
                        Comparator.comparingDouble(
                                mating -> -mating.goalReached().map(Chances::last).orElse(0.0)))
                .limit(MOST_PYRAMIDS)
                .toList();
    }

    private void release() {
        var held = List.copyOf(heldBack);
        heldBack.clear();
        held.forEach(this::consider);
    }

    private boolean exhaust(int most) {
        while (weighed < most && watch.goOn(weighed, arrivals.size())) {
            var level = nextLevel();
            if (level.isEmpty()) {
                return true;
            }
            for (var raised : level) {
                if (weighed < most && isWorthwhile(raised)) {
                    settle(raised);
                }
            }
        }
        return false;
    }

    /// The best that waits of each fullness: so the search gets on to fuller ones early.
    private List<Raised> nextLevel() {
        var best = new ArrayList<Raised>();
        for (var queue : waiting.descendingMap().values()) {
            var next = queue.poll();
            if (next != null) {
                best.add(next);
            }
        }
        return best;
    }

    private boolean isWorthwhile(Raised raised) {
        return byKind.getOrDefault(raised.kind().number(), List.of()).contains(raised)
                && !isHopeless(raised.kind(), raised.ready(), raised.clutches())
                && of(raised.kind().sex()).stream().noneMatch(other -> replaces(other, raised));
    }

    /// Whether all that can become of it is no better than what leads to the goal already.
    private boolean isHopeless(Kind kind, Chances ready, double clutches) {
        var hope = pool.hopeOf(kind);
        var more = 1 / hope(hope, pool.biology.eggs());
        var soonest = ready;
        if (hope.generations() > 1) {
            soonest =
                    soonest.later(
                            Math.min(pool.biology.maleSeasons(), pool.biology.femaleSeasons()));
            more++;
        }
        for (var arrival : arrivals) {
            if (arrival.clutches() <= clutches + more) {
                var best = soonest.then(hopes(hope), 1);
                if (arrival.reached().isAtLeast(best)) {
                    return true;
                }
            }
        }
        return false;
    }

    /// The chance of one animal wanted among so many eggs; no more are bred in a season.
    private double hope(GenePool.Hope hope, int eggs) {
        return Waiting.atLeast(1, hope.chance() * pool.biology.hatchRate().value(), eggs);
    }

    private Chances hopes(GenePool.Hope hope) {
        return hopes.computeIfAbsent(
                hope,
                _ -> {
                    var within = new double[limits.seasons() + 1];
                    for (var n = 1; n < within.length; n++) {
                        within[n] =
                                hope(hope, n * limits.clutchesPerSeason() * pool.biology.eggs());
                    }
                    return new Chances(within);
                });
    }

    private boolean replaces(Acquisition other, Acquisition acquisition) {
        return other.number() != acquisition.number()
                && other.clutches() <= acquisition.clutches() + 1e-9
                && (other.count() >= acquisition.count() || acquisition.kind().sex() == Sex.MALE)
                && other.ready().isAtLeast(acquisition.ready())
                && pool.isAtLeast(other.kind(), acquisition.kind());
    }

    private void settle(Raised raised) {
        var own = of(raised.kind().sex());
        own.add(raised);
        for (var other : List.copyOf(of(raised.kind().sex().opposite()))) {
            if (raised.kind().sex() == Sex.FEMALE) {
                mate(raised, other);
            } else {
                mate(other, raised);
            }
        }
    }

    private void mate(Acquisition dam, Acquisition sire) {
        var mating = mating(dam, sire);
        if (!mating.canBegin()) {
            return;
        }
        arrive(mating);
        for (var group : mating.pairing.groups()) {
            if (isUseful(mating, group.kind())) {
                consider(new Offer(mating, group));
            }
        }
    }

    private void consider(Offer offer) {
        if (pool.unsure(offer.group().kind()) > unsure) {
            if (heldBack.size() < MOST_HELD_BACK) {
                heldBack.add(offer);
            }
            return;
        }
        var many = many(offer.group());
        if (many == 1 || hasFewUnits()) {
            consider(offer.mating(), offer.group(), 1);
        }
        if (many > 1) {
            consider(offer.mating(), offer.group(), many);
        }
    }

    /// Where there are many units, who holds less of what is wanted than its parents do on the
    /// mean is not kept.
    private boolean isUseful(Mating mating, Kind kind) {
        var copies = copies(kind);
        return copies > 0.25
                && (hasFewUnits()
                        || copies
                                >= (copies(mating.dam.kind()) + copies(mating.sire.kind())) / 2
                                        - 0.01);
    }

    /// One male; as many females as a season's clutches bring on the mean, at least one, at most as
    /// many as can be bred.
    private int many(Pairing.Group group) {
        if (group.kind().sex() == Sex.MALE) {
            return 1;
        }
        var most = limits.clutchesPerSeason();
        var hatchlings = most * pool.biology.eggs() * pool.biology.hatchRate().value();
        return Math.clamp((long) (hatchlings * group.chance()), 1, most);
    }

    private boolean hasFewUnits() {
        return pool.units.size() <= FEW_UNITS;
    }

    Mating mating(Acquisition dam, Acquisition sire) {
        return new Mating(matings++, pool, limits, dam, sire);
    }

    private void arrive(Mating mating) {
        weighed++;
        var reached = mating.goalReached();
        if (reached.isEmpty()) {
            return;
        }
        var arrival =
                new Arrival(mating, reached.get(), cost(closure(mating)) + mating.goalClutches());
        if (arrivals.stream().noneMatch(other -> other.isAtLeast(arrival))) {
            arrivals.removeIf(arrival::isAtLeast);
            arrivals.add(arrival);
        }
    }

    /// Kept as many as there is use for.
    Raised raised(Mating mating, Pairing.Group group) {
        var count = many(group);
        var sought = List.of(new PairingOdds.Sought(group.target(), count));
        return raised(mating, group, count, ready(mating, group, sought), sought);
    }

    private Chances ready(Mating mating, Pairing.Group group, List<PairingOdds.Sought> sought) {
        return mating.hatched(sought).later(pool.biology.seasonsToMaturity(group.kind().sex()));
    }

    private Raised raised(
            Mating mating,
            Pairing.Group group,
            int count,
            Chances ready,
            List<PairingOdds.Sought> sought) {
        var before = closure(mating);
        var closure = new ArrayList<>(before);
        var raised =
                new Raised(
                        numbers++,
                        group.kind(),
                        count,
                        mating,
                        group.target(),
                        ready,
                        closure,
                        cost(before) + mating.clutches(sought));
        closure.add(raised);
        return raised;
    }

    private void consider(Mating mating, Pairing.Group group, int count) {
        weighed++;
        var sought = List.of(new PairingOdds.Sought(group.target(), count));
        var ready = ready(mating, group, sought);
        // Who is not grown in time for a last clutch is of no use.
        if (ready.last() < 1e-4) {
            return;
        }
        // Ways may have matings in common, so the dearer of the two is all that is sure.
        var least =
                Math.max(mating.dam.clutches(), mating.sire.clutches()) + mating.clutches(sought);
        var alike = byKind.computeIfAbsent(group.kind().number(), _ -> new ArrayList<>());
        for (var other : alike) {
            if (other.count() >= count
                    && other.clutches() <= least + 1e-9
                    && other.ready().isAtLeast(ready)) {
                return;
            }
        }
        if (isHopeless(group.kind(), ready, least)) {
            return;
        }
        var raised = raised(mating, group, count, ready, sought);
        if (alike.stream().anyMatch(other -> replaces(other, raised))) {
            return;
        }
        alike.removeIf(other -> replaces(raised, other));
        alike.add(raised);
        queue(raised);
    }

    private void queue(Raised raised) {
        waiting.computeIfAbsent(
                        fullness(raised.kind()),
                        _ ->
                                new PriorityQueue<>(
                                        Comparator.comparingDouble(Prospects::effort)
                                                .thenComparingInt(Raised::number)))
                .add(raised);
    }

    private static double effort(Raised raised) {
        return raised.ready().meanWait() + raised.clutches() / 10;
    }

    /// How many of the wanted copies an animal of that kind holds, rounded up.
    private int fullness(Kind kind) {
        return (int) Math.ceil(copies(kind) - 0.25);
    }

    private double copies(Kind kind) {
        return copies.computeIfAbsent(
                kind.number(),
                _ -> {
                    var sum = 0.0;
                    for (var u = 0; u < pool.units.size(); u++) {
                        sum += pool.units.get(u).wantedCopies(kind.mixes().get(u));
                    }
                    return sum;
                });
    }

    private static List<Raised> closure(Mating mating) {
        var all = new LinkedHashSet<Raised>(mating.dam.closure());
        all.addAll(mating.sire.closure());
        return List.copyOf(all);
    }

    /// What is kept of one mating is waited for together.
    private static double cost(List<Raised> closure) {
        var byMating = new LinkedHashMap<Mating, Map<Pairing.Target, Integer>>();
        for (var raised : closure) {
            byMating.computeIfAbsent(raised.mating(), _ -> new LinkedHashMap<>())
                    .merge(raised.target(), raised.count(), Math::max);
        }
        var sum = 0.0;
        for (var entry : byMating.entrySet()) {
            var sought = new ArrayList<PairingOdds.Sought>();
            entry.getValue()
                    .forEach((target, count) -> sought.add(new PairingOdds.Sought(target, count)));
            sum += entry.getKey().clutches(List.copyOf(sought));
        }
        return sum;
    }

    /// The routes worth being played through.
    List<RoutePlan> shortlist() {
        var chosen = new LinkedHashSet<Mating>(stacked);
        // The best by each season, then those that are done soonest, then those for least.
        for (var s = 1; s <= limits.seasons(); s++) {
            var season = s;
            arrivals.stream()
                    .max(Comparator.comparingDouble(arrival -> arrival.reached().by(season)))
                    .ifPresent(best -> chosen.add(best.mating()));
        }
        add(chosen, Comparator.comparingInt(this::seasons).thenComparingDouble(Arrival::clutches));
        add(chosen, Comparator.comparingDouble(Arrival::clutches));
        var plans = new LinkedHashSet<RoutePlan>();
        for (var mating : chosen) {
            plans.add(RoutePlan.of(pool, limits, mating));
        }
        if (!hasFewUnits()) {
            // Single females were no ways of their own there: the best two without many.
            arrivals.stream()
                    .sorted(
                            Comparator.comparingDouble(
                                    arrival -> -arrival.reached().by(limits.seasons())))
                    .limit(2)
                    .forEach(
                            best ->
                                    plans.add(
                                            RoutePlan.of(pool, limits, best.mating())
                                                    .withSingleFemales()));
        }
        return List.copyOf(plans);
    }

    private void add(Set<Mating> chosen, Comparator<Arrival> order) {
        arrivals.stream()
                .sorted(order)
                .limit(MOST_OF_AN_ORDER)
                .forEach(arrival -> chosen.add(arrival.mating()));
    }

    private int seasons(Arrival arrival) {
        for (var s = 1; s <= limits.seasons(); s++) {
            if (arrival.reached().by(s) >= limits.confidence()) {
                return s;
            }
        }
        return limits.seasons() + 1;
    }

    /// What leads to the goal, none at least as good as another.
    List<Arrival> arrivals() {
        return List.copyOf(arrivals);
    }
}
