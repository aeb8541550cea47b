package clutchwright.app.today;

import clutchwright.app.loggers.FeltSoFar;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.HatchWords;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Fate;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// What the clutches ask for: to be candled, to be looked after as they hatch, to be named.
record DueClutches(Found found, Formats formats) {

    private static final double EARLY = 0.05;
    private static final double LATE = 0.95;

    List<Due> all() {
        var due = new ArrayList<Due>();
        for (var clutch : found.clutches()) {
            if (!clutch.isComplete()) {
                due.add(hatching(clutch));
                candling(clutch).ifPresent(due::add);
            }
            naming(clutch).ifPresent(due::add);
        }
        return due;
    }

    private Due hatching(Clutch clutch) {
        var pipping = found.pipping(clutch);
        var last = pipping.date(pipping.forecast().quantile(LATE));
        var overdue = found.today().isAfter(last.plusDays(RulesOfThumb.HATCH_OVERDUE));
        var now = pipping.on(found.today());
        var first = pipping.date(now.quantile(EARLY));
        var eggs = formats.count(clutch.incubating().size(), "egg", "eggs");
        return Due.of(
                        Due.Kind.HATCHING,
                        first,
                        found.today(),
                        link(clutch)
                                + (pipping.hatched() || !first.isAfter(found.today())
                                        ? "/hatch"
                                        : ""),
                        name(clutch),
                        overdue
                                ? HatchWords.overdue(eggs, last, formats)
                                : HatchWords.eggs(
                                        eggs,
                                        pipping.date(now.mean()),
                                        first,
                                        pipping.date(now.quantile(LATE)),
                                        formats),
                        "day %d, laid %s; %s"
                                .formatted(
                                        day(clutch),
                                        formats.dayOfYear(clutch.laid()),
                                        HatchWords.inShort(
                                                pipping.felt().map(FeltSoFar::sensor), formats)),
                        overdue)
                .at(found.spot(clutch));
    }

    private Optional<Due> candling(Clutch clutch) {
        var last =
                clutch.eggs().stream()
                        .flatMap(egg -> egg.candlings().stream())
                        .map(Candling::on)
                        .max(Comparator.naturalOrder());
        if (last.isEmpty() && day(clutch) < RulesOfThumb.TOO_LATE_TO_CANDLE) {
            return Optional.of(
                    candle(clutch, RulesOfThumb.FIRST_CANDLING, "Not candled yet.", "first days"));
        }
        var halfWay = clutch.laid().plusDays(RulesOfThumb.HALF_WAY_DONE);
        var done = last.filter(day -> !day.isBefore(halfWay)).isPresent();
        if (done || day(clutch) >= RulesOfThumb.TOO_LATE_TO_CANDLE) {
            return Optional.empty();
        }
        return Optional.of(
                candle(clutch, RulesOfThumb.HALF_WAY, "Candle it half way.", "about half way"));
    }

    private Due candle(Clutch clutch, int day, String what, String when) {
        return Due.of(
                        Due.Kind.CANDLING,
                        clutch.laid().plusDays(day),
                        found.today(),
                        link(clutch) + "/candle",
                        name(clutch),
                        what,
                        "day %d; %s, common practice".formatted(day(clutch), when),
                        false)
                .at(found.spot(clutch));
    }

    /// Eggs that hatched lately and whose young are not on record.
    private Optional<Due> naming(Clutch clutch) {
        var longAgo = found.today().minusDays(RulesOfThumb.NAMING_DAYS);
        var unnamed =
                clutch.eggs().stream()
                        .filter(
                                egg ->
                                        egg.fate()
                                                        instanceof
                                                        Fate.Hatched(var pipped, var hatchlings)
                                                && hatchlings.isEmpty()
                                                && pipped.isAfter(longAgo))
                        .count();
        return unnamed == 0
                ? Optional.empty()
                : Optional.of(
                        Due.of(
                                        Due.Kind.NAMING,
                                        LocalDate.MIN,
                                        found.today(),
                                        link(clutch) + "/hatch",
                                        name(clutch),
                                        formats.count(unnamed, "hatchling is", "hatchlings are")
                                                + " not named yet.",
                                        "pipped, nothing put on record",
                                        false)
                                .at(found.spot(clutch)));
    }

    private long day(Clutch clutch) {
        return ChronoUnit.DAYS.between(clutch.laid(), found.today());
    }

    private String name(Clutch clutch) {
        return "Clutch %s of %s".formatted(clutch.number(), found.called(clutch.dam()));
    }

    private static String link(Clutch clutch) {
        return "/eggs/" + clutch.id().value();
    }
}
