package clutchwright.app.season;

import clutchwright.records.LayOutlook.Expected;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Fate;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.SignSeen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// What happened to one female in a season, and what is expected.
///
/// @param pairings hers, with one male or several
/// @param clutches that came of them
record SeasonCourse(
        List<Pairing> pairings,
        List<SignSeen> signs,
        List<Clutch> clutches,
        Optional<Expected> expected) {

    /// From laying to pipping, first and last: common practice with royal pythons, no source.
    static final int HATCH_FIRST = 55;

    static final int HATCH_LAST = 60;

    SeasonCourse {
        pairings = List.copyOf(pairings);
        signs = List.copyOf(signs);
        clutches = List.copyOf(clutches);
    }

    boolean isEmpty() {
        return days().findAny().isEmpty();
    }

    /// Every day that is to be seen.
    Stream<LocalDate> days() {
        var days = new ArrayList<LocalDate>();
        pairings.forEach(
                pairing -> {
                    pairing.putTogether().ifPresent(days::add);
                    pairing.separated().ifPresent(days::add);
                });
        signs.forEach(sign -> days.add(sign.on()));
        clutches.forEach(
                clutch -> {
                    days.add(clutch.laid());
                    days.add(clutch.laid().plusDays(HATCH_LAST));
                });
        expected.ifPresent(
                lays -> {
                    days.add(lays.by(0.05));
                    days.add(lays.by(0.95));
                });
        return days.stream();
    }

    /// When eggs of hers pipped.
    List<LocalDate> pipped() {
        return clutches.stream()
                .flatMap(clutch -> clutch.eggs().stream())
                .flatMap(
                        egg ->
                                egg.fate() instanceof Fate.Hatched(var on, var _)
                                        ? Stream.of(on)
                                        : Stream.<LocalDate>empty())
                .distinct()
                .sorted()
                .toList();
    }
}
