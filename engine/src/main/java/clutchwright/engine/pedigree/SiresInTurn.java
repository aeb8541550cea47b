package clutchwright.engine.pedigree;

/// How inbred each animal of a whole population is, couples taken sire by sire.
///
/// A couple comes after all its ancestors are settled: generation by generation, and within one all
/// mates of a sire together, so that his ancestors are walked once.
final class SiresInTurn {

    private static final int NONE = -1;

    private final int[] dams;
    private final int[] sires;

    /// Those that have young, by numbers of their own: a small part, which stays near at hand.
    private final int[] numbers;

    private int[] parentDams = {};
    private int[] parentSires = {};

    /// How many generations the parents are from the founders at most.
    private int[] levels = {};

    private int deepest;

    /// Each couple's dam and sire, once for each run of their young.
    private int[] her = {};

    private int[] him = {};

    /// Of which couple each parent is young.
    private int[] coupleOf = {};

    SiresInTurn(int[] dams, int[] sires) {
        this.dams = dams;
        this.sires = sires;
        this.numbers = new int[dams.length];
    }

    double[] inbreeding() {
        numberParents();
        findCouples();
        var kinship = kinships();
        var inbreeding = new double[dams.length];
        int couple = NONE;
        for (int i = 0; i < dams.length; i++) {
            couple += begins(i) ? 1 : 0;
            inbreeding[i] = dams[i] >= 0 && sires[i] >= 0 ? kinship[couple] : 0;
        }
        return inbreeding;
    }

    private void findCouples() {
        int count = 0;
        for (int i = 0; i < dams.length; i++) {
            count += begins(i) ? 1 : 0;
        }
        her = new int[count];
        him = new int[count];
        coupleOf = new int[parentDams.length];
        int couple = NONE;
        for (int i = 0; i < dams.length; i++) {
            if (begins(i)) {
                couple++;
                her[couple] = numbers[dams[i]];
                him[couple] = numbers[sires[i]];
            }
            if (numbers[i] >= 0) {
                coupleOf[numbers[i]] = dams[i] >= 0 && sires[i] >= 0 ? couple : NONE;
            }
        }
    }

    /// Whether the young of another couple begin: those of a clutch stand together.
    private boolean begins(int i) {
        return dams[i] >= 0
                && sires[i] >= 0
                && (i == 0 || dams[i] != dams[i - 1] || sires[i] != sires[i - 1]);
    }

    private void numberParents() {
        for (int i = 0; i < dams.length; i++) {
            if (dams[i] >= 0) {
                numbers[dams[i]] = 1;
            }
            if (sires[i] >= 0) {
                numbers[sires[i]] = 1;
            }
        }
        int count = 0;
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = numbers[i] == 1 ? count++ : NONE;
        }
        parentDams = new int[count];
        parentSires = new int[count];
        levels = new int[count];
        for (int i = 0; i < numbers.length; i++) {
            int number = numbers[i];
            if (number >= 0) {
                int dam = dams[i] < 0 ? NONE : numbers[dams[i]];
                int sire = sires[i] < 0 ? NONE : numbers[sires[i]];
                parentDams[number] = dam;
                parentSires[number] = sire;
                levels[number] =
                        1 + Math.max(dam < 0 ? NONE : levels[dam], sire < 0 ? NONE : levels[sire]);
                deepest = Math.max(deepest, levels[number]);
            }
        }
    }

    private double[] kinships() {
        var kinship = new double[her.length];
        var own = new double[parentDams.length];
        var inbreeding = new double[parentDams.length];
        var mates = new MatesOfOne(parentDams, parentSires, own);
        var parents = CountingSort.order(levels, deepest + 1, CountingSort.asTheyStand(own.length));
        var level = levelsOfCouples();
        var couples = couplesInTurn(level);
        int couple = 0;
        int parent = 0;
        for (int at = 0; at <= deepest + 1; at++) {
            int chosen = NONE;
            for (; couple < couples.length && level[couples[couple]] == at; couple++) {
                int next = couples[couple];
                if (him[next] != chosen) {
                    chosen = him[next];
                    mates.choose(chosen);
                }
                kinship[next] = mates.relationship(her[next]) / 2;
            }
            for (; parent < parents.length && levels[parents[parent]] == at; parent++) {
                int next = parents[parent];
                inbreeding[next] = coupleOf[next] < 0 ? 0 : kinship[coupleOf[next]];
                own[next] =
                        1
                                - (selfOf(parentDams[next], inbreeding)
                                                + selfOf(parentSires[next], inbreeding))
                                        / 4;
            }
        }
        return kinship;
    }

    /// One more than that of the parent who is further from the founders.
    private int[] levelsOfCouples() {
        var level = new int[her.length];
        for (int couple = 0; couple < level.length; couple++) {
            level[couple] = 1 + Math.max(levels[her[couple]], levels[him[couple]]);
        }
        return level;
    }

    /// Level by level, and within one sire by sire.
    private int[] couplesInTurn(int[] level) {
        var bySire =
                CountingSort.order(him, parentDams.length, CountingSort.asTheyStand(him.length));
        return CountingSort.order(level, deepest + 2, bySire);
    }

    private static double selfOf(int parent, double[] inbreeding) {
        return parent < 0 ? 0 : 1 + inbreeding[parent];
    }
}
