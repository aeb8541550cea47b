package clutchwright.engine.pedigree;

import clutchwright.engine.genetics.Sex;
import clutchwright.engine.genetics.SexDetermination;
import clutchwright.engine.pedigree.Descent.Kind;
import clutchwright.engine.pedigree.Parentage.Dam;
import clutchwright.engine.pedigree.Parentage.Sire;
import clutchwright.engine.pedigree.Parentage.SireQuestion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// Gives every animal a node, and tells how its gene copies come to it: at an autosomal locus, or
/// at one of the sex chromosome that both sexes have.
final class Numbering {

    private final KinshipAssumptions assumptions;
    private final Descent.Builder builder;
    private final AnimalNumbers numbers;
    private final List<AnimalId> members;

    /// The same key with other candidates is another question: it cannot have the same answer.
    private final Map<SireQuestion, Integer> sires = new HashMap<>();

    private final List<SireQuestion> open = new ArrayList<>();

    private Numbering(Pedigree pedigree, KinshipAssumptions assumptions) {
        int size = pedigree.members().size();
        this.assumptions = assumptions;
        this.builder = new Descent.Builder(size);
        this.numbers = new AnimalNumbers(size);
        this.members = new ArrayList<>(size);
    }

    static NumberedPedigree autosomal(Pedigree pedigree, KinshipAssumptions assumptions) {
        var numbering = new Numbering(pedigree, assumptions);
        for (var member : pedigree.members()) {
            numbering.add(member.id(), numbering.autosomal(member.parentage()));
        }
        return numbering.done();
    }

    /// Animals of which the sex is neither known nor follows from their young get no node.
    static NumberedPedigree sexChromosome(
            Pedigree pedigree, SexDetermination sexes, KinshipAssumptions assumptions) {
        var numbering = new Numbering(pedigree, assumptions);
        for (var member : pedigree.members()) {
            sexOf(pedigree, member)
                    .ifPresent(
                            sex ->
                                    numbering.add(
                                            member.id(),
                                            numbering.shared(member.parentage(), sex, sexes)));
        }
        return numbering.done();
    }

    private void add(AnimalId animal, int number) {
        numbers.put(animal, number);
        members.add(animal);
    }

    private int autosomal(Parentage parentage) {
        return switch (parentage) {
            case Parentage.Founder() -> builder.add(Kind.TWO_GAMETES, Descent.NONE, Descent.NONE);
            case Parentage.Parthenogenetic(var dam) -> alone(Kind.ONE_MEIOSIS, number(dam));
            case Parentage.Biparental(var dam, var sire) ->
                    builder.add(Kind.TWO_GAMETES, number(dam), number(sire));
        };
    }

    /// The sex with two different chromosomes has the shared one from the parent of the other sex.
    private int shared(Parentage parentage, Sex sex, SexDetermination sexes) {
        boolean single = sex == sexes.heterogametic();
        return switch (parentage) {
            case Parentage.Founder() ->
                    builder.add(
                            single ? Kind.SINGLE_COPY : Kind.TWO_GAMETES,
                            Descent.NONE,
                            Descent.NONE);
            case Parentage.Parthenogenetic(var dam) ->
                    alone(single ? Kind.SINGLE_COPY : Kind.ONE_MEIOSIS, number(dam));
            case Parentage.Biparental(var dam, var sire) ->
                    single
                            ? alone(Kind.SINGLE_COPY, sex == Sex.MALE ? number(dam) : number(sire))
                            : builder.add(Kind.TWO_GAMETES, number(dam), number(sire));
        };
    }

    private int alone(Kind kind, int parent) {
        return builder.add(kind, parent, parent);
    }

    private int number(AnimalId animal) {
        return numbers.theNumber(animal);
    }

    private int number(Dam dam) {
        return switch (dam) {
            case Dam.Known(var animal) -> number(animal);
            case Dam.Unknown() -> Descent.NONE;
        };
    }

    private int number(Sire sire) {
        return switch (sire) {
            case Sire.Known(var animal) -> number(animal);
            case Sire.Unknown() -> Descent.NONE;
            case Sire.InDoubt(var question) -> {
                // Not computeIfAbsent: what is computed adds nodes itself.
                var known = sires.get(question);
                if (known == null) {
                    known = ask(question);
                    sires.put(question, known);
                }
                yield known;
            }
        };
    }

    /// The node of the question's sire: the candidate himself where only one is left.
    private int ask(SireQuestion question) {
        var chances = chances(question);
        var possible =
                chances.keySet().stream()
                        .filter(candidate -> chances.getOrDefault(candidate, 0.0) > 0)
                        .toList();
        if (possible.size() == 1) {
            return number(possible.getFirst());
        }
        open.add(question);
        double sum = chances.values().stream().mapToDouble(Double::doubleValue).sum();
        return builder.addOneOf(
                possible.stream().mapToInt(this::number).toArray(),
                possible.stream()
                        .mapToDouble(candidate -> chances.getOrDefault(candidate, 0.0) / sum)
                        .toArray());
    }

    private Map<AnimalId, Double> chances(SireQuestion question) {
        var given = assumptions.sires().get(question.key());
        if (given == null) {
            var recorded = new java.util.LinkedHashMap<AnimalId, Double>();
            question.candidates()
                    .chances()
                    .forEach((candidate, chance) -> recorded.put(candidate, chance.value()));
            return recorded;
        }
        if (!question.candidates().outcomes().containsAll(given.keySet())) {
            throw new IllegalArgumentException(
                    "candidates of %s are %s, not %s"
                            .formatted(
                                    question.key(),
                                    question.candidates().outcomes(),
                                    given.keySet()));
        }
        return given;
    }

    /// The recorded sex, or the one that having young proves.
    private static Optional<Sex> sexOf(Pedigree pedigree, Member member) {
        return member.sex()
                .or(
                        () ->
                                pedigree.offspringOf(member.id()).stream()
                                        .findFirst()
                                        .map(young -> pedigree.theMember(young).parentage())
                                        .map(
                                                parents ->
                                                        parents.dams().contains(member.id())
                                                                ? Sex.FEMALE
                                                                : Sex.MALE));
    }

    private NumberedPedigree done() {
        var descent = builder.build();
        var nodes = new AnimalNumbers(members.size());
        members.forEach(member -> nodes.put(member, builder.node(numbers.theNumber(member))));
        return new NumberedPedigree(descent, nodes, members, open);
    }
}
