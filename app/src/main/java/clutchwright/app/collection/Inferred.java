package clutchwright.app.collection;

import clutchwright.app.wording.ContradictionWords;
import clutchwright.engine.genetics.Allele;
import clutchwright.engine.genetics.Genotype;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.Method;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// What every animal carries, as other programs read it: the document that `infer --json`
/// prints.
///
/// Fields may be added; none is renamed or removed.
///
/// @param animals in the order of the file
/// @param method `exact`, `bounded`, `estimated` or `sampled`: the weakest of all loci
/// @param error how far a chance may be off, absolute; 0 where all are exact
/// @param sires chances of the candidates for each sire in doubt
/// @param logLikelihood of what was seen, natural; loci whose records contradict each other
///     have none
record Inferred(
        List<OfAnimal> animals,
        String method,
        double error,
        List<AtLocus> logLikelihood,
        List<Contradiction> contradictions,
        List<SireInDoubt> sires) {

    Inferred {
        sires = List.copyOf(sires);
        animals = List.copyOf(animals);
        logLikelihood = List.copyOf(logLikelihood);
        contradictions = List.copyOf(contradictions);
    }

    /// @param loci of which anything is said or seen, and whose records can be true together
    record OfAnimal(String tag, List<Chances> loci) {

        OfAnimal {
            loci = List.copyOf(loci);
        }
    }

    /// @param error how far they may be off, absolute; 0 where they are exact
    /// @param why what speaks for and against each gene, where it was asked
    record Chances(String locus, List<Pair> genotypes, double error, List<Why> why) {

        Chances {
            why = List.copyOf(why);
            genotypes = List.copyOf(genotypes);
        }
    }

    /// @param alleles two, in the order of the locus, the wild type first
    /// @param phases where it matters which sex chromosome carries which: both ways that have a
    ///     chance; else empty
    record Pair(List<String> alleles, double chance, List<Phase> phases) {

        Pair {
            alleles = List.copyOf(alleles);
            phases = List.copyOf(phases);
        }
    }

    /// @param shared on the chromosome that both sexes have, X or Z
    /// @param limited on the one that only one sex has, Y or W
    record Phase(String shared, String limited, double chance) {}

    record AtLocus(String locus, double value, String species, String method, double error) {}

    /// @param animal whose record shows it
    /// @param impossible whether it cannot be, and not only hardly
    record Contradiction(String animal, String locus, String text, boolean impossible) {}

    /// @param young who share the question
    record SireInDoubt(List<String> young, List<Candidate> candidates) {

        SireInDoubt {
            young = List.copyOf(young);
            candidates = List.copyOf(candidates);
        }

        record Candidate(String tag, double chance) {}
    }

    static Inferred of(Inferring.Done done) {
        Method method = new Method.Exact();
        var likelihoods = new ArrayList<AtLocus>();
        for (var entry : done.species().entrySet()) {
            for (var answer : entry.getValue().answers()) {
                if (answer instanceof LocusAnswer.Settled(var chances)) {
                    if (chances.method().allowance() > method.allowance()) {
                        method = chances.method();
                    }
                    likelihoods.add(
                            new AtLocus(
                                    chances.locus().value(),
                                    chances.logLikelihood(),
                                    entry.getKey(),
                                    word(chances.method()),
                                    chances.method().allowance()));
                }
            }
        }
        return new Inferred(
                animals(done),
                word(method),
                method.allowance(),
                likelihoods,
                contradictions(done),
                sires(done));
    }

    private static List<Contradiction> contradictions(Inferring.Done done) {
        var words = new ContradictionWords(done.read()::tag);
        var all = new ArrayList<Contradiction>();
        for (var inference : done.species().values()) {
            Contradictions.of(
                            inference.records(),
                            inference.assumptions(),
                            ErrorRates.STANDARD,
                            inference.loci())
                    .forEach(
                            found ->
                                    all.add(
                                            new Contradiction(
                                                    done.read().tag(found.animal()),
                                                    found.locus().value(),
                                                    words.text(found),
                                                    found.impossible())));
        }
        return all;
    }

    private static List<SireInDoubt> sires(Inferring.Done done) {
        var all = new ArrayList<SireInDoubt>();
        for (var inference : done.species().values()) {
            var young = new LinkedHashMap<String, List<String>>();
            for (var member : inference.records().pedigree().members()) {
                if (member.parentage()
                        instanceof Parentage.Biparental(_, Parentage.Sire.InDoubt(var question))) {
                    young.computeIfAbsent(question.key(), _ -> new ArrayList<>())
                            .add(done.read().tag(member.id()));
                }
            }
            inference
                    .sireChances()
                    .forEach(
                            (key, chances) ->
                                    all.add(
                                            new SireInDoubt(
                                                    young.getOrDefault(key, List.of()),
                                                    chances.entrySet().stream()
                                                            .map(
                                                                    one ->
                                                                            new SireInDoubt
                                                                                    .Candidate(
                                                                                    done.read()
                                                                                            .tag(
                                                                                                    one
                                                                                                            .getKey()),
                                                                                    one.getValue()))
                                                            .toList())));
        }
        return all;
    }

    private static List<OfAnimal> animals(Inferring.Done done) {
        var all = new ArrayList<OfAnimal>();
        for (var animal : done.read().collection().animals().values()) {
            var inference = done.species().get(animal.species());
            all.add(
                    new OfAnimal(
                            animal.tag().value(),
                            inference == null ? List.of() : loci(done, inference, animal.id())));
        }
        return all;
    }

    private static List<Chances> loci(
            Inferring.Done done, PedigreeInference inference, AnimalId animal) {
        var loci = new ArrayList<Chances>();
        for (var answer : inference.answers()) {
            if (answer instanceof LocusAnswer.Settled(var chances)) {
                var order = inference.records().model().theLocus(answer.locus()).locus().alleles();
                loci.add(
                        new Chances(
                                answer.locus().value(),
                                pairs(chances, animal, order),
                                chances.errorOf(animal),
                                Why.all(done, inference, chances, animal)));
            }
        }
        return loci;
    }

    private static List<Pair> pairs(LocusChances chances, AnimalId animal, List<Allele> order) {
        var sums = new LinkedHashMap<List<String>, Double>();
        var phases = new LinkedHashMap<List<String>, List<Phase>>();
        for (var entry : chances.of(animal).entrySet()) {
            var alleles = inOrder(entry, order);
            sums.merge(alleles, entry.getValue(), Double::sum);
            var either = phases.computeIfAbsent(alleles, _ -> new ArrayList<>());
            if (entry.getKey() instanceof Genotype.Phased(var shared, var limited)
                    && !shared.equals(limited)) {
                either.add(new Phase(shared.name(), limited.name(), entry.getValue()));
            }
        }
        var pairs = new ArrayList<Pair>();
        sums.forEach(
                (alleles, chance) ->
                        pairs.add(
                                new Pair(
                                        alleles, chance, phases.getOrDefault(alleles, List.of()))));
        return pairs;
    }

    private static List<String> inOrder(Map.Entry<Genotype, Double> entry, List<Allele> order) {
        var both = entry.getKey().alleles();
        return order.stream()
                .flatMap(allele -> both.stream().filter(allele::equals))
                .map(Allele::name)
                .toList();
    }

    private static String word(Method method) {
        return switch (method) {
            case Method.Exact() -> "exact";
            case Method.Bounded _ -> "bounded";
            case Method.Estimated _ -> "estimated";
            case Method.Sampled _ -> "sampled";
        };
    }
}
