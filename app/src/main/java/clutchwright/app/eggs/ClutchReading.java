package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.loggers.FeltSoFar;
import clutchwright.app.loggers.Pipping;
import clutchwright.app.web.Form;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Boxes;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.ClutchId;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Egg;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/// A clutch and the boxes, read at one moment.
record ClutchReading(Clutch clutch, List<Box> boxes) {

    ClutchReading {
        boxes = List.copyOf(boxes);
    }

    static final String NONE = "There is no such clutch. Eggs lists those that are on record.";

    static Optional<ClutchReading> find(Holding holding, long id) {
        return holding.database()
                .read(
                        tx ->
                                new Clutches(tx)
                                        .find(new ClutchId(id))
                                        .map(clutch -> new ClutchReading(clutch, boxes(tx))));
    }

    ClutchView view(Holding holding, Form form) {
        return new ClutchView(
                clutch,
                Couple.of(holding, clutch.parentage()),
                lines(holding),
                boxes,
                incubation(holding),
                Expected.of(holding, clutch).map(Expected::cautions).orElse(List.of()),
                HoldBack.of(holding.knowledge(), clutch),
                Pipping.of(clutch, felt(holding)),
                holding.database().read(BoxSplits.Usual::read),
                KeptSperm.of(holding, clutch),
                form);
    }

    private Optional<FeltSoFar> felt(Holding holding) {
        var zone = holding.database().clock().getZone();
        return holding.database().read(tx -> FeltSoFar.of(tx, clutch, boxes, zone));
    }

    Incubation incubation(Holding holding) {
        return new Incubation(clutch.laid(), holding.today());
    }

    List<EggLine> lines(Holding holding) {
        var byId = boxes.stream().collect(Collectors.toMap(Box::id, Function.identity()));
        return clutch.eggs().stream()
                .map(
                        egg ->
                                new EggLine(
                                        egg,
                                        egg.box().flatMap(id -> Optional.ofNullable(byId.get(id))),
                                        hatchlings(holding, egg)))
                .toList();
    }

    private static List<EggLine.Hatchling> hatchlings(Holding holding, Egg egg) {
        return egg.hatchlings().stream()
                .flatMap(id -> holding.knowledge().find(id).stream())
                .map(
                        animal ->
                                new EggLine.Hatchling(
                                        animal.id().value(),
                                        animal.tag().value(),
                                        holding.line(animal.id())))
                .toList();
    }

    private static List<Box> boxes(clutchwright.records.store.Transaction tx) {
        return new Boxes(tx).all();
    }
}
