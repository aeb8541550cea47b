package clutchwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/// Invented pedigrees of a breeder's pools and lines, always the same by their seed.
///
/// Every animal has three loci: a recessive, an incomplete dominant and a series of three
/// alleles. Males serve several females, a popular one more; some mate back to a parent or a
/// half-sibling.
final class BreederPedigrees {

    static final int LOCI = 3;

    private static final List<Plan> PLANS =
            List.of(
                    new Plan("p100", 100, 5, 12, 1, 0, 101, 1),
                    new Plan("p300", 300, 6, 20, 1, 0, 301, 0.8),
                    new Plan("p1k", 1000, 8, 40, 1, 0, 1001, 1),
                    new Plan("p1kb", 1000, 8, 40, 1, 0, 1002, 0.8),
                    new Plan("p3kb", 3000, 10, 80, 1, 0, 3001, 0.8),
                    new Plan("p100k", 100_000, 15, 800, 1, 0, 100_001, 1));

    /// The pedigree of a name: p100, p300, p1k, p1kb, p3kb, p100k, or pool1k, pool3k, lines10k
    /// and pool10k with a draw from 1, as in pool3k-2.
    static BreederPedigrees named(String name) {
        for (var plan : PLANS) {
            if (plan.name.equals(name)) {
                return new BreederPedigrees(plan);
            }
        }
        var parts = name.split("-", -1);
        var seed = 7000L + Integer.parseInt(parts[1]);
        return new BreederPedigrees(
                switch (parts[0]) {
                    case "pool1k" -> new Plan(name, 1000, 8, 40, 1, 0, seed, 0.8);
                    case "pool3k" -> new Plan(name, 3000, 10, 80, 1, 0, seed, 0.8);
                    case "lines10k" -> new Plan(name, 10_000, 12, 200, 10, 0.03, seed, 0.8);
                    case "pool10k" -> new Plan(name, 10_000, 12, 150, 1, 0, seed, 0.8);
                    default -> throw new IllegalArgumentException("no pedigrees " + name);
                });
    }

    /// @param exchange share of clutches by a male of another line
    /// @param recorded share of animals whose look was recorded
    record Plan(
            String name,
            int animals,
            int seasons,
            int founders,
            int lines,
            double exchange,
            long seed,
            double recorded) {}

    final int animals;

    /// Parents by number from 1; 0 where unknown.
    final int[] sires;

    final int[] dams;

    /// For each locus and animal: the look, and for founders what is said of it.
    final int[][] looks;

    final boolean[][] isRecorded;
    final String[][] claims;

    private final Plan plan;
    private final SplittableRandom random;
    private final int[] sexes;
    private final int[] seasons;
    private final float[] popularity;
    private final byte[][][] genes;
    private final List<List<Integer>> males = new ArrayList<>();
    private final List<List<Integer>> females = new ArrayList<>();
    private int count;

    BreederPedigrees(Plan plan) {
        this.plan = plan;
        random = new SplittableRandom(plan.seed);
        var room = plan.animals + 1000;
        sires = new int[room];
        dams = new int[room];
        sexes = new int[room];
        seasons = new int[room];
        popularity = new float[room];
        genes = new byte[LOCI][room][2];
        claims = new String[LOCI][room];
        for (var line = 0; line < plan.lines; line++) {
            males.add(new ArrayList<>());
            females.add(new ArrayList<>());
        }
        for (var i = 0; i < plan.founders; i++) {
            enter(founder(0, i / plan.lines % 3 == 0 ? 1 : 2), i % plan.lines);
        }
        var clutches = 1.6 * plan.animals / 6.5 / plan.seasons;
        for (var season = 1; season <= plan.seasons && count < plan.animals; season++) {
            breed(season, clutches);
        }
        animals = count;
        looks = new int[LOCI][animals + 1];
        isRecorded = new boolean[LOCI][animals + 1];
        for (var animal = 1; animal <= animals; animal++) {
            for (var locus = 0; locus < LOCI; locus++) {
                looks[locus][animal] = look(locus, genes[locus][animal]);
                isRecorded[locus][animal] = random.nextDouble() < plan.recorded;
            }
        }
    }

    private void enter(int animal, int line) {
        (sexes[animal] == 1 ? males : females).get(line).add(animal);
    }

    private void breed(int season, double clutches) {
        var bought = (int) Math.round(0.03 * clutches);
        for (var i = 0; i < bought && count < plan.animals; i++) {
            var line = random.nextInt(plan.lines);
            enter(founder(season - 1, random.nextInt(3) == 0 ? 1 : 2), line);
        }
        List<int[]> kept = new ArrayList<>();
        for (var line = 0; line < plan.lines; line++) {
            breedLine(season, line, clutches, kept);
        }
        kept.forEach(young -> enter(young[0], young[1]));
    }

