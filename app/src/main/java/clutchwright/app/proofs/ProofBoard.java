package clutchwright.app.proofs;

import clutchwright.app.holding.Holding;
import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.reasons.Contradiction;
import clutchwright.engine.reasons.Contradictions;
import clutchwright.engine.reasons.ErrorRates;
import clutchwright.records.Snapshot;
import clutchwright.records.SpeciesRecords;
import clutchwright.records.animals.Animal;
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
    record Worked(
            long revision,
            LocalDate today,
            SequencedMap<AnimalId, Animal> animals,
            Map<String, PedigreeInference> bySpecies,
            List<OpenQuestion> questions,
            List<Doubtful> doubtful) {

        Worked {
            animals = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(animals));
            bySpecies = Map.copyOf(bySpecies);
            questions = List.copyOf(questions);
            doubtful = List.copyOf(doubtful);
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
            var worked = worked();
            synchronized (this) {
                last = Optional.of(worked);
            }
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

    private Worked worked() {
        // Before the store is read: a read within a read takes a second connection.
        Catalogue.shippedSpecies().forEach(holding::catalogue);
        var revision = holding.database().revision();
        var today = holding.today();
        var snapshot = holding.database().read(Snapshot::of);
        var bySpecies = new LinkedHashMap<String, PedigreeInference>();
        var questions = new ArrayList<OpenQuestion>();
        var doubtful = new ArrayList<Doubtful>();
        SpeciesRecords.of(snapshot.animals().values(), snapshot.statements(), holding::lines)
                .forEach(
                        (species, records) -> {
                            var inference = PedigreeInference.of(records.records(), assumptions());
                            bySpecies.put(species, inference);
                            questions.addAll(
                                    new OpenQuestions(inference, snapshot.animals().values(), today)
                                            .all());
                            Contradictions.of(inference, ErrorRates.STANDARD)
                                    .forEach(found -> doubtful.add(new Doubtful(species, found)));
                        });
        questions.sort(OpenQuestion.MOST_TO_SETTLE);
        return new Worked(revision, today, snapshot.animals(), bySpecies, questions, doubtful);
    }

    /// A bought-in animal that shows a gene is as likely as not here because of it.
    private static Assumptions assumptions() {
        return Assumptions.STANDARD.withAcquiredForLook(0.5);
    }
}
