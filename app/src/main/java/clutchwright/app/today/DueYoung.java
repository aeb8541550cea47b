package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.records.husbandry.FirstDays;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Stream;

/// What hatchlings ask for: their first shed, and the first meal after it. Common practice, no
/// source.
record DueYoung(Found found, Formats formats) {

    List<Due> all() {
        return found.young().stream()
                .flatMap(young -> Stream.concat(shed(young), meal(young)))
                .toList();
    }

    private Stream<Due> shed(FirstDays young) {
        if (young.shed() || young.eaten()) {
            return Stream.empty();
        }
        var late = age(young) > RulesOfThumb.SHED_LATE;
        return Stream.of(
                due(
                                Due.Kind.SHEDDING,
                                young,
                                young.hatched().plusDays(RulesOfThumb.SHED_FIRST),
                                late
                                        ? "No first shed on record yet: look whether the tub is damp enough, and ask a veterinarian in doubt."
                                        : "Look for its first shed.",
                                "usual from day " + RulesOfThumb.SHED_FIRST + " on")
                        .with(new Due.FirstShed(young.animal().value())));
    }

    private Stream<Due> meal(FirstDays young) {
        var offered =
                young.offered()
                        .filter(
                                day ->
                                        !day.isBefore(
                                                found.today().minusDays(RulesOfThumb.OFFERED)));
        if (young.eaten()
                || offered.isPresent()
                || (!young.shed() && age(young) < RulesOfThumb.FIRST_MEAL)) {
            return Stream.empty();
        }
        return Stream.of(
                due(
                                Due.Kind.FEEDING,
                                young,
                                young.hatched().plusDays(RulesOfThumb.SHED_FIRST),
                                age(young) > RulesOfThumb.FASTS_LONG
                                        ? "Has taken no meal yet: weigh it, and ask a veterinarian."
                                        : "Offer its first meal.",
                                young.offered()
                                        .map(day -> "refused " + formats.dayOfYear(day))
                                        .orElse("usual after the first shed"))
                        .with(new Due.Meal(young.animal().value(), "")));
    }

    private Due due(Due.Kind kind, FirstDays young, LocalDate from, String what, String basis) {
        return Due.of(
                        kind,
                        from,
                        found.today(),
                        "/collection/" + young.animal().value(),
                        found.called(young.animal()),
                        what,
                        "%s old; %s, common practice"
                                .formatted(formats.count(age(young), "day", "days"), basis),
                        false)
                .at(found.spot(young.animal()));
    }

    private long age(FirstDays young) {
        return ChronoUnit.DAYS.between(young.hatched(), found.today());
    }
}
