package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.wording.Formats;
import clutchwright.engine.notation.GeneLine;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.Knowledge;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.store.Transaction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// Puts the page of one animal together.
record AnimalSheet(Holding holding, Preferring preferring) {

    /// @param typed what a short form held when it was refused; [Form#EMPTY] for a fresh page
    /// @param ink the gene to ink the pedigree by; blank for none
    Optional<AnimalView> view(AnimalId id, Form typed, String ink) {
        // What follows from the records first: it reads the store for itself, and a read within a
        // read takes a second connection.
        var knowledge = holding.knowledge();
        return knowledge
                .find(id)
                .map(Animal::species)
                .map(holding::lines)
                .flatMap(
                        lines ->
                                holding.database()
                                        .read(tx -> view(tx, knowledge, lines, id, typed, ink)));
    }

    private Optional<AnimalView> view(
            Transaction tx,
            Knowledge knowledge,
            GeneLine lines,
            AnimalId id,
            Form typed,
            String ink) {
        return new Animals(tx)
                .find(id)
                .map(
                        animal ->
                                new AnimalPieces(
                                        tx,
                                        knowledge,
                                        lines,
                                        animal,
                                        new Formats(preferring.preferences()),
                                        holding.today(),
                                        holding.database().clock().getZone()))
                .map(pieces -> view(pieces, typed, ink));
    }

    private AnimalView view(AnimalPieces pieces, Form typed, String ink) {
        var keeping = pieces.keeping();
        var said = pieces.statements(true);
        var seen = pieces.statements(false);
        return new AnimalView(
                pieces.head(),
                pieces.animal().species(),
                pieces.genes(!(said.isEmpty() && seen.isEmpty())),
                pieces.cautions(),
                pieces.pedigree(ink),
                said,
                seen,
                pieces.young(),
                keeping,
                pieces.photos(),
                pieces.history(),
                shortForms(typed, keeping));
    }

    /// The short forms begin with today and the last prey; what was typed stands over that.
    private Form shortForms(Form typed, KeepingPart keeping) {
        var today = holding.today().toString();
        var values = new LinkedHashMap<String, List<String>>();
        for (var day : List.of("weighedOn", "fedOn", "shedOn", "notedOn", "saidOn")) {
            values.put(day, List.of(today));
        }
        values.put("prey", List.of(keeping.prey()));
        values.put("kind", List.of("seen"));
        values.putAll(typed.values());
        return new Form(values, typed.faults());
    }
}