    private void breedLine(int season, int line, double clutches, List<int[]> kept) {
        var dams = grown(females.get(line), season, 2, true);
        var sires = grown(males.get(line), season, 1, true);
        if (dams.isEmpty() || sires.isEmpty()) {
            return;
        }
        shuffle(dams);
        var share = Math.max(1, (int) Math.round(clutches / plan.lines));
        var most = Math.min((int) Math.ceil(dams.size() * 0.8), share);
        var next = 0;
        while (next < most && count < plan.animals) {
            var male = picked(sires);
            var mates = 3 + random.nextInt(4);
            if (plan.lines > 1 && random.nextDouble() < plan.exchange) {
                var others = grown(males.get(random.nextInt(plan.lines)), season, 1, false);
                male = others.isEmpty() ? male : picked(others);
            }
            for (var i = 0; i < mates && next < most && count < plan.animals; i++) {
                var dam = dams.get(next++);
                clutch(dam, mate(dam, male, sires, season), season, line, kept);
            }
        }
    }

    private List<Integer> grown(List<Integer> all, int season, int age, boolean founders) {
        List<Integer> grown = new ArrayList<>();
        for (var animal : all) {
            var years = season - seasons[animal];
            if ((years >= age || (founders && sires[animal] == 0)) && years <= 8) {
                grown.add(animal);
            }
        }
        return grown;
    }

    /// Mostly the male whose turn it is; sometimes her sire, a half-brother or a brother.
    private int mate(int dam, int male, List<Integer> sires, int season) {
        var u = random.nextDouble();
        var father = this.sires[dam];
        if (u < 0.08 && father != 0 && season - seasons[father] <= 10) {
            return father;
        }
        if (u < 0.18 && father != 0) {
            for (var attempt = 0; attempt < 60; attempt++) {
                var other = sires.get(random.nextInt(sires.size()));
                if (this.sires[other] == father) {
                    return other;
                }
            }
        } else if (u < 0.20 && dams[dam] != 0) {
            var mate = male;
            for (var other : sires) {
                var isNext = other == dam + 1 || other == dam - 1;
                if (isNext && dams[other] == dams[dam] && this.sires[other] == father) {
                    mate = other;
                }
            }
            return mate;
        }
        return male;
    }

    private void clutch(int dam, int sire, int season, int line, List<int[]> kept) {
        var size = 4 + random.nextInt(6);
        for (var i = 0; i < size && count < plan.animals; i++) {
            var animal = ++count;
            sires[animal] = sire;
            dams[animal] = dam;
            sexes[animal] = 1 + random.nextInt(2);
            seasons[animal] = season;
            popularity[animal] = drawnPopularity();
            var shows = false;
            for (var locus = 0; locus < LOCI; locus++) {
                genes[locus][animal][0] = genes[locus][sire][random.nextInt(2)];
                genes[locus][animal][1] = genes[locus][dam][random.nextInt(2)];
                shows |= look(locus, genes[locus][animal]) != 0;
            }
            if (random.nextDouble() < (shows ? 0.30 : 0.105)) {
                kept.add(new int[] {animal, line});
            }
        }
    }

    private float drawnPopularity() {
        return (float) Math.pow(random.nextDouble(), -0.5);
    }

    private int founder(int season, int sex) {
        var animal = ++count;
        sexes[animal] = sex;
        seasons[animal] = season;
        popularity[animal] = drawnPopularity();
        for (var locus = 0; locus < LOCI; locus++) {
            claim(animal, locus);
        }
        return animal;
    }

    private void claim(int animal, int locus) {
        var u = random.nextDouble();
        var allele = (byte) (locus == 2 ? 1 + random.nextInt(2) : 1);
        var pair = genes[locus][animal];
        String claim;
        if (u < 0.08) {
            claim = "visual";
            Arrays.fill(pair, allele);
        } else if (u < 0.16) {
            claim = "het";
            pair[1] = allele;
        } else if (u < 0.32) {
            claim = u < 0.24 ? "ph66" : "ph50";
            pair[1] = random.nextDouble() < (u < 0.24 ? 0.66 : 0.5) ? allele : 0;
        } else {
            claim = "wild1";
            pair[1] = random.nextDouble() < 0.01 ? allele : 0;
        }
        if (locus == 1 && u >= 0.16 && u < 0.32) {
            claim = "wild1";
            pair[1] = random.nextDouble() < 0.01 ? allele : 0;
        }
        claims[locus][animal] = locus == 2 ? claim + ":" + allele : claim;
    }

    private void shuffle(List<Integer> animals) {
        for (var i = animals.size() - 1; i > 0; i--) {
            var j = random.nextInt(i + 1);
            var moved = animals.get(i);
            animals.set(i, animals.get(j));
            animals.set(j, moved);
        }
    }

    private int picked(List<Integer> sires) {
        var total = 0.0;
        for (var sire : sires) {
            total += popularity[sire];
        }
        var u = random.nextDouble() * total;
        for (var sire : sires) {
            u -= popularity[sire];
            if (u <= 0) {
                return sire;
            }
        }
        return sires.getLast();
    }

    private static int look(int locus, byte[] pair) {
        return look(locus, new int[] {pair[0], pair[1]});
    }

    /// How a pair of alleles looks; 0 is plain.
    static int look(int locus, int... pair) {
        var low = Math.min(pair[0], pair[1]);
        var high = Math.max(pair[0], pair[1]);
        return switch (locus) {
            case 0 -> low == 1 ? 1 : 0;
            case 1 -> low + high;
            default -> {
                if (low == 0) {
                    yield 0;
                }
                yield high == 1 ? 1 : low == 2 ? 2 : 3;
            }
        };
    }
}
