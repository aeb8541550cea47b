package clutchwright.engine.genetics;

import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/// Every kind of embryo at loci that are not independent of each other.
///
/// @param loci in naming order
/// @param parents chance of each pair of genotypes (and phases) that the parents may have
/// @param kinds for each number of parents, kinds whose chances sum to one
record Embryos(List<ActiveLocus> loci, List<Fraction> parents, List<Embryo> kinds) {

    /// Of parents who are independent of each other.
    ///
    /// @param loci in the order in which the gametes list their alleles
    static Embryos of(List<ActiveLocus> loci, List<Gamete.Source> dam, List<Gamete.Source> sire) {
        var couples = new ArrayList<Fraction>(dam.size() * sire.size());
        for (var mother : dam) {
            for (var father : sire) {
                couples.add(mother.weight().times(father.weight()));
            }
        }
        return of(loci, dam, sire, couples);
    }

    /// @param couples the chance of each pair of sources, the sire's fastest
    static Embryos of(
            List<ActiveLocus> loci,
            List<Gamete.Source> dam,
            List<Gamete.Source> sire,
            List<Fraction> couples) {
        var parents = new ArrayList<Fraction>(couples.size());
        var kinds = new ArrayList<Embryo>();
        for (var couple = 0; couple < couples.size(); couple++) {
            if (couples.get(couple).isNone()) {
                continue;
            }
            var father = sire.get(couple % sire.size());
            for (var egg : dam.get(couple / sire.size()).gametes()) {
                for (var sperm : father.gametes()) {
                    kinds.add(
                            new Embryo(
                                    parents.size(),
                                    egg.alleles(),
                                    sperm.alleles(),
                                    egg.decides().or(sperm::decides),
                                    egg.chance().times(sperm.chance())));
                }
            }
            parents.add(couples.get(couple));
        }
        return new Embryos(loci, parents, kinds).inNamingOrder();
    }

    /// Both together, each independent of the other.
    Embryos and(Embryos that) {
        var all = new ArrayList<>(loci);
        all.addAll(that.loci);
        var together = new ArrayList<Fraction>();
        for (var here : parents) {
            for (var there : that.parents) {
                together.add(here.times(there));
            }
        }
        var product = new ArrayList<Embryo>();
        for (var here : kinds) {
            for (var there : that.kinds) {
                product.add(
                        new Embryo(
                                here.parents() * that.parents.size() + there.parents(),
                                joined(here.fromDam(), there.fromDam()),
                                joined(here.fromSire(), there.fromSire()),
                                here.sex().or(there::sex),
                                here.given().times(there.given())));
            }
        }
        return new Embryos(all, together, product).inNamingOrder();
    }

    private Embryos inNamingOrder() {
        if (loci.size() == 1) {
            return this;
        }
        var order =
                IntStream.range(0, loci.size())
                        .boxed()
                        .sorted(Comparator.comparingInt(i -> loci.get(i).place))
                        .toList();
        return new Embryos(
                picked(loci, order),
                parents,
                kinds.stream()
                        .map(
                                kind ->
                                        new Embryo(
                                                kind.parents(),
                                                picked(kind.fromDam(), order),
                                                picked(kind.fromSire(), order),
                                                kind.sex(),
                                                kind.given()))
                        .toList());
    }

    private static <T> List<T> picked(List<T> from, List<Integer> order) {
        return order.stream().map(from::get).toList();
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        var all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }
}
