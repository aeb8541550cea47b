package clutchwright.app.proofs;

import clutchwright.engine.genetics.Allele;
import clutchwright.engine.inference.LocusAnswer;
import clutchwright.engine.inference.LocusChances;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.proof.CarrierTest;
import clutchwright.engine.proof.TestMating;
import clutchwright.records.animals.Animal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/// Finds the open questions of one species, with the best mating of this season for each.
final class OpenQuestions {

    /// Between these a question is open.
    private static final double LEAST = 0.01;

    private static final double MOST = 0.99;

    /// More mates than that are taken by what they may carry, a few of each kind.
    private static final int MOST_MATES = 60;

    private static final int OF_EACH_KIND = 2;

    private static final int MATES_IN_FULL = 6;

    private final PedigreeInference inference;
    private final List<Animal> kept;
    private final List<Animal> ready;
    private final LocalDate today;

    OpenQuestions(PedigreeInference inference, Collection<Animal> animals, LocalDate today) {
        this.inference = inference;
        this.today = today;
        var pedigree = inference.records().pedigree();
        this.kept =
                animals.stream()
                        .filter(animal -> pedigree.contains(animal.id()))
                        .filter(animal -> Mates.AT_HAND.contains(animal.status()))
                        .toList();
        this.ready = kept.stream().filter(animal -> Mates.isReady(animal, today)).toList();
    }

    PedigreeInference inference() {
        return inference;
    }

    /// Those that this season can settle most of first; of each pair the two are taken to be
    /// independent of each other.
    List<OpenQuestion> estimated() {
        var questions = new ArrayList<OpenQuestion>();
        for (var answer : inference.answers()) {
            if (answer instanceof LocusAnswer.Settled(var chances)) {
                var locus = inference.records().model().theLocus(chances.locus()).locus();
                locus.alleles().stream()
                        .filter(allele -> !allele.isWild())
                        .forEach(allele -> questions.addAll(at(chances, allele)));
            }
        }
        questions.sort(OpenQuestion.MOST_TO_SETTLE);
        return List.copyOf(questions);
    }

    /// With the two of each pair judged together.
    OpenQuestion inFull(OpenQuestion question) {
        if (question.best().isEmpty()) {
            return question;
        }
        var test =
                CarrierTest.of(inference, question.animal().id(), question.allele()).orElseThrow();
        var chances = inference.chancesAt(question.allele().locus()).orElseThrow();
        var likely =
                test.withEachApart(mates(chances, question.allele(), question.animal())).stream()
                        .limit(MATES_IN_FULL)
                        .map(TestMating::mate)
                        .toList();
        return question.settledBy(best(test.withEach(likely)));
    }

    private static Optional<TestMating> best(List<TestMating> matings) {
        return matings.stream().findFirst().filter(mating -> !mating.telling().isEmpty());
    }

    private List<OpenQuestion> at(LocusChances chances, Allele allele) {
        var questions = new ArrayList<OpenQuestion>();
        for (var animal : kept) {
            var chance = chances.chanceOfCarrying(animal.id(), allele);
            if (chance > LEAST && chance < MOST) {
                var test = CarrierTest.of(inference, animal.id(), allele).orElseThrow();
                if (test.showsAtSight()) {
                    return List.of();
                }
                questions.add(question(chances, test, animal));
            }
        }
        return questions;
    }

    private OpenQuestion question(LocusChances chances, CarrierTest test, Animal animal) {
        var tooYoung = Mates.isTooYoung(animal, today);
        var matings =
                tooYoung
                        ? List.<TestMating>of()
                        : test.withEachApart(mates(chances, test.allele(), animal));
        var records = inference.records();
        var parentage = records.pedigree().theMember(animal.id()).parentage();
        return new OpenQuestion(
                animal,
                test.allele(),
                test.chance(),
                records.of(animal.id()).claims().containsKey(chances.locus()),
                parentage.dams().size() + Math.min(1, parentage.sires().size()),
                (int)
                        records.pedigree().offspringOf(animal.id()).stream()
                                .filter(young -> chances.lookAt(young).isPresent())
                                .count(),
                tooYoung,
                best(matings),
                true);
    }

    private List<AnimalId> mates(LocusChances chances, Allele allele, Animal animal) {
        var others =
                ready.stream()
                        .filter(mate -> !mate.id().equals(animal.id()))
                        .filter(mate -> !mate.sex().equals(animal.sex()))
                        .map(Animal::id)
                        .toList();
        return others.size() <= MOST_MATES ? others : fewOfEachKind(chances, allele, others);
    }

    /// Mates of equal chances at the locus differ only by their own ties to the animal.
    private static List<AnimalId> fewOfEachKind(
            LocusChances chances, Allele allele, List<AnimalId> others) {
        record Kind(long carries, String likeliest) {}
        var counts = new HashMap<Kind, Integer>();
        return others.stream()
                .filter(
                        mate -> {
                            var kind =
                                    new Kind(
                                            Math.round(
                                                    100 * chances.chanceOfCarrying(mate, allele)),
                                            likeliest(chances, mate));
                            return counts.merge(kind, 1, Integer::sum) <= OF_EACH_KIND;
                        })
                .toList();
    }

    private static String likeliest(LocusChances chances, AnimalId mate) {
        return chances.of(mate).entrySet().stream()
                .max((a, b) -> Double.compare(a.getValue(), b.getValue()))
                .map(found -> found.getKey().toString())
                .orElse("");
    }

    /// Every ready mate of an animal, whatever it carries.
    static List<AnimalId> allMates(Collection<Animal> animals, Animal animal, LocalDate today) {
        return animals.stream()
                .filter(mate -> mate.species().equals(animal.species()))
                .filter(mate -> !mate.id().equals(animal.id()))
                .filter(mate -> Mates.isReady(mate, today))
                .map(Animal::id)
                .toList();
    }

    /// The allele that an address names.
    static Optional<Allele> find(PedigreeInference inference, String gene) {
        return inference.records().model().loci().values().stream()
                .flatMap(map -> map.locus().alleles().stream())
                .filter(allele -> !allele.isWild())
                .filter(allele -> OpenQuestion.geneOf(allele).equals(gene))
                .findFirst();
    }
}
