package clutchwright.engine.planning;

import java.util.Arrays;

/// Chances that only rise, by season or by number of seasons, from 0 on.
final class Chances {

    private final double[] bySeason;

    Chances(double... bySeason) {
        this.bySeason = bySeason.clone();
    }

    /// None before a season, certain from it on.
    static Chances certainFrom(int season, int seasons) {
        var chances = new double[seasons + 1];
        Arrays.fill(chances, Math.min(season, seasons + 1), seasons + 1, 1);
        return new Chances(chances);
    }

    double by(int season) {
        return season < 0 ? 0 : bySeason[Math.min(season, bySeason.length - 1)];
    }

    /// The same so many seasons later.
    Chances later(int seasons) {
        var shifted = new double[bySeason.length];
        if (seasons < shifted.length) {
            System.arraycopy(bySeason, 0, shifted, seasons, shifted.length - seasons);
        }
        return new Chances(shifted);
    }

    /// Both, independent of each other.
    Chances and(Chances that) {
        var both = bySeason.clone();
        for (var s = 0; s < both.length; s++) {
            both[s] *= that.bySeason[s];
        }
        return new Chances(both);
    }

    /// That one after this one, which begins when this one happened.
    ///
    /// @param lag how many seasons count as the first already
    Chances then(Chances that, int lag) {
        var by = new double[bySeason.length];
        var before = 0.0;
        for (var t = 0; t < by.length; t++) {
            var start = bySeason[t] - before;
            before = bySeason[t];
            if (start > 0) {
                for (var s = t; s < by.length; s++) {
                    by[s] += start * that.by(s - t + lag);
                }
            }
        }
        return new Chances(by);
    }

    /// Chances that differ by less count as the same.
    private static final double ALIKE = 1e-3;

    /// Nowhere less, but for what counts as the same.
    boolean isAtLeast(Chances that) {
        for (var s = bySeason.length - 1; s >= 0; s--) {
            if (bySeason[s] < that.bySeason[s] - ALIKE) {
                return false;
            }
        }
        return true;
    }

    /// Seasons looked at, the first of them 0, by which it has not happened; a mean.
    double meanWait() {
        return bySeason.length - Arrays.stream(bySeason).sum();
    }

    double last() {
        return bySeason[bySeason.length - 1];
    }
}
