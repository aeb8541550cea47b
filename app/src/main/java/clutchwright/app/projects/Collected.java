package clutchwright.app.projects;

import clutchwright.app.holding.PackageInHand;
import clutchwright.app.wording.RouteWords;
import clutchwright.engine.genetics.Sex;
import clutchwright.engine.inference.Assumptions;
import clutchwright.engine.inference.PedigreeInference;
import clutchwright.engine.inference.Posteriors;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.pedigree.Kinship;
import clutchwright.engine.planning.Biology;
import clutchwright.engine.planning.Stock;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Status;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/// The animals of some files as the stock of a project.
///
/// @param notes what is worth knowing of those that are left out or have to wait
record Collected(PackageInHand read, Stock stock, Kinship kinship, List<String> notes) {

    /// In the house, and meant to stay.
    private static final Set<Status> AT_HAND = EnumSet.of(Status.KEPT, Status.HOLD_BACK);

    /// Common practice, no source: from the middle of the year on no more clutches are started
    /// that hatch in it.
    private static final int LAST_MONTH = 6;

    Collected {
        notes = List.copyOf(notes);
    }

    /// The year in which clutches of the next pairings hatch.
    static int nextSeason(LocalDate today) {
        return today.getMonthValue() <= LAST_MONTH ? today.getYear() : today.getYear() + 1;
    }

    /// @param species of which the files hold animals
    /// @param firstYear in which the clutches of season 1 hatch
    static Collected of(PackageInHand read, String species, int firstYear, Biology biology) {
        var records = read.species().get(species);
        if (records == null) {
            throw new IllegalArgumentException("no records of " + species);
        }
        var posteriors =
                new Posteriors(PedigreeInference.of(records.records(), Assumptions.STANDARD));
        var own = new ArrayList<Stock.Own>();
        var notes = new ArrayList<String>();
        for (var animal : read.collection().animals().values()) {
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
                            animal.id(), sex.get(), posteriors.of(animal.id()).asParent(), first));
        }
        return new Collected(read, new Stock(own), Kinship.of(records.records().pedigree()), notes);
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

    String tag(AnimalId animal) {
        return read.tag(animal);
    }
}
