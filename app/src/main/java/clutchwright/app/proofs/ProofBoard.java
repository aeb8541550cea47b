package clutchwright.app.proofs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Figures;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.reasons.Contradiction;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;

/// What is open in the whole collection, worked out beside the pages: they show the last answer
/// at once and the fresh one when it is there.
final class ProofBoard {

    /// Four pages of the list.
    private static final int IN_FULL = 100;

    private static final Duration LONG = Duration.ofMinutes(1);

    private final Holding holding;
    private Optional<Worked> last = Optional.empty();
    private Optional<Fault> fault = Optional.empty();
    private boolean working;

    ProofBoard(Holding holding) {
        this.holding = holding;
    }

    /// @param last what was worked out last; empty until the first is done
    /// @param fresh whether that is of the records as they are now
    record State(Optional<Worked> last, boolean fresh) {}

    /// What follows from the records of one moment.
    ///
    /// @param revision of the store
    /// @param bySpecies by the species' short name
    /// @param doubtful records that cannot all be true, or hardly
    /// @param complete whether the first questions are worked out in full, and not only
    ///     estimated
    record Worked(
            long revision,
            LocalDate today,
            SequencedMap<AnimalId, Animal> animals,
            Map<String, PedigreeInference> bySpecies,
            List<OpenQuestion> questions,
            List<Doubtful> doubtful,
            boolean complete) {

        Worked {
            animals = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(animals));
            bySpecies = Map.copyOf(bySpecies);
            questions = List.copyOf(questions);
            doubtful = List.copyOf(doubtful);
        }

        Worked with(List<OpenQuestion> inFull, List<Doubtful> inDoubt) {
            return new Worked(revision, today, animals, bySpecies, inFull, inDoubt, true);
        }

        Worked withDoubtful(List<Doubtful> inDoubt) {
            return new Worked(revision, today, animals, bySpecies, questions, inDoubt, complete);
        }

        Optional<Animal> find(AnimalId animal) {
            return Optional.ofNullable(animals.get(animal));
        }

        Optional<PedigreeInference> inference(Animal animal) {
            return Optional.ofNullable(bySpecies.get(animal.species()));
        }
    }

    /// @param species its short name
    record Doubtful(String species, Contradiction found) {}

    private record Fault(long revision, RuntimeException cause) {}

    /// What there is; begins to work out what is missing.
    ///
    /// @throws IllegalStateException if that failed for the records as they are now
    synchronized State now() {
        var revision = holding.database().revision();
        fault.filter(failed -> failed.revision() == revision)
                .ifPresent(
                        failed -> {
                            throw new IllegalStateException("open questions", failed.cause());
                        });
        var fresh =
                last.filter(worked -> worked.revision() == revision)
                        .filter(Worked::complete)
                        .filter(worked -> worked.today().equals(holding.today()))
                        .isPresent();
        if (!fresh && !working) {
            working = true;
            Thread.ofVirtual().name("open questions").start(this::work);
        }
        return new State(last, fresh);
    }

    private void work() {
        var revision = holding.database().revision();
        try {
            var questions = questions();
            var estimated = estimated(revision, questions);
            keep(estimated);
            var doubtful = doubtful(questions);
            keep(estimated.withDoubtful(doubtful));
            keep(estimated.with(inFull(estimated.questions(), questions), doubtful));
        } catch (RuntimeException failed) {
            // Whoever asks next is told; here nobody listens.
            synchronized (this) {
                fault = Optional.of(new Fault(revision, failed));
            }
        } finally {
            synchronized (this) {
                working = false;
            }
        }
    }

    private synchronized void keep(Worked worked) {
        last = Optional.of(worked);
    }

    /// By the species' short name, from what follows for the whole collection.
    private Map<String, OpenQuestions> questions() {
        while (!holding.await(LONG)) {
            if (holding.state() == Figures.State.FAILED) {
                throw new IllegalStateException("what animals carry could not be worked out");
            }
        }
        var knowledge = holding.knowledge();
        var animals = holding.database().read(tx -> new Animals(tx).all());
        var all = new LinkedHashMap<String, OpenQuestions>();
        for (var species : Catalogue.shippedSpecies()) {
            knowledge
                    .posteriors(species)
                    .map(Posteriors::inference)
                    .ifPresent(
                            inference ->
                                    all.put(
                                            species,
                                            new OpenQuestions(
                                                    inference, animals, holding.today())));
        }
        return all;
    }

    private Worked estimated(long revision, Map<String, OpenQuestions> questions) {
        var animals = new LinkedHashMap<AnimalId, Animal>();
        holding.database()
                .read(tx -> new Animals(tx).all())
                .forEach(animal -> animals.put(animal.id(), animal));
        var bySpecies = new LinkedHashMap<String, PedigreeInference>();
        questions.forEach((species, some) -> bySpecies.put(species, some.inference()));
        // What was in doubt before stays on show until it is looked at again.
        var before = doubtfulBefore();
        var all =
                questions.values().stream()
                        .flatMap(some -> some.estimated().stream())
                        .sorted(OpenQuestion.MOST_TO_SETTLE)
                        .toList();
        return new Worked(revision, holding.today(), animals, bySpecies, all, before, false);
    }

    private synchronized List<Doubtful> doubtfulBefore() {
        return last.map(Worked::doubtful).orElse(List.of());
    }

    private static List<Doubtful> doubtful(Map<String, OpenQuestions> questions) {
        var all = new ArrayList<Doubtful>();
        questions.forEach(
                (species, some) ->
                        Contradictions.of(some.inference(), ErrorRates.STANDARD)
                                .forEach(found -> all.add(new Doubtful(species, found))));
        return all;
    }

    /// Those that are looked at first are worked out in full: the two of a pair together.
    private static List<OpenQuestion> inFull(
            List<OpenQuestion> estimated, Map<String, OpenQuestions> questions) {
        var all = new ArrayList<>(estimated);
        for (var i = 0; i < Math.min(IN_FULL, all.size()); i++) {
            var question = all.get(i);
            var some = questions.get(question.animal().species());
            if (some != null) {
                all.set(i, some.inFull(question));
            }
        }
        all.sort(OpenQuestion.MOST_TO_SETTLE);
        return all;
    }
}
