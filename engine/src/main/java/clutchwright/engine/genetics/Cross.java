package clutchwright.engine.genetics;

import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/// The exact outcome of a pairing: dam by sire, grouped by what can be seen.
///
/// The product of the loci is never built: groups come likeliest first. Several sex-linked loci are
/// taken to recombine independently of each other, given the sex of the offspring.
/// Source of the formulas: `docs/mathematics.md`, section "Cross".
public final class Cross {

    private final GeneticModel model;
    private final List<ActiveLocus> loci;
    private final List<Block> blocks;
    private final List<Scene> scenes;
    private final List<View> views;
    private final Fraction alive;

    /// Made when first asked for; of two threads that ask at once each may make its own.
    private volatile @Nullable ClutchChances clutches;

    private Cross(GeneticModel model, List<ActiveLocus> loci, List<Block> blocks) {
        this.model = model;
        this.loci = loci;
        this.blocks = blocks;
        scenes = Scene.allOf(blocks, MaskingCase.allOf(loci));
        views = View.allOf(scenes);
        var share = Fraction.WHOLE;
        for (var block : blocks) {
            share = share.times(block.alive);
        }
        alive = share;
    }

    /// @throws IllegalArgumentException if a parent has a locus that the model does not know, an
    ///     allele that is not of its series, or a genotype in the shape of the other sex
    public static Cross of(GeneticModel model, ParentGenotype dam, ParentGenotype sire) {
        return of(model, dam, sire, Map.of());
    }

    /// Of parents who are not independent of each other: what one carries says something of the
    /// other, as with mates that have young, or with siblings.
    ///
    /// @param together their genotypes at the loci where that is so, instead of each parent's own
    ///     there; at sex-linked and at linked loci it is left out of account
    /// @throws IllegalArgumentException as for independent parents
    public static Cross of(
            GeneticModel model,
            ParentGenotype dam,
            ParentGenotype sire,
            Map<LocusId, Distribution<ParentPair>> together) {
        var loci = ActiveLocus.allOf(model, dam, sire, together);
        return new Cross(
                model, loci, Partition.blocks(model, loci, dam.haplotypes(), sire.haplotypes()));
    }

    /// The likeliest groups, by falling chance, then by name in the order of code points.
    ///
    /// @param limit at least one
    public List<Outcome> likeliest(int limit) {
        return likeliest(limit, Wanted.ANYTHING);
    }

    /// The likeliest of the groups that are wanted; chances stay those among all that live.
    ///
    /// @param limit at least one
    public List<Outcome> likeliest(int limit, Wanted wanted) {
        var detail = new GroupDetail(loci, blocks, scenes, model.sexes(), alive);
        var outcomes = new ArrayList<Outcome>();
        for (var ranked : ranked(limit, wanted)) {
            outcomes.add(detail.of(shownIn(ranked)).orElseThrow());
        }
        return List.copyOf(outcomes);
    }

    /// The same groups in the same order, without what they may hold unseen.
    ///
    /// @param limit at least one
    public List<Group> groups(int limit) {
        return groups(limit, Wanted.ANYTHING);
    }

    /// The likeliest of the groups that are wanted, without what they may hold unseen.
    ///
    /// @param limit at least one
    public List<Group> groups(int limit, Wanted wanted) {
        var parts = parts();
        var groups = new ArrayList<Group>();
        for (var ranked : ranked(limit, wanted)) {
            groups.add(
                    new Group(ranked.name(), ranked.shows(), Fraction.of(ranked.weight(), parts)));
        }
        return List.copyOf(groups);
    }

    /// The chance of every group, without names.
    ///
    /// @throws IllegalStateException if there are more groups than a table can hold
    public ChanceTable chances() {
        return ChanceTable.of(views, parts());
    }

    /// How many groups can be told apart.
    public BigInteger outcomeCount() {
        return views.stream().map(View::count).reduce(BigInteger.ZERO, BigInteger::add);
    }

    /// The share of embryos that do not live because of their genotype.
    public Fraction dying() {
        return alive.complement();
    }

    /// The chance that a hatchling is wanted; none if no embryo lives.
    public Fraction chanceOf(Wanted wanted) {
        if (alive.isNone()) {
            return Fraction.NONE;
        }
        return viewsOf(wanted).stream()
                .map(View::chance)
                .reduce(Fraction.NONE, Fraction::plus)
                .dividedBy(alive);
    }

