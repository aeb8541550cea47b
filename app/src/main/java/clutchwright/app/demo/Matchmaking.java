package clutchwright.app.demo;

import clutchwright.engine.catalogue.Catalogue;
import clutchwright.engine.catalogue.Mode;
import clutchwright.engine.catalogue.Trait;
import clutchwright.engine.genetics.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.random.RandomGenerator;

/// How the invented breeder chooses: recessives that meet, looks that add up, no close kin, and
/// no male for everybody.
final class Matchmaking {

    private static final String NOT_BRED_FROM = "Spider";

    private final List<Trait> traits;
    private final RandomGenerator random;

    Matchmaking(Catalogue catalogue, RandomGenerator random) {
        this.traits =
                catalogue.species().loci().stream()
                        .flatMap(locus -> locus.traits().stream())
                        .toList();
        this.random = random;
    }

    record Couple(Resident dam, Resident sire) {}

    List<Couple> couples(List<Resident> residents, LocalDate day, int wanted) {
        var adults = residents.stream().filter(r -> r.isAdultOn(day) && !isNotBredFrom(r)).toList();
        var dams = new ArrayList<>(adults.stream().filter(r -> is(r, Sex.FEMALE)).toList());
        var sires = adults.stream().filter(r -> is(r, Sex.MALE)).toList();
        for (int i = dams.size() - 1; i > 0; i--) {
            Collections.swap(dams, i, random.nextInt(i + 1));
        }
        var used = new HashMap<Resident, Integer>();
        var couples = new ArrayList<Couple>();
        for (var dam : dams.subList(0, Math.min(wanted, dams.size()))) {
            var scores = new HashMap<Resident, Double>();
            sires.forEach(sire -> scores.put(sire, score(dam, sire, used.getOrDefault(sire, 0))));
            var sire = sires.stream().max(Comparator.comparing(scores::get)).orElseThrow();
            used.merge(sire, 1, Integer::sum);
            couples.add(new Couple(dam, sire));
        }
        return couples;
    }

    /// How much the breeder would like to keep such an animal.
    int appeal(Resident resident) {
        return traits.stream()
                .mapToInt(
                        trait -> {
                            var copies = resident.truth().copiesOf(trait.allele());
                            return trait.mode() == Mode.RECESSIVE ? copies * copies : copies;
                        })
                .sum();
    }

    private double score(Resident dam, Resident sire, int used) {
        var meeting =
                traits.stream()
                        .filter(trait -> trait.mode() == Mode.RECESSIVE)
                        .mapToInt(
                                trait ->
                                        Math.min(
                                                dam.truth().copiesOf(trait.allele()),
                                                sire.truth().copiesOf(trait.allele())))
                        .sum();
        var kin = dam.isRelatedTo(sire) ? 7 : 0;
        return 4 * meeting + 0.5 * appeal(sire) - 1.6 * used - kin + 2 * random.nextDouble();
    }

    private boolean isNotBredFrom(Resident resident) {
        return traits.stream()
                .filter(trait -> trait.name().equals(NOT_BRED_FROM))
                .anyMatch(trait -> resident.truth().copiesOf(trait.allele()) > 0);
    }

    private static boolean is(Resident resident, Sex sex) {
        return resident.truth().sex() == sex;
    }
}
