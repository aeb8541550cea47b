package clutchwright.app.demo;

import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.photos.Photos;
import clutchwright.records.places.Places;
import clutchwright.records.places.TubId;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.random.RandomGenerator;

/// Where the animals of Millrace live, what they ate and weighed, and a drawing of some of them.
final class HouseKeeping {

    private static final int DRAWN = 30;

    private final Transaction tx;
    private final RandomGenerator random;
    private final LocalDate today;

    HouseKeeping(Transaction tx, RandomGenerator random, LocalDate today) {
        this.tx = tx;
        this.random = random;
        this.today = today;
    }

    boolean of(List<Resident> residents) {
        int adults = 0;
        int young = 0;
        for (int i = 0; i < residents.size(); i++) {
            var resident = residents.get(i);
            var grown = resident.isAdultOn(today);
            var place = grown ? adultTub(adults++) : youngTub(young++);
            settle(resident, place);
            weigh(resident);
            feed(resident, grown);
            shed(resident);
            if (i < DRAWN) {
                draw(resident);
            }
        }
        return true;
    }

    private TubId adultTub(int n) {
        return new Places(tx)
                .theTub("Loft", String.valueOf((char) ('A' + n / 14)), "%02d".formatted(n % 14 + 1))
                .id();
    }

    private TubId youngTub(int n) {
        return new Places(tx)
                .theTub(
                        "Back room",
                        String.valueOf((char) ('H' + n / 24)),
                        "%02d".formatted(n % 24 + 1))
                .id();
    }

    private void settle(Resident resident, TubId place) {
        var animals = new Animals(tx);
        var animal = animals.theAnimal(resident.id());
        animals.update(animal.with(animal.particulars().withPlace(place)), Questions.ALL_THE_SAME)
                .theSaved();
    }

    private void weigh(Resident resident) {
        var husbandry = new Husbandry(tx);
        for (int back = 300; back >= 0; back -= 60) {
            var day = today.minusDays(back + random.nextInt(9));
            if (day.isAfter(resident.hatched().plusDays(20))) {
                husbandry.weigh(resident.id(), day, grams(resident, day), "").theSaved();
            }
        }
    }

    /// A growth curve that levels off: common practice, no source.
    private double grams(Resident resident, LocalDate day) {
        var grown = resident.truth().sex() == Sex.FEMALE ? 1850 : 1050;
        var days = ChronoUnit.DAYS.between(resident.hatched(), day);
        var share = 1 - Math.exp(-days / 700.0);
        return Math.round(60 + (grown - 60) * share + random.nextInt(40));
    }

    private void feed(Resident resident, boolean grown) {
        var husbandry = new Husbandry(tx);
        var every = grown ? 14 : 7;
        var prey = grown ? "rat, small" : "mouse";
        for (int back = 84 + random.nextInt(every); back >= 0; back -= every) {
            var day = today.minusDays(back);
            if (day.isAfter(resident.hatched().plusDays(10))) {
                husbandry.feed(resident.id(), day, prey, random.nextInt(9) > 0, "").theSaved();
            }
        }
    }

    private void shed(Resident resident) {
        var day = today.minusDays(20 + random.nextInt(40));
        if (day.isAfter(resident.hatched())) {
            new Husbandry(tx).shed(resident.id(), day, random.nextInt(8) > 0, "").theSaved();
        }
    }

    private void draw(Resident resident) {
        var picture = PatternDrawing.of(resident.truth(), resident.id().value());
        new Photos(tx).add(resident.id(), picture, "drawn, not photographed").saved();
    }
}
