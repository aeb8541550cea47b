package clutchwright.app.steering;

import clutchwright.app.wording.RouteWords;
import clutchwright.engine.genetics.ParentGenotype;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Stock;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/// The animals of a house as the stock of a project.
///
/// @param notes what is worth knowing of those that are left out or have to wait
public record HouseStock(Stock stock, List<String> notes) {

    /// In the house, and meant to stay.
    public static final Set<Status> AT_HAND = EnumSet.of(Status.KEPT, Status.HOLD_BACK);

    /// Common practice, no source: from the middle of the year on no more clutches are started
    /// that hatch in it.
    private static final int LAST_MONTH = 6;

    public HouseStock {
        notes = List.copyOf(notes);
    }

    /// The year in which clutches of the next pairings hatch.
    public static int nextSeason(LocalDate today) {
        return today.getMonthValue() <= LAST_MONTH ? today.getYear() : today.getYear() + 1;
    }

    /// @param species of which animals count
    /// @param genotypes what is held of each, as a parent of that sex
    /// @param firstYear in which the clutches of season 1 hatch
    public static HouseStock of(
            Collection<Animal> animals,
            String species,
            BiFunction<Animal, Sex, ParentGenotype> genotypes,
            int firstYear,
            Biology biology) {
        var own = new ArrayList<Stock.Own>();
        var notes = new ArrayList<String>();
        for (var animal : animals) {
            if (!animal.species().equals(species) || !AT_HAND.contains(animal.status())) {
                continue;
            }
            var sex = animal.sex();
            if (sex.isEmpty()) {
                notes.add(RouteWords.unsexed(animal.tag().value()));
                continue;
            }
            var first = firstSeason(animal, sex.get(), firstYear, biology);
            if (first > 1) {
                notes.add(RouteWords.tooYoung(animal.tag().value(), first));
            }
            own.add(
                    new Stock.Own(
                            animal.id(), sex.get(), genotypes.apply(animal, sex.get()), first));
        }
        return new HouseStock(new Stock(own), notes);
    }

    /// An animal of which no day or year is on record counts as grown.
    private static int firstSeason(Animal animal, Sex sex, int firstYear, Biology biology) {
        return animal.hatched()
                .span()
                .map(
                        span ->
                                span.earliest().getYear()
                                        + biology.seasonsToMaturity(sex)
                                        - firstYear
                                        + 1)
                .filter(season -> season > 1)
                .orElse(1);
    }
}
