package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.parts.Markup;
import clutchwright.engine.pedigree.AnimalId;

/// One of a pair, as a list shows it.
public record Mate(AnimalId id, String tag, String name, String path, Markup line) {

    static Mate of(Holding holding, AnimalId id) {
        var animal = holding.knowledge().find(id);
        return new Mate(
                id,
                animal.map(found -> found.tag().value()).orElse("?"),
                animal.map(found -> found.name()).orElse(""),
                "/collection/" + id,
                holding.line(id).line());
    }
}
