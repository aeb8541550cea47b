package clutchwright.engine.planning;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.notation.Genes;
import clutchwright.engine.notation.Genes.Statement.Carries;
import clutchwright.engine.notation.Genes.Statement.Shows;
import clutchwright.engine.probability.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/// The animals that a project is to bring: what they must have at least, of which sex, how many.
///
/// At a locus an animal meets the goal if it has every copy of some one of the pairs named there:
/// `+/Clown` is met by a visual as well. Loci that are not named do not matter.
///
/// @param loci in naming order, at least one; of each the pairs of alleles any of which will do
/// @param males wanted, of that sex
/// @param females wanted, of that sex
/// @param either wanted beyond those, of whichever sex
public record Goal(
        SequencedMap<LocusId, List<Genotype.Diploid>> loci, int males, int females, int either) {

    public Goal {
        var copy = new LinkedHashMap<LocusId, List<Genotype.Diploid>>();
        loci.forEach((locus, pairs) -> copy.put(locus, List.copyOf(pairs)));
        loci = Collections.unmodifiableSequencedMap(copy);
        if (loci.isEmpty() || loci.values().stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a goal that names no genes: " + loci);
        }
        if (males < 0 || females < 0 || either < 0 || males + females + either < 1) {
            throw new IllegalArgumentException(
                    "not a number of animals: %d.%d.%d".formatted(males, females, either));
        }
    }

    /// How a line was understood as a goal.
    public sealed interface Reading {

        record Clear(Goal goal) implements Reading {}

        /// The line names no gene that an animal must have.
        record NamesNothing() implements Reading {}

        /// A goal is wanted for certain, and the line voices doubt about this gene.
        record InDoubt(String name) implements Reading {}

        /// On which sex chromosome a gene is to sit cannot be asked for.
        record AsksForPhase(String name) implements Reading {}

        /// More than two alleles of one locus, which no animal has.
        record ThreeAlleles(LocusId locus) implements Reading {}
    }

    /// The goal that a gene line states; one animal of either sex where it names no number. Where
    /// a look bears the name of an allele that others look like, all that look so will do.
    ///
    /// @throws IllegalArgumentException if the model does not know a gene of the line
    public static Reading read(Genes genes, GeneticModel model) {
        var loci = new LinkedHashMap<LocusId, List<Genotype.Diploid>>();
        for (var statement : genes.statements()) {
            switch (statement) {
                case Shows shows -> {
                    if (shows.doubtful() || !shows.chance().orElse(Fraction.WHOLE).isWhole()) {
                        return new Reading.InDoubt(shows.name());
                    }
                    if (shows.phase().isPresent()) {
                        return new Reading.AsksForPhase(shows.name());
                    }
                    loci.put(shows.locus(), alike(shows.pairs(), model));
                }
                case Carries carries -> {
                    if (!carries.chance().isWhole()) {
                        return new Reading.InDoubt(carries.allele().name());
                    }
                    var pairs = withCarried(loci, carries.allele());
                    if (pairs.isEmpty()) {
                        return new Reading.ThreeAlleles(carries.locus());
                    }
                    loci.put(carries.locus(), pairs);
                }
            }
        }
        loci.values().removeIf(pairs -> pairs.stream().allMatch(Goal::isWild));
        if (loci.isEmpty()) {
            return new Reading.NamesNothing();
        }
        var group = genes.animals();
        return new Reading.Clear(
                new Goal(
                        loci,
                        group.map(Genes.Group::males).orElse(0),
                        group.map(Genes.Group::females).orElse(0),
                        group.map(Genes.Group::unsexed).orElse(1)));
    }

    private static List<Genotype.Diploid> alike(List<Genotype.Diploid> pairs, GeneticModel model) {
        var all = new LinkedHashSet<>(pairs);
        for (var pair : pairs) {
            var map = model.theLocus(pair.locus());
            var look = map.phenotypeOf(pair);
            if (pair.alleles().stream().anyMatch(allele -> allele.name().equals(look.name()))) {
                all.addAll(map.showing(look));
            }
        }
        return List.copyOf(all);
    }

    private static List<Genotype.Diploid> withCarried(
            SequencedMap<LocusId, List<Genotype.Diploid>> loci, Allele allele) {
        var wild = Allele.wildOf(allele.locus());
        var before = loci.getOrDefault(allele.locus(), List.of(new Genotype.Diploid(wild, wild)));
        var pairs = new ArrayList<Genotype.Diploid>();
        for (var pair : before) {
            if (pair.first().isWild()) {
                pairs.add(new Genotype.Diploid(allele, pair.second()));
            } else if (pair.second().isWild()) {
                pairs.add(new Genotype.Diploid(pair.first(), allele));
            }
        }
        return pairs;
    }

    private static boolean isWild(Genotype.Diploid pair) {
        return pair.first().isWild() && pair.second().isWild();
    }

    /// Whether an animal with that genotype has enough at its locus.
    public boolean isMetBy(Genotype genotype) {
        var pairs = loci.getOrDefault(genotype.locus(), List.of());
        return pairs.isEmpty() || pairs.stream().anyMatch(pair -> holds(genotype, pair));
    }

    private static boolean holds(Genotype genotype, Genotype.Diploid pair) {
        return pair.alleles().stream()
                .filter(allele -> !allele.isWild())
                .allMatch(allele -> genotype.copiesOf(allele) >= pair.copiesOf(allele));
    }

    /// Every allele that some way of meeting the goal asks for, in naming order.
    public List<Allele> alleles() {
        return loci.values().stream()
                .flatMap(List::stream)
                .flatMap(pair -> pair.alleles().stream())
                .filter(allele -> !allele.isWild())
                .distinct()
                .toList();
    }

    /// How many animals are wanted in all.
    public int animals() {
        return males + females + either;
    }

    /// Whether so many of each sex are enough.
    public boolean isMetBy(int someMales, int someFemales) {
        return someMales >= males && someFemales >= females && someMales + someFemales >= animals();
    }

    /// What is still wanted where some are there already.
    Goal without(int someMales, int someFemales) {
        var spareMales = Math.max(0, someMales - males);
        var spareFemales = Math.max(0, someFemales - females);
        return new Goal(
                loci,
                Math.max(0, males - someMales),
                Math.max(0, females - someFemales),
                Math.max(0, either - spareMales - spareFemales));
    }

    /// The sex of all that are wanted, where only one sex is.
    public Optional<Sex> sex() {
        if (either > 0 || (males > 0 && females > 0)) {
            return Optional.empty();
        }
        return Optional.of(males > 0 ? Sex.MALE : Sex.FEMALE);
    }
}
