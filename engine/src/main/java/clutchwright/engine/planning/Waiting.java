package clutchwright.engine.planning;

/// Chances of having found enough of some kinds among eggs.
final class Waiting {

    private Waiting() {}

    /// At least so many of one kind.
    ///
    /// @param perEgg chance that an egg is one
    static double atLeast(int count, double perEgg, int eggs) {
        return count == 0 ? 1 : 1 - fewer(count, perEgg, eggs);
    }

    /// At least so many males among the first eggs and so many females among as many or as few
    /// others, where an egg is one, the other or neither.
    ///
    /// @param maleEggs the first so many are looked at for males
    /// @param femaleEggs the first so many for females
    static double atLeastBoth(
            int males,
            double perEggMale,
            int maleEggs,
            int females,
            double perEggFemale,
            int femaleEggs) {
        var noMales = fewer(males, perEggMale, maleEggs);
        var noFemales = fewer(females, perEggFemale, femaleEggs);
        var neither =
                maleEggs <= femaleEggs
                        ? fewerOfBoth(
                                males, perEggMale, females, perEggFemale, maleEggs, femaleEggs)
                        : fewerOfBoth(
                                females, perEggFemale, males, perEggMale, femaleEggs, maleEggs);
        return Math.max(0, 1 - noMales - noFemales + neither);
    }

    /// Fewer of the one among the first eggs, and fewer of the other among those and more.
    private static double fewerOfBoth(
            int ones, double perEggOne, int others, double perEggOther, int first, int all) {
        var sum = 0.0;
        for (var one = 0; one < ones && one <= first; one++) {
            for (var other = 0; other < others && one + other <= first; other++) {
                var early =
                        choose(first, one)
                                * choose(first - one, other)
                                * Math.pow(perEggOne, one)
                                * Math.pow(perEggOther, other)
                                * Math.pow(
                                        Math.max(0, 1 - perEggOne - perEggOther),
                                        first - one - other);
                if (early > 0) {
                    sum += early * fewer(others - other, perEggOther, all - first);
                }
            }
        }
        return sum;
    }

    /// Fewer than so many; certain among no eggs, unless none are asked for.
    static double fewer(int count, double perEgg, int eggs) {
        var sum = 0.0;
        for (var found = 0; found < count && found <= eggs; found++) {
            sum +=
                    choose(eggs, found)
                            * Math.pow(perEgg, found)
                            * Math.pow(1 - perEgg, eggs - found);
        }
        return Math.min(1, sum);
    }

    /// Enough males, females, and animals in all.
    static double enough(Goal goal, double perEggMale, double perEggFemale, int eggs) {
        if (goal.males() == 0 && goal.females() == 0) {
            return atLeast(goal.either(), perEggMale + perEggFemale, eggs);
        }
        var bySex = atLeastBoth(goal.males(), perEggMale, eggs, goal.females(), perEggFemale, eggs);
        var tooFew = 0.0;
        for (var males = goal.males(); males < goal.animals(); males++) {
            for (var females = goal.females(); males + females < goal.animals(); females++) {
                if (males + females <= eggs) {
                    tooFew +=
                            choose(eggs, males)
                                    * choose(eggs - males, females)
                                    * Math.pow(perEggMale, males)
                                    * Math.pow(perEggFemale, females)
                                    * Math.pow(
                                            Math.max(0, 1 - perEggMale - perEggFemale),
                                            eggs - males - females);
                }
            }
        }
        return Math.max(0, bySex - tooFew);
    }

    private static double choose(int all, int some) {
        var ways = 1.0;
        for (var i = 1; i <= some; i++) {
            ways = ways * (all - some + i) / i;
        }
        return ways;
    }
}
