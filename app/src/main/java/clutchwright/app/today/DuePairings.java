package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.app.wording.LayWords;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.LayOutlook.Expected;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.SignSeen;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/// What the pairings ask for: a female that is to lay, a pair of which nothing was seen for long.
record DuePairings(Found found, Formats formats) {

    /// Above that chance she is not waited for.
    private static final double MAY_SKIP = 0.5;

    List<Due> all() {
        var signs = new HashMap<PairingId, List<SignSeen>>();
        found.signs()
                .forEach(
                        sign ->
                                signs.computeIfAbsent(sign.pairing(), _ -> new ArrayList<>())
                                        .add(sign));
        var due = new ArrayList<Due>();
        found.expected().forEach((dam, expected) -> laying(dam, expected).ifPresent(due::add));
        for (var pairing : found.pairings()) {
            if (signs.getOrDefault(pairing.id(), List.of()).isEmpty()) {
                waiting(pairing).ifPresent(due::add);
            }
        }
        return due;
    }

    private Optional<Due> laying(AnimalId dam, Expected expected) {
        if (expected.forecast().skips() > MAY_SKIP) {
            return Optional.empty();
        }
        var late = LayWords.late(expected, found.today(), formats);
        return Optional.of(
                Due.of(
                                Due.Kind.LAYING,
                                expected.by(0.05),
                                found.today(),
                                "/eggs/new?dam=" + tag(dam),
                                found.called(dam),
                                late.isEmpty() ? LayWords.expected(expected, formats) : late,
                                LayWords.sentence(
                                        expected.forecast().basis().getLast(),
                                        expected.year(),
                                        formats::dayOfYear),
                                !late.isEmpty())
                        .at(found.spot(dam)));
    }

    private Optional<Due> waiting(Pairing pairing) {
        if (pairing.state() != Pairing.State.ACTIVE || pairing.separated().isPresent()) {
            return Optional.empty();
        }
        return pairing.putTogether()
                .filter(day -> !hasLaid(pairing, day))
                .filter(day -> !day.plusDays(RulesOfThumb.TOGETHER_LONG).isAfter(found.today()))
                .map(
                        day ->
                                Due.of(
                                                Due.Kind.PAIRING,
                                                day.plusDays(RulesOfThumb.TOGETHER_LONG),
                                                found.today(),
                                                "/season/pairings/" + pairing.id().value(),
                                                "%s × %s"
                                                        .formatted(
                                                                found.called(pairing.dam()),
                                                                found.called(pairing.sire())),
                                                "No sign was seen of this pair.",
                                                "together since %s, %s"
                                                        .formatted(
                                                                formats.dayOfYear(day),
                                                                formats.count(
                                                                        ChronoUnit.DAYS.between(
                                                                                day, found.today()),
                                                                        "day",
                                                                        "days")),
                                                false)
                                        .at(found.spot(pairing.dam())));
    }

    private boolean hasLaid(Pairing pairing, LocalDate since) {
        return found.clutches().stream()
                .anyMatch(
                        clutch ->
                                clutch.dam().equals(pairing.dam())
                                        && !clutch.laid().isBefore(since));
    }

    private String tag(AnimalId dam) {
        return Optional.ofNullable(found.animals().get(dam))
                .map(animal -> URLEncoder.encode(animal.tag().value(), StandardCharsets.UTF_8))
                .orElse("");
    }
}
