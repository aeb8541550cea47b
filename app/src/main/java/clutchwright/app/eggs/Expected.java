package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.GeneLineMarkup;
import clutchwright.app.parts.GeneLineMarkup.Carried;
import clutchwright.engine.genetics.Caution;
import clutchwright.engine.genetics.Cross;
import clutchwright.engine.genetics.GeneticModel;
import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Outcome;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.ParentPair;
import clutchwright.engine.genetics.Phenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.probability.Distribution;
import clutchwright.engine.probability.Fraction;
import clutchwright.records.clutches.Clutch;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.Set;

/// What a clutch can give: the cross with each male that may be the sire, by his weight.
///
/// One male sired the whole clutch, whichever it was.
///
/// @param parts their weights sum to one
public record Expected(GeneticModel model, List<Part> parts) {

    private static final long FEW = 200;
    private static final BigInteger MANY = BigInteger.valueOf(1_000_000);

    public Expected {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("nothing is expected of nobody");
        }
    }

    /// @param weight the chance of this sire before anything hatched
    public record Part(Fraction weight, ParentGenotype dam, ParentGenotype sire, Cross cross) {}

    /// Hatchlings that look alike.
    ///
    /// @param shows in naming order; empty where nothing shows
    public record Guess(List<Phenotype> shows, Fraction chance, GeneLineMarkup genes) {

        public Guess {
            shows = List.copyOf(shows);
        }

        String name() {
            return shows.isEmpty()
                    ? Phenotype.NORMAL
                    : String.join(" ", shows.stream().map(Phenotype::name).toList());
        }

        Set<Phenotype> look() {
            return Set.copyOf(shows);
        }
    }

    /// Empty where one of the parents is not on record, or there was only one.
    static Optional<Expected> of(Holding holding, Clutch clutch) {
        var couple = Couple.of(holding, clutch.parentage());
        if (couple.withoutMale() || couple.sires().isEmpty()) {
            return Optional.empty();
        }
        var knowledge = holding.knowledge();
        var dam = knowledge.asParent(clutch.dam(), Sex.FEMALE);
        var males = new LinkedHashMap<Male, Fraction>();
        couple.sires()
                .forEach(
                        sire ->
                                males.merge(
                                        new Male(
                                                knowledge.asParent(sire.id(), Sex.MALE),
                                                knowledge.together(clutch.dam(), sire.id())),
                                        sire.chance(),
                                        Fraction::plus));
        var model = holding.catalogue(clutch.species()).model();
        var parts = new ArrayList<Part>();
        males.forEach(
                (male, weight) ->
                        parts.add(
                                new Part(
                                        weight,
                                        dam,
                                        male.genes(),
                                        Cross.of(model, dam, male.genes(), male.withHer()))));
        return Optional.of(new Expected(model, parts));
    }

    /// Males of the same genes count as one.
    ///
    /// @param withHer what he and the dam have together, where that is not each by itself
    private record Male(
            ParentGenotype genes, SequencedMap<LocusId, Distribution<ParentPair>> withHer) {}

    /// @param sires males of the same genes count as one
    static Expected of(GeneticModel model, ParentGenotype dam, Distribution<ParentGenotype> sires) {
        var parts = new ArrayList<Part>();
        sires.chances()
                .forEach(
                        (sire, weight) ->
                                parts.add(new Part(weight, dam, sire, Cross.of(model, dam, sire))));
        return new Expected(model, parts);
    }

    /// The likeliest groups, by falling chance, then by name.
    List<Guess> likeliest(int limit) {
        var looks = new LinkedHashSet<Set<Phenotype>>();
        for (var part : parts) {
            part.cross().groups(limit).forEach(group -> looks.add(Set.copyOf(group.shows())));
        }
        return looks.stream()
                .flatMap(look -> find(look).stream())
                .sorted(Comparator.comparing(Guess::chance).reversed().thenComparing(Guess::name))
                .limit(limit)
                .toList();
    }

    /// The group that shows exactly these forms, if these parents can give it.
    Optional<Guess> find(Set<Phenotype> shows) {
        var found = new ArrayList<Outcome>();
        var weights = new ArrayList<Fraction>();
        for (var part : parts) {
            var outcome = part.cross().findShowing(shows);
            if (outcome.isPresent()) {
                found.add(outcome.get());
                weights.add(part.weight().times(outcome.get().chance()));
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        var chance = sum(weights);
        var carries = new LinkedHashMap<String, Fraction>();
        for (var i = 0; i < found.size(); i++) {
            for (var held : found.get(i).carries()) {
                carries.merge(
                        held.allele().name(),
                        held.chance().times(weights.get(i)).dividedBy(chance),
                        Fraction::plus);
            }
        }
        var shown = found.getFirst().shows();
        return Optional.of(
                new Guess(
                        shown,
                        chance,
                        new GeneLineMarkup(
                                shown.stream().map(Phenotype::name).toList(),
                                carries.entrySet().stream()
                                        .map(each -> new Carried(each.getKey(), each.getValue()))
                                        .toList())));
    }

    /// A group as it is written, also one that these parents cannot give.
    GeneLineMarkup genesOf(Set<Phenotype> shows) {
        return find(shows).map(Guess::genes).orElseGet(() -> written(model, shows));
    }

    /// The forms in naming order.
    static GeneLineMarkup written(GeneticModel model, Set<Phenotype> shows) {
        return new GeneLineMarkup(
                model.loci().keySet().stream()
                        .flatMap(locus -> shows.stream().filter(form -> form.locus().equals(locus)))
                        .map(Phenotype::name)
                        .toList(),
                List.of());
    }

    Fraction chanceOf(Set<Phenotype> shows) {
        return find(shows).map(Guess::chance).orElse(Fraction.NONE);
    }

    /// The chance that a hatchling which looks so is of that sex.
    Fraction chanceOf(Sex sex, Set<Phenotype> shows) {
        var both = new ArrayList<Fraction>();
        for (var part : parts) {
            part.cross()
                    .findShowing(shows)
                    .ifPresent(
                            outcome ->
                                    both.add(
                                            part.weight()
                                                    .times(outcome.chance())
                                                    .times(
                                                            outcome.sexes()
                                                                    .getOrDefault(
                                                                            sex, Fraction.NONE))));
        }
        var all = chanceOf(shows);
        return all.isNone() ? Fraction.NONE : sum(both).dividedBy(all);
    }

    /// The chance of a clutch that falls into groups just so, in any order.
    Fraction chanceOf(List<Cross.Found> found) {
        return sum(
                parts.stream()
                        .map(part -> part.weight().times(part.cross().clutchChance(found)))
                        .toList());
    }

    /// The share of embryos that do not live because of their genotype.
    Fraction dying() {
        return sum(parts.stream().map(part -> part.weight().times(part.cross().dying())).toList());
    }

    /// Welfare cautions of the parents and of what they can give, gravest first.
    List<Caution> cautions() {
        return parts.stream().flatMap(part -> part.cross().cautions().stream()).distinct().toList();
    }

    /// How many groups can be told apart; where sires are in doubt and there are very many, as
    /// if no two sires gave the same.
    long groups() {
        var sum =
                parts.stream()
                        .mapToLong(part -> part.cross().outcomeCount().min(MANY).longValueExact())
                        .sum();
        return parts.size() > 1 && sum <= FEW ? likeliest((int) sum).size() : sum;
    }

    private static Fraction sum(List<Fraction> all) {
        return all.stream().reduce(Fraction.NONE, Fraction::plus);
    }
}
