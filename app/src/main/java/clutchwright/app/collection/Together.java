package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.AnimalWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Status;
import clutchwright.records.checks.Questions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/// Changes several animals in one change of the journal.
record Together(Holding holding, Listing listing) {

    Reply change(Form form) {
        var ids = ids(form);
        var status = status(form);
        var place = PlaceNames.read(form, "setRoom", "setRack", "setTub");
        var faulty = form;
        if (ids.isEmpty()) {
            faulty = faulty.withFault("animal", "Tick the animals that are to change.");
        }
        faulty = place.faults(faulty);
        if (status.isEmpty() && place.isBlank()) {
            faulty = faulty.withFault("setStatus", "Choose a status or write a place.");
        }
        if (faulty.isFaulty()) {
            return Reply.faulty(listing.view(Form.ofAddress(here(form)), faulty));
        }
        var written =
                Written.to(
                        holding,
                        what(ids.size(), status, place),
                        tx -> {
                            var animals = new Animals(tx);
                            UnaryOperator<Particulars> placing = place.placing(tx);
                            var changed = 0;
                            for (var animal : animals.find(ids)) {
                                var after = placing.apply(with(animal, status));
                                if (!after.equals(animal.particulars())
                                        && animals.update(
                                                        animal.with(after), Questions.ALL_THE_SAME)
                                                .saved()
                                                .isPresent()) {
                                    changed++;
                                }
                            }
                            return changed;
                        });
        return written.going(
                here(form),
                written.result() == 1
                        ? "1 animal changed."
                        : "%d animals changed.".formatted(written.result()));
    }

    /// The list in which the animals were ticked.
    private static String here(Form form) {
        var here = form.text("here");
        return here.startsWith("/collection?") ? here : "/collection";
    }

    private static Particulars with(Animal animal, Optional<Status> status) {
        return status.map(animal.particulars()::withStatus).orElse(animal.particulars());
    }

    private static List<AnimalId> ids(Form form) {
        return form.texts("animal").stream()
                .filter(text -> text.matches("[0-9]{1,18}"))
                .map(Long::valueOf)
                .map(AnimalId::new)
                .toList();
    }

    private static Optional<Status> status(Form form) {
        return Arrays.stream(Status.values())
                .filter(status -> status.name().equals(form.text("setStatus")))
                .findFirst();
    }

    private static String what(int animals, Optional<Status> status, PlaceNames place) {
        var to = new ArrayList<String>();
        status.map(AnimalWords::status).ifPresent(to::add);
        if (!place.isBlank()) {
            to.add(place.toString());
        }
        return "Changed %d animals together: %s".formatted(animals, String.join(", ", to));
    }
}
