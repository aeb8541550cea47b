package clutchwright.app.labels;

import clutchwright.app.holding.Holding;
import clutchwright.app.labels.ScannedView.Line;
import clutchwright.app.web.Reply;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.places.Places;
import clutchwright.records.places.Tub;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Work;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// The short addresses in the codes: each opens where one writes down what one does.
///
/// They are printed and glued on: their form and their numbers never change.
@Controller
public class ScanPage {

    private static final String ID = "/{id:[0-9]{1,18}}";

    private final Holding holding;

    ScanPage(Holding holding) {
        this.holding = holding;
    }

    @GetMapping("/a" + ID)
    public Reply animal(@PathVariable long id) {
        return read(
                tx ->
                        new Animals(tx)
                                .find(new AnimalId(id))
                                .<Reply>map(animal -> Reply.go(quick(animal)))
                                .orElseGet(
                                        () ->
                                                Reply.missing(
                                                        "The animal of this label is not on record any more.")));
    }

    @GetMapping("/t" + ID)
    public Reply tub(@PathVariable long id) {
        return read(
                tx ->
                        new Places(tx)
                                .findTub(new TubId(id))
                                .map(tub -> tub(tx, tub))
                                .orElseGet(
                                        () ->
                                                Reply.missing(
                                                        "The tub of this label is not on record any more.")));
    }

    private static Reply tub(Transaction tx, Tub tub) {
        var animals = new Animals(tx);
        var living =
                animals.find(animals.livingIn(tub.rack())).stream()
                        .filter(animal -> animal.place().filter(tub.id()::equals).isPresent())
                        .toList();
        if (living.size() == 1) {
            return Reply.go(quick(living.getFirst()));
        }
        var at = new Places(tx).address(tub.id()).orElseThrow();
        return Reply.show(
                new ScannedView(
                        "Tub " + at.name(),
                        at.room() + " / " + at.rack(),
                        "Nobody lives in this tub. An animal's page says where it lives.",
                        living.stream()
                                .map(
                                        animal ->
                                                new Line(
                                                        quick(animal),
                                                        animal.tag().value(),
                                                        animal.name()))
                                .toList(),
                        "/collection/places"));
    }

    @GetMapping("/b" + ID)
    public Reply box(@PathVariable long id) {
        return read(
                tx ->
                        new Boxes(tx)
                                .find(new BoxId(id))
                                .map(box -> box(tx, box))
                                .orElseGet(
                                        () ->
                                                Reply.missing(
                                                        "The box of this label is not on record any more.")));
    }

    private Reply box(Transaction tx, Box box) {
        var clutches = Stock.clutchesIn(box.id(), new Clutches(tx).incubating());
        if (clutches.size() == 1) {
            return Reply.go(bench(clutches.getFirst()));
        }
        return Reply.show(
                new ScannedView(
                        "Box " + box.label(),
                        box.incubator(),
                        "No egg in this box is waited for. A clutch's page puts eggs into a box.",
                        clutches.stream().map(clutch -> line(tx, clutch)).toList(),
                        "/eggs"));
    }

    private Line line(Transaction tx, Clutch clutch) {
        return new Line(
                bench(clutch),
                "Clutch " + clutch.number(),
                new Animals(tx)
                        .find(clutch.dam())
                        .map(dam -> "of " + dam.tag().value())
                        .orElse(""));
    }

    /// Where eggs are candled, or their young are named once the first may pip.
    private String bench(Clutch clutch) {
        return "/eggs/"
                + clutch.id().value()
                + (new PipDay(clutch.laid()).isNear(holding.today()) ? "/hatch" : "/candle");
    }

    private static String quick(Animal animal) {
        return "/collection/" + animal.id().value() + "#now";
    }

    private Reply read(Work<Reply> reading) {
        return holding.database().read(reading);
    }
}