    /// The chance of at least one hatchling that is wanted among so many that all hatch. The
    /// parents' unknown genotypes are the same for all eggs of a clutch.
    ///
    /// @param eggs zero or more
    public Fraction atLeastOne(Wanted wanted, int eggs) {
        requireEggs(eggs);
        return Asked.of(wanted, model, loci)
                .map(asked -> clutches().atLeastOne(asked, eggs))
                .orElse(Fraction.NONE);
    }

    /// The chance of at least one hatchling of that group.
    ///
    /// @param eggs zero or more
    public Fraction atLeastOne(Outcome group, int eggs) {
        requireEggs(eggs);
        return Asked.exactly(Set.copyOf(group.shows()), model, loci)
                .map(asked -> clutches().atLeastOne(asked, eggs))
                .orElse(Fraction.NONE);
    }

    /// Every kind of young that lives, at all loci together and on its two strands, each once for
    /// every way in which it comes about. For pairings that touch few loci: the product of the
    /// loci is built.
    public List<Young> everyYoung() {
        var all = new ArrayList<Young>();
        for (var scene : scenes) {
            new YoungList(loci, blocks, scene, alive).addTo(all);
        }
        return List.copyOf(all);
    }

    /// The group that shows exactly these forms, if the pairing can give it.
    public Optional<Outcome> findShowing(Set<Phenotype> shows) {
        return Asked.exactly(shows, model, loci)
                .flatMap(
                        asked ->
                                new GroupDetail(loci, blocks, scenes, model.sexes(), alive)
                                        .of(asked.shown()));
    }

    /// The chance that so many hatchlings fall into the groups as found, in any order: the
    /// multinomial chance, averaged over the parents' unknown genotypes, given that all of them
    /// hatch.
    public Fraction clutchChance(List<Found> found) {
        var hatchlings = new LinkedHashMap<Asked, Integer>();
        for (var group : found) {
            var asked = Asked.exactly(group.shows(), model, loci);
            if (group.hatchlings() > 0) {
                if (asked.isEmpty()) {
                    return Fraction.NONE;
                }
                hatchlings.merge(asked.get(), group.hatchlings(), Math::addExact);
            }
        }
        return clutches()
                .asFound(List.copyOf(hatchlings.keySet()), List.copyOf(hatchlings.values()));
    }

    /// Cautions of the parents and of what the pairing can give, gravest first.
    public List<Caution> cautions() {
        return new CautionSearch(model, loci, blocks).all();
    }

    /// @param shows the visible forms of the group; empty for `Normal`
    /// @param hatchlings zero or more
    public record Found(Set<Phenotype> shows, int hatchlings) {

        public Found {
            shows = Set.copyOf(shows);
            if (hatchlings < 0) {
                throw new IllegalArgumentException("hatchlings is " + hatchlings + ", below 0");
            }
        }
    }

    private List<Ranked> ranked(int limit, Wanted wanted) {
        if (limit < 1) {
            throw new IllegalArgumentException("limit is " + limit + ", not at least 1");
        }
        return Likeliest.of(viewsOf(wanted), limit);
    }

    private List<View> viewsOf(Wanted wanted) {
        return Asked.of(wanted, model, loci)
                .map(asked -> views.stream().map(view -> view.only(asked)).toList())
                .orElse(List.of());
    }

    /// Into how many parts of equal weight the living embryos fall.
    private BigInteger parts() {
        var parts = alive.numerator();
        var scale = BigInteger.ONE;
        for (var block : blocks) {
            scale = scale.multiply(block.scale);
        }
        return parts.multiply(scale).divide(alive.denominator());
    }

    private List<Integer> shownIn(Ranked ranked) {
        var shown = new ArrayList<>(Collections.nCopies(loci.size(), ActiveLocus.NOTHING));
        var next = 0;
        for (var form : ranked.shows()) {
            // Forms stand in the order of the loci.
            while (!loci.get(next).id.equals(form.locus())) {
                next++;
            }
            shown.set(next, loci.get(next).forms.indexOf(form));
        }
        return shown;
    }

    private ClutchChances clutches() {
        var known = clutches;
        if (known == null) {
            known = new ClutchChances(blocks, scenes);
            clutches = known;
        }
        return known;
    }

    private static void requireEggs(int eggs) {
        if (eggs < 0) {
            throw new IllegalArgumentException("eggs is " + eggs + ", below 0");
        }
    }
}
