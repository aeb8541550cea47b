package clutchwright.records.clutches;

import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.ParentageRows;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/// Clutches and eggs as rows, and back.
final class ClutchRows {

    private final Transaction tx;
    private final ParentageRows parents;

    ClutchRows(Transaction tx) {
        this.tx = tx;
        this.parents = new ParentageRows(tx, "clutch");
    }

    /// The clutches that meet a condition on `clutch`, in the order of their numbers.
    List<Clutch> read(String condition, Object... parameters) {
        record Half(ParentageRows.Written parents, Bare bare) {}
        var halves =
                tx.list(
                        row -> new Half(parents.read(row), Bare.read(row)),
                        "select * from clutch where " + condition + " order by season, running",
                        parameters);
        if (halves.isEmpty()) {
            return List.of();
        }
        var candidates =
                parents.candidatesOf(
                        halves.stream()
                                .map(Half::parents)
                                .filter(written -> written.question().isPresent())
                                .map(ParentageRows.Written::owner)
                                .toList());
        var eggs =
                eggs("clutch in (select id from clutch where " + condition + ")", parameters)
                        .stream()
                        .collect(Collectors.groupingBy(Egg::clutch));
        return halves.stream()
                .map(
                        half -> {
                            var bare = half.bare();
                            return new Clutch(
                                    bare.id(),
                                    bare.version(),
                                    bare.number(),
                                    half.parents().parentage(candidates),
                                    bare.pairing(),
                                    bare.laid(),
                                    bare.species(),
                                    bare.notes(),
                                    eggs.getOrDefault(bare.id(), List.of()));
                        })
                .toList();
    }

    /// The eggs that meet a condition on `egg`, in the order of clutch and count.
    List<Egg> eggs(String condition, Object... parameters) {
        var hatchlings = hatchlings(condition, parameters);
        var candlings = candlings(condition, parameters);
        var weights = weights(condition, parameters);
        return tx.list(
                row -> {
                    var id = new EggId(row.number("id"));
                    return new Egg(
                            id,
                            row.number("version"),
                            new ClutchId(row.number("clutch")),
                            Math.toIntExact(row.number("running")),
                            row.findNumber("box").map(BoxId::new),
                            fate(row, hatchlings.getOrDefault(id, List.of())),
                            row.text("lies"),
                            candlings.getOrDefault(id, List.of()),
                            weights.getOrDefault(id, List.of()));
                },
                "select * from egg where " + condition + " order by clutch, running",
                parameters);
    }

    private Map<EggId, List<AnimalId>> hatchlings(String condition, Object... parameters) {
        record Out(EggId egg, AnimalId animal) {}
        return tx
                .list(
                        row ->
                                new Out(
                                        new EggId(row.number("egg")),
                                        new AnimalId(row.number("animal"))),
                        "select egg, animal from hatchling where egg in (select id from egg where "
                                + condition
                                + ") order by id",
                        parameters)
                .stream()
                .collect(
                        Collectors.groupingBy(
                                Out::egg, Collectors.mapping(Out::animal, Collectors.toList())));
    }

    private Map<EggId, List<Candling>> candlings(String condition, Object... parameters) {
        return tx
                .list(
                        row ->
                                new Candling(
                                        row.number("id"),
                                        new EggId(row.number("egg")),
                                        row.day("seen_on"),
                                        Candling.Finding.valueOf(row.text("finding")),
                                        row.text("notes")),
                        "select * from candling where egg in (select id from egg where "
                                + condition
                                + ") order by seen_on, id",
                        parameters)
                .stream()
                .collect(Collectors.groupingBy(Candling::egg));
    }

    private Map<EggId, List<EggWeighing>> weights(String condition, Object... parameters) {
        return tx
                .list(
                        row ->
                                new EggWeighing(
                                        row.number("id"),
                                        new EggId(row.number("egg")),
                                        row.day("made_on"),
                                        row.real("grams")),
                        "select * from egg_weighing where egg in (select id from egg where "
                                + condition
                                + ") order by made_on, id",
                        parameters)
                .stream()
                .collect(Collectors.groupingBy(EggWeighing::egg));
    }

    private static Fate fate(Row row, List<AnimalId> hatchlings) {
        return switch (row.text("fate")) {
            case "INCUBATING" -> new Fate.Incubating();
            case "SLUG" -> new Fate.Slug();
            case "LOST" -> new Fate.Lost(row.day("fated_on"), row.text("finding"));
            case "HATCHED" -> new Fate.Hatched(row.day("fated_on"), hatchlings);
            case String other -> throw new IllegalStateException("an egg's fate is " + other);
        };
    }

    private record Bare(
            ClutchId id,
            long version,
            ClutchNumber number,
            Optional<PairingId> pairing,
            java.time.LocalDate laid,
            String species,
            String notes) {

        static Bare read(Row row) {
            return new Bare(
                    new ClutchId(row.number("id")),
                    row.number("version"),
                    new ClutchNumber(
                            Math.toIntExact(row.number("season")),
                            Math.toIntExact(row.number("running"))),
                    row.findNumber("pairing").map(PairingId::new),
                    row.day("laid_on"),
                    row.text("species"),
                    row.text("notes"));
        }
    }
}
