package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.SignSeen;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/// What the pairings ask for: a female that is to lay, a pair of which nothing was seen for long.
record DuePairings(Found found, Formats formats) {

    List<Due> all() {
        var signs = new HashMap<PairingId, List<SignSeen>>();
        found.signs()
                .forEach(
                        sign ->
                                signs.computeIfAbsent(sign.pairing(), _ -> new ArrayList<>())
                                        .add(sign));
        var due = new ArrayList<Due>();
        for (var pairing : found.pairings()) {
            var seen = signs.getOrDefault(pairing.id(), List.of());
            var shed = latest(seen, SignSeen.Kind.PRE_LAY_SHED);
            if (shed.isPresent()) {
                shed.filter(day -> !hasLaid(pairing, day))
                        .map(day -> laying(pairing, day))
                        .ifPresent(due::add);
            } else if (seen.isEmpty()) {
                waiting(pairing).ifPresent(due::add);
            }
        }
        return due;
    }

    private Due laying(Pairing pairing, LocalDate shed) {
        var first = shed.plusDays(RulesOfThumb.LAYING_FIRST);
        var last = shed.plusDays(RulesOfThumb.LAYING_LAST);
        var overdue = found.today().isAfter(shed.plusDays(RulesOfThumb.LAYING_OVERDUE));
        return Due.of(
                Due.Kind.LAYING,
                first,
                found.today(),
                "/eggs/new?dam=" + tag(pairing),
                found.called(pairing.dam()),
                overdue
                        ? "She was to lay by %s. A reptile veterinarian should see her if she strains or is swollen."
                                .formatted(formats.dayOfYear(last))
                        : "She may lay between %s and %s."
                                .formatted(formats.dayOfYear(first), formats.dayOfYear(last)),
                "pre-lay shed %s; %d to %d days later, common practice"
                        .formatted(
                                formats.dayOfYear(shed),
                                RulesOfThumb.LAYING_FIRST,
                                RulesOfThumb.LAYING_LAST),
                overdue);
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
                                        false));
    }

    private boolean hasLaid(Pairing pairing, LocalDate since) {
        return found.clutches().stream()
                .anyMatch(
                        clutch ->
                                clutch.dam().equals(pairing.dam())
                                        && !clutch.laid().isBefore(since));
    }

    private String tag(Pairing pairing) {
        return Optional.ofNullable(found.animals().get(pairing.dam()))
                .map(dam -> URLEncoder.encode(dam.tag().value(), StandardCharsets.UTF_8))
                .orElse("");
    }

    private static Optional<LocalDate> latest(List<SignSeen> seen, SignSeen.Kind kind) {
        return seen.stream()
                .filter(sign -> sign.kind() == kind)
                .map(SignSeen::on)
                .max(Comparator.naturalOrder());
    }
}
