package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// The genes that matter to a goal, in units, and every kind of animal met on the way to it.
final class GenePool {

    /// From here on a look is taken to tell that an animal is what is wanted.
    static final Fraction SURE = Fraction.of(999, 1000);

    final List<GeneUnit> units;
    final Goal goal;
    final Biology biology;

    private final Map<List<Object>, Kind> kinds = new HashMap<>();
    private final List<Kind> all = new ArrayList<>();
    private final Map<Long, Boolean> better = new HashMap<>();
    private final Map<Integer, Hope> hopes = new HashMap<>();
    private final Map<Long, Pairing> pairings = new HashMap<>();

    GenePool(GeneticModel model, Goal goal, Stock stock, Biology biology) {
        this.goal = goal;
        this.biology = biology;
        units =
                partition(model, relevant(model, goal, stock)).stream()
                        .map(loci -> new GeneUnit(model, goal, loci, linked(model, loci)))
                        .toList();
    }

    /// The goal's loci, and those at which the stock has what may hide them.
    private static List<LocusId> relevant(GeneticModel model, Goal goal, Stock stock) {
        var goals = goal.loci().keySet();
        return model.loci().values().stream()
                .filter(
                        map ->
                                goals.contains(map.locus().id())
                                        || map.maskings().keySet().stream()
                                                .filter(form -> hidesAny(map, form, goals))
                                                .anyMatch(form -> canShow(map, form, stock)))
                .map(map -> map.locus().id())
                .toList();
    }

    private static boolean hidesAny(PhenotypeMap map, Phenotype form, Set<LocusId> loci) {
        return loci.stream()
                .anyMatch(
                        other ->
                                !other.equals(map.locus().id())
                                        && map.maskingOf(form).hides(other));
    }

    /// Loci that the goal does not ask for, at which the stock has what may hide its genes.
    static List<LocusId> hiding(GeneticModel model, Goal goal, Stock stock) {
        return relevant(model, goal, stock).stream()
                .filter(locus -> !goal.loci().containsKey(locus))
                .toList();
    }

    /// Whether the stock has the alleles for it.
    private static boolean canShow(PhenotypeMap map, Phenotype form, Stock stock) {
        return map.showing(form).stream()
                .anyMatch(
                        pair ->
                                pair.alleles().stream()
                                        .allMatch(
                                                allele ->
                                                        allele.isWild() || isHeld(stock, allele)));
    }

    /// Whether some animal of the stock may have the allele.
    static boolean isHeld(Stock stock, Allele allele) {
        return stock.animals().stream()
                .map(own -> Optional.ofNullable(own.genotype().loci().get(allele.locus())))
                .flatMap(Optional::stream)
                .flatMap(held -> held.outcomes().stream())
                .anyMatch(genotype -> genotype.carries(allele));
    }

    private static List<List<LocusId>> partition(GeneticModel model, List<LocusId> loci) {
        var units = new ArrayList<List<LocusId>>();
        for (var locus : loci) {
            var joined = new LinkedHashSet<LocusId>();
            for (var unit : List.copyOf(units)) {
                if (unit.stream().anyMatch(other -> belong(model, other, locus))) {
                    joined.addAll(unit);
                    units.remove(unit);
                }
            }
            joined.add(locus);
            units.add(loci.stream().filter(joined::contains).toList());
        }
        return units;
    }

    private static boolean belong(GeneticModel model, LocusId a, LocusId b) {
        var both = Set.of(a, b);
        return (model.theLocus(a).locus().isSexLinked() && model.theLocus(b).locus().isSexLinked())
                || model.linkage().groups().stream()
                        .anyMatch(group -> group.loci().containsAll(both))
                || model.combinations().stream()
                        .filter(combination -> !combination.viability().counted().isWhole())
                        .map(
                                combination ->
                                        combination.parts().stream()
                                                .map(Caution.Part::allele)
                                                .map(allele -> allele.locus())
                                                .toList())
                        .anyMatch(parts -> parts.containsAll(both))
                || hides(model, a, b)
                || hides(model, b, a);
    }

    private static boolean hides(GeneticModel model, LocusId one, LocusId other) {
        return model.theLocus(one).maskings().values().stream()
                .anyMatch(masking -> masking.hides(other));
    }

    private static List<List<LocusId>> linked(GeneticModel model, List<LocusId> loci) {
        return model.linkage().groups().stream()
                .map(group -> group.loci().stream().filter(loci::contains).toList())
                .filter(set -> set.size() > 1)
                .toList();
    }

    Kind kindOf(ParentGenotype held, Sex sex) {
        return kind(sex, units.stream().map(unit -> unit.mixOf(held, sex)).toList());
    }

    Kind kind(Sex sex, List<Integer> mixes) {
        return kinds.computeIfAbsent(
                List.of(sex, List.copyOf(mixes)),
                _ -> {
                    var kind = new Kind(all.size(), sex, mixes);
                    all.add(kind);
                    return kind;
                });
    }

    Pairing pairing(Kind dam, Kind sire) {
        return pairings.computeIfAbsent(pair(dam, sire), _ -> new Pairing(this, dam, sire));
    }

    /// Whether an animal of the one kind is worth as much to the goal as one of the other; both of
    /// one sex.
    boolean isAtLeast(Kind kind, Kind other) {
        return better.computeIfAbsent(
                pair(kind, other),
                _ -> {
                    for (var u = 0; u < units.size(); u++) {
                        if (!units.get(u).isAtLeast(kind.mixes().get(u), other.mixes().get(u))) {
                            return false;
                        }
                    }
                    return true;
                });
    }

    /// Whether who looks so is what the goal asks for, sex left aside.
    boolean meets(Kind kind) {
        var chance = Fraction.WHOLE;
        for (var u = 0; u < units.size(); u++) {
            chance = chance.times(units.get(u).meeting(kind.mixes().get(u)));
        }
        return chance.compareTo(SURE) >= 0;
    }

    /// How unsure it is what animals of the kind have: 1 where it is so at one unit, and as
    /// likely as not there; more where it is so at several, or less likely.
    int unsure(Kind kind) {
        var unsure = 0;
        for (var u = 0; u < units.size(); u++) {
            unsure += units.get(u).unsure(kind.mixes().get(u));
        }
        return unsure;
    }

    /// A bound on the goal's chance, whatever a kind is bred with.
    ///
    /// @param generations before which it cannot come about
    /// @param chance per hatchling that is then not passed
    record Hope(int generations, double chance) {}

    Hope hopeOf(Kind kind) {
        return hopes.computeIfAbsent(
                kind.number(),
                _ -> {
                    var chance = 1.0;
                    var lacking = 0;
                    for (var u = 0; u < units.size(); u++) {
                        var most = units.get(u).mostWithBestMate(kind.mixes().get(u));
                        if (most == 0) {
                            lacking++;
                        } else {
                            chance *= most;
                        }
                    }
                    // Young of one that lacks a gene have it once at most, and hand it on to half.
                    return lacking == 0 ? new Hope(1, chance) : new Hope(2, Math.pow(0.5, lacking));
                });
    }

    private static long pair(Kind one, Kind other) {
        return (long) one.number() << Integer.SIZE | other.number();
    }
}
