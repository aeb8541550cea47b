package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.LayOutlook;
import clutchwright.records.animals.Animal;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.store.Transaction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/// Reads the pairings of a season for its page.
record SeasonList(Holding holding, Formats formats) {

    /// @param plan the form that plans a pairing, as typed
    /// @param asks a question that it raised
    SeasonView view(int season, Form plan, String asks, PairingCard.Slip slip) {
        var found = holding.database().read(tx -> find(tx, season));
        var signs = found.signs().stream().collect(Collectors.groupingBy(SignSeen::pairing));
        var parts = new EnumMap<Stage.Part, List<PairingCard>>(Stage.Part.class);
        for (var pairing : found.pairings()) {
            var seen = signs.getOrDefault(pairing.id(), List.of());
            var clutches =
                    found.clutches().stream()
                            .filter(
                                    clutch ->
                                            clutch.pairing()
                                                    .filter(pairing.id()::equals)
                                                    .isPresent())
                            .toList();
            var stage = Stage.of(pairing, seen, !clutches.isEmpty());
            parts.computeIfAbsent(stage.part(), part -> new ArrayList<>())
                    .add(
                            PairingCard.of(
                                    holding,
                                    pairing,
                                    seen,
                                    clutches,
                                    Optional.ofNullable(found.expected().get(pairing.dam())),
                                    found.ready().getOrDefault(pairing.id(), List.of()),
                                    slip,
                                    formats));
        }
        return new SeasonView(
                season,
                found.seasons(),
                parts.entrySet().stream()
                        .map(
                                part ->
                                        new SeasonView.Part(
                                                part.getKey().name().toLowerCase(Locale.ROOT),
                                                part.getKey().title(),
                                                part.getValue()))
                        .toList(),
                plan.values().containsKey("season")
                        ? plan
                        : plan.with("season", Integer.toString(season)),
                asks,
                AnimalOptions.choices(holding, found.dams()),
                AnimalOptions.choices(holding, found.sires()));
    }

    /// The season of today; while nothing is planned for it, the last one that is still under way.
    int current() {
        return holding.database().read(SeasonList::current);
    }

    private static int current(Transaction tx) {
        var pairings = new Pairings(tx);
        var now = Seasons.of(tx.today());
        if (!pairings.ofSeason(now).isEmpty()) {
            return now;
        }
        var last = pairings.seasons().stream().filter(season -> season < now).findFirst();
        return last.filter(
                        season ->
                                pairings.ofSeason(season).stream()
                                        .anyMatch(
                                                pairing -> pairing.state() == Pairing.State.ACTIVE))
                .orElse(now);
    }

    private Found find(Transaction tx, int season) {
        var pairings = new Pairings(tx);
        var now = Seasons.of(tx.today());
        var seasons = new TreeSet<Integer>(Comparator.reverseOrder());
        seasons.addAll(pairings.seasons());
        seasons.add(now);
        seasons.add(season);
        return new Found(
                List.copyOf(seasons),
                pairings.ofSeason(season),
                pairings.signsOfSeason(season),
                new Clutches(tx).ofPairingsIn(season),
                LayOutlook.of(tx, season),
                ready(tx, pairings.ofSeason(season)),
                AnimalOptions.find(tx, "", Sex.FEMALE),
                AnimalOptions.find(tx, "", Sex.MALE));
    }

    /// Only until they have been together for good: then it is too late for advice.
    private Map<PairingId, List<String>> ready(Transaction tx, List<Pairing> pairings) {
        var ready = new Ready(holding, tx, new Clutches(tx).days(), pairings);
        return pairings.stream()
                .filter(pairing -> pairing.state() != Pairing.State.DONE)
                .collect(Collectors.toMap(Pairing::id, pairing -> ready.of(pairing, formats)));
    }

    private record Found(
            List<Integer> seasons,
            List<Pairing> pairings,
            List<SignSeen> signs,
            List<Clutch> clutches,
            SequencedMap<AnimalId, LayOutlook.Expected> expected,
            Map<PairingId, List<String>> ready,
            List<Animal> dams,
            List<Animal> sires) {}
}
