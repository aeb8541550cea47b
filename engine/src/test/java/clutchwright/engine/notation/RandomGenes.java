package clutchwright.engine.notation;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype.Diploid;
import clutchwright.engine.genetics.PhenotypeMap;
import clutchwright.engine.notation.Genes.Group;
import clutchwright.engine.notation.Genes.Phase;
import clutchwright.engine.notation.Genes.Statement;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/// Genes of an invented animal, anywhere in a catalogue.
final class RandomGenes {

    private static final List<String> REMARKS =
            List.of(
                    "F2",
                    "CBB",
                    "neg Clown",
                    "line 7",
                    "a note of my own",
                    "hatched 2021, at home");

    private final GeneLine line;
    private final RandomGenerator random;

    RandomGenes(GeneLine line, RandomGenerator random) {
        this.line = line;
        this.random = random;
    }

    Genes next() {
        var model = line.catalogue().model();
        double share = random.nextDouble(0.02, 0.3);
        var shows = new ArrayList<Statement>();
        var carries = new ArrayList<Statement>();
        var group = group();
        for (var map : model.loci().values()) {
            if (random.nextDouble() < share) {
                atLocus(map, group, shows, carries);
            }
        }
        shows.addAll(carries);
        var remarks = random.nextInt(5) == 0 ? List.of(anyOf(REMARKS)) : List.<String>of();
        return new Genes(shows, group, remarks);
    }

    private void atLocus(
            PhenotypeMap map,
            Optional<Group> group,
            List<Statement> shows,
            List<Statement> carries) {
        var alleles = map.locus().alleles().stream().filter(a -> !a.isWild()).toList();
        var sayable = map.locus().allPairs().stream().filter(pair -> isSayable(pair, map)).toList();
        switch (random.nextInt(8)) {
            case 0, 1, 2 -> shows.add(withPhase(line.showing(List.of(anyOf(sayable))), group));
            case 3 -> shows.add(doubted(anyOf(sayable)));
            case 4 -> shows.add(line.showing(open(sayable)));
            case 5 -> carries.add(new Carries(anyOf(alleles), part()));
            case 6 -> beside(map, alleles, shows, carries);
            default -> {
                var hidden =
                        alleles.stream()
                                .filter(a -> !map.phenotypeOf(single(map, a)).visible())
                                .toList();
                if (!hidden.isEmpty()) {
                    carries.add(new Carries(anyOf(hidden), Fraction.WHOLE));
                }
            }
        }
    }

    /// One copy that shows, and a chance of another allele in the other place.
    private void beside(
            PhenotypeMap map,
            List<Allele> alleles,
            List<Statement> shows,
            List<Statement> carries) {
        var visible =
                alleles.stream().filter(a -> map.phenotypeOf(single(map, a)).visible()).toList();
        if (alleles.size() < 2 || visible.isEmpty()) {
            return;
        }
        var shown = anyOf(visible);
        var other = anyOf(alleles.stream().filter(a -> !a.equals(shown)).toList());
        shows.add(line.showing(List.of(single(map, shown))));
        carries.add(new Carries(other, part()));
    }

    private Shows doubted(Diploid pair) {
        var shown = line.showing(List.of(pair));
        var chance = random.nextBoolean() ? Optional.of(part()) : Optional.<Fraction>empty();
        return new Shows(
                shown.locus(), shown.name(), shown.pairs(), true, chance, Optional.empty());
    }

    private List<Diploid> open(List<Diploid> sayable) {
        var pairs = new ArrayList<Diploid>();
        for (int i = 0; i < 3; i++) {
            pairs.add(anyOf(sayable));
        }
        return pairs;
    }

    private Shows withPhase(Shows shows, Optional<Group> group) {
        var model = line.catalogue().model();
        boolean possible =
                model.theLocus(shows.locus()).locus().isSexLinked()
                        && shows.pairs().getFirst().carries(Allele.wildOf(shows.locus()))
                        && group.flatMap(Group::sexOfAll)
                                .filter(sex -> sex != model.sexes().heterogametic())
                                .isEmpty();
        if (!possible || random.nextBoolean()) {
            return shows;
        }
        var phase = random.nextBoolean() ? Phase.ON_SHARED : Phase.ON_LIMITED;
        return new Shows(
                shows.locus(),
                shows.name(),
                shows.pairs(),
                false,
                shows.chance(),
                Optional.of(phase));
    }

    private Optional<Group> group() {
        return switch (random.nextInt(6)) {
            case 0 -> Optional.of(new Group(1, 0, 0));
            case 1 -> Optional.of(new Group(0, 1, 0));
            case 2 -> Optional.of(new Group(random.nextInt(4), random.nextInt(4), 1));
            default -> Optional.empty();
        };
    }

    private Fraction part() {
        return switch (random.nextInt(5)) {
            case 0 -> Fraction.of(2, 3);
            case 1 -> Fraction.of(1, 3);
            case 2 -> Fraction.of(random.nextInt(1, 100), 100);
            case 3 -> Fraction.of(1, 1L << random.nextInt(1, 12));
            default -> {
                int whole = random.nextInt(3, 1000);
                yield Fraction.of(random.nextInt(1, whole), whole);
            }
        };
    }

    /// Whether it can be said that it shows: one copy of what does not show is said to be carried.
    static boolean isSayable(Diploid pair, PhenotypeMap map) {
        return map.phenotypeOf(pair).visible() || (pair.isHomozygous() && !pair.first().isWild());
    }

    private static Diploid single(PhenotypeMap map, Allele allele) {
        return new Diploid(map.locus().wildType(), allele);
    }

    private <T> T anyOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
