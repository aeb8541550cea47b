package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// Animals as links to their pages.
record AnimalLinks(Holding holding) {

    List<Link> of(List<AnimalId> animals) {
        var knowledge = holding.knowledge();
        return animals.stream()
                .map(
                        id ->
                                new Link(
                                        knowledge
                                                .find(id)
                                                .map(animal -> animal.tag().value())
                                                .orElse("An animal"),
                                        "/collection/" + id.value()))
                .toList();
    }
}
