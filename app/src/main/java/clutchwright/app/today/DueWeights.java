package clutchwright.app.today;

import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import clutchwright.records.husbandry.Happening;
import clutchwright.records.pairings.Pairing;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// The females that are paired or expected to lay and were not on the scales for long: what one
/// weighs says whether she eats enough to build eggs.
record DueWeights(Found found, Formats formats) {

    /// Who was never weighed comes first, then who was weighed longest ago.
    List<Due> all() {
        var due = new ArrayList<Due>();
        Stream.concat(
                        found.pairings().stream()
                                .filter(pairing -> pairing.state() == Pairing.State.ACTIVE)
                                .map(Pairing::dam),
                        // Separated already, and building eggs.
                        found.expected().keySet().stream())
                .distinct()
                .filter(this::livesHere)
                .forEach(dam -> due(dam).ifPresent(due::add));
        due.sort(Comparator.comparing(Due::from));
        return due;
    }

    private boolean livesHere(AnimalId dam) {
        return Optional.ofNullable(found.animals().get(dam))
                .map(Animal::status)
                .filter(status -> status == Status.KEPT || status == Status.HOLD_BACK)
                .isPresent();
    }

    private Optional<Due> due(AnimalId dam) {
        var last = Optional.ofNullable(found.weights().get(dam));
        var from = last.map(each -> each.on().plusDays(RulesOfThumb.WEIGHED));
        if (from.filter(day -> day.isAfter(found.today())).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                Due.of(
                                Due.Kind.WEIGHING,
                                from.orElse(LocalDate.MIN),
                                found.today(),
                                "/collection/" + dam.value(),
                                found.called(dam),
                                last.map(this::since).orElse("Not weighed yet."),
                                last.map(this::basis).orElse("paired, and not laid yet"),
                                false)
                        .with(new Due.Weight(dam.value()))
                        .at(found.spot(dam)));
    }

    private String since(Happening.Weighing last) {
        return "Not weighed for %s."
                .formatted(
                        formats.count(
                                ChronoUnit.DAYS.between(last.on(), found.today()), "day", "days"));
    }

    private String basis(Happening.Weighing last) {
        return "last %s, %s".formatted(formats.dayOfYear(last.on()), formats.weight(last.grams()));
    }
}
