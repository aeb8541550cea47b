package clutchwright.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;

/// An invented population, animals by numbers, parents before their young: each season some of the
/// last seasons' animals breed, a sire with a few dams, and some parents are strangers.
final class NumberedHerd {

    private static final int CLUTCH = 6;
    private static final int YOUNGEST_BREEDER = 2;
    private static final int YEARS_OF_BREEDING = 7;
    private static final int DAMS_A_SIRE = 4;

    private final int[] dams;
    private final int[] sires;

    private NumberedHerd(int[] dams, int[] sires) {
        this.dams = dams;
        this.sires = sires;
    }

    /// @param strangers chance that a parent of a clutch is one of whom nothing is on record
    static NumberedHerd of(int size, int seasons, double strangers, long seed) {
        var random = new SplittableRandom(seed);
        var dams = new int[size];
        var sires = new int[size];
        var ofSeasons = new ArrayList<int[]>();
        var next = 0;
        for (var season = 0; season <= seasons; season++) {
            var first = next;
            var last = (int) ((long) size * (season + 1) / (seasons + 1));
            while (next < last) {
                var sire = breeder(ofSeasons, strangers, random);
                for (var clutch = 0; clutch < DAMS_A_SIRE && next < last; clutch++) {
                    var dam = breeder(ofSeasons, strangers, random);
                    for (var young = 0; young < CLUTCH && next < last; young++) {
                        dams[next] = dam == sire ? -1 : dam;
                        sires[next++] = sire;
                    }
                }
            }
            ofSeasons.add(new int[] {first, next});
        }
        return new NumberedHerd(dams, sires);
    }

    /// One in ten of each season breeds, as a dam or as a sire.
    private static int breeder(List<int[]> seasons, double strangers, SplittableRandom random) {
        if (seasons.isEmpty() || random.nextDouble() < strangers) {
            return -1;
        }
        // The first seasons have nothing older to breed from.
        var wanted = YOUNGEST_BREEDER + random.nextInt(YEARS_OF_BREEDING);
        var back = Math.min(wanted, seasons.size());
        var season = seasons.get(seasons.size() - back);
        return season[0] + random.nextInt((season[1] - season[0]) / 10) * 10;
    }

    int[] dams() {
        return dams;
    }

    int[] sires() {
        return sires;
    }

    int couples() {
        var couples = new HashSet<Long>();
        for (var i = 0; i < dams.length; i++) {
            if (dams[i] >= 0 && sires[i] >= 0) {
                couples.add((long) dams[i] << 32 | sires[i]);
            }
        }
        return couples.size();
    }

    /// The mean over a sample of a thousand animals with two parents.
    double ancestorsOfACouple() {
        var random = new SplittableRandom(1);
        var sum = 0L;
        var sampled = 0;
        while (sampled < 1000) {
            var animal = random.nextInt(dams.length);
            if (dams[animal] >= 0 && sires[animal] >= 0) {
                sum += ancestors(animal);
                sampled++;
            }
        }
        return (double) sum / sampled;
    }

    private int ancestors(int animal) {
        var met = new HashSet<Integer>();
        var waiting = new ArrayList<>(List.of(animal));
        while (!waiting.isEmpty()) {
            var next = waiting.removeLast();
            for (var parent : List.of(dams[next], sires[next])) {
                if (parent >= 0 && met.add(parent)) {
                    waiting.add(parent);
                }
            }
        }
        return met.size();
    }
}
