package clutchwright.engine.notation;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.GeneLine.OpenQuestion;
import clutchwright.engine.notation.GeneLine.Stated;
import clutchwright.engine.notation.Genes.Phase;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/// The genotypes that a line states for a parent.
///
/// A het carried at chance c is `+/X` with c and `+/+` with 1 - c, nothing else.
final class ParentReading {

    private final Catalogue catalogue;
    private final Spelling spelling;
    private final Sex sex;
    private final List<OpenQuestion> open = new ArrayList<>();

    private ParentReading(Catalogue catalogue, Spelling spelling, Sex sex) {
        this.catalogue = catalogue;
        this.spelling = spelling;
        this.sex = sex;
    }

    static Stated of(Catalogue catalogue, Spelling spelling, Genes genes, Sex sex) {
        return new ParentReading(catalogue, spelling, sex).read(genes);
    }

    private Stated read(Genes genes) {
        var shows = new LinkedHashMap<LocusId, Shows>();
        var carried = new LinkedHashMap<LocusId, List<Carries>>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Shows one -> shows.put(one.locus(), one);
                case Carries one ->
                        carried.computeIfAbsent(one.locus(), key -> new ArrayList<>()).add(one);
            }
        }
        var parent = ParentGenotype.WILD;
        for (var locus :
                genes.statements().stream().map(Genes.Statement::locus).distinct().toList()) {
            var map = catalogue.model().theLocus(locus);
            var shown = Optional.ofNullable(shows.get(locus));
            var pairs = shown.map(one -> shownPairs(one, map)).orElseGet(() -> wild(map));
            var held = carried.getOrDefault(locus, List.of());
            var all = pairs.then(pair -> withCarried(pair, held, map));
            var phase = shown.flatMap(Shows::phase);
            parent = parent.with(all.then(pair -> genotypes(pair, map, phase)));
        }
        return new Stated(parent, open);
    }

    private Distribution<Diploid> shownPairs(Shows shows, PhenotypeMap map) {
        var pairs = Distribution.uniform(shows.pairs());
        if (shows.doubtful() && shows.chance().isEmpty()) {
            var all = new ArrayList<>(shows.pairs());
            all.add(wild(map).outcomes().getFirst());
            ask(shows, true);
            return Distribution.uniform(all);
        }
        if (shows.pairs().size() > 1) {
            ask(shows, false);
        }
        var chance = shows.chance().orElse(Fraction.WHOLE);
        return chance.isWhole() ? pairs : either(chance).then(so -> so ? pairs : wild(map));
    }

    private void ask(Shows shows, boolean orNormal) {
        var choices = new ArrayList<String>();
        shows.pairs().forEach(pair -> choices.add(spelling.of(List.of(pair))));
        if (orNormal) {
            choices.add(Phenotype.NORMAL);
        }
        open.add(new OpenQuestion(shows.name(), choices));
    }

    private static Distribution<Diploid> wild(PhenotypeMap map) {
        return Distribution.certain(Choice.single(map.locus().wildType(), map));
    }

    private static Distribution<Boolean> either(Fraction chance) {
        var sides = new LinkedHashMap<Boolean, Fraction>();
        sides.put(true, chance);
        sides.put(false, chance.complement());
        return new Distribution<>(sides);
    }

    private static Distribution<Diploid> withCarried(
            Diploid pair, List<Carries> carried, PhenotypeMap map) {
        var sure = carried.stream().filter(one -> one.chance().isWhole()).toList();
        var unsure = carried.stream().filter(one -> !one.chance().isWhole()).toList();
        for (var one : sure) {
            pair = put(pair, one.allele());
        }
        int room = (int) pair.alleles().stream().filter(Allele::isWild).count();
        if (unsure.isEmpty() || room == 0) {
            return Distribution.certain(pair);
        }
        return filled(pair, unsure, room, map);
    }

    /// Where two of them together would show, or there is room for one, at most one is there.
    private static Distribution<Diploid> filled(
            Diploid pair, List<Carries> unsure, int room, PhenotypeMap map) {
        var sum = unsure.stream().map(Carries::chance).reduce(Fraction.NONE, Fraction::plus);
        boolean mayExclude = sum.compareTo(Fraction.WHOLE) <= 0;
        var weights = new LinkedHashMap<Diploid, Fraction>();
        if (mayExclude && (room == 1 || anyTwoShow(unsure, map))) {
            weights.put(pair, sum.complement());
            unsure.forEach(one -> weights.put(put(pair, one.allele()), one.chance()));
        } else {
            independently(pair, unsure, room, weights);
        }
        return Distribution.proportionalTo(weights).orElseGet(() -> Distribution.certain(pair));
    }

    private static boolean anyTwoShow(List<Carries> unsure, PhenotypeMap map) {
        return unsure.stream()
                .anyMatch(
                        a ->
                                unsure.stream()
                                        .filter(b -> !b.equals(a))
                                        .map(b -> new Diploid(a.allele(), b.allele()))
                                        .anyMatch(both -> map.phenotypeOf(both).visible()));
    }

    /// Each by its own chance, given that there is room for all that are there.
    private static void independently(
            Diploid pair, List<Carries> unsure, int room, SequencedMap<Diploid, Fraction> weights) {
        weights.put(pair, weight(unsure, List.of()));
        for (var a : unsure) {
            var one = put(pair, a.allele());
            weights.put(one, weight(unsure, List.of(a)));
            for (var b : unsure.subList(unsure.indexOf(a) + 1, unsure.size())) {
                if (room == 2) {
                    weights.put(put(one, b.allele()), weight(unsure, List.of(a, b)));
                }
            }
        }
    }

    private static Fraction weight(List<Carries> all, List<Carries> there) {
        return all.stream()
                .map(one -> there.contains(one) ? one.chance() : one.chance().complement())
                .reduce(Fraction.WHOLE, Fraction::times);
    }

    private static Diploid put(Diploid pair, Allele allele) {
        if (pair.first().isWild()) {
            return new Diploid(pair.second(), allele);
        }
        return pair.second().isWild() ? new Diploid(pair.first(), allele) : pair;
    }

    private Distribution<Genotype> genotypes(
            Diploid pair, PhenotypeMap map, Optional<Phase> phase) {
        var sexes = catalogue.model().sexes();
        if (!map.locus().isSexLinked() || sex != sexes.heterogametic()) {
            return Distribution.certain(pair);
        }
        var one = pair.first();
        var other = pair.second();
        if (phase.isPresent() && GeneReader.hasOneCopy(pair)) {
            var copy = one.isWild() ? other : one;
            var wild = map.locus().wildType();
            return Distribution.certain(
                    phase.get() == Phase.ON_SHARED
                            ? new Genotype.Phased(copy, wild)
                            : new Genotype.Phased(wild, copy));
        }
        return Distribution.uniform(
                List.of(new Genotype.Phased(one, other), new Genotype.Phased(other, one)));
    }
}
