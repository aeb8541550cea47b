package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Choice;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Query;
import clutchwright.records.animals.Query.SexWanted;
import clutchwright.records.animals.Status;
import clutchwright.records.store.Transaction;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/// Animals that a field for a dam or a sire offers while one types.
final class AnimalOptions {

    private static final int MOST = 60;
    private static final Set<Status> AT_HAND =
            EnumSet.of(
                    Status.KEPT, Status.HOLD_BACK, Status.FOR_SALE, Status.LOANED, Status.UNKNOWN);

    private AnimalOptions() {}

    static List<Animal> find(Transaction tx, String text, Sex sex) {
        return new Animals(tx)
                .find(
                        Query.everything()
                                .withText(text)
                                .withSex(sex == Sex.FEMALE ? SexWanted.FEMALE : SexWanted.MALE)
                                .withStatuses(AT_HAND)
                                .page(0, MOST))
                .animals();
    }

    /// The tag, and what helps to tell the animal from the others.
    static List<Choice> choices(Holding holding, List<Animal> animals) {
        return animals.stream()
                .map(
                        animal ->
                                new Choice(
                                        animal.tag().value(),
                                        (animal.name().isEmpty() ? "" : animal.name() + " · ")
                                                + holding.line(animal.id()).inWords()))
                .toList();
    }
}
