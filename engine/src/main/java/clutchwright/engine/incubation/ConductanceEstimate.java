package clutchwright.engine.incubation;

/// A box's conductance by what a logger read in it, or why that does not tell it.
public sealed interface ConductanceEstimate {

    /// So far apart the two ends may be, one divided by the other.
    double VAGUEST = 5;

    /// @param standardError in W/K
    /// @param low of the 95 % interval
    /// @param high of the 95 % interval
    /// @param riseKelvin of the box's air above the incubator's, on average
    record Told(
            Conductance conductance,
            double standardError,
            Conductance low,
            Conductance high,
            double riseKelvin)
            implements ConductanceEstimate {}

    /// @param riseKelvin on average
    /// @param giveOrTakeKelvin for 95 %
    record TooVague(double riseKelvin, double giveOrTakeKelvin) implements ConductanceEstimate {}

    /// By the reverse of a conductance, of which the errors are even on both sides.
    ///
    /// @param half of the 95 % interval of all traces, by which it is seen whether this one tells
    ///     anything
    /// @param halfTold of the 95 % interval of those that do
    static ConductanceEstimate of(
            double kelvinPerWatt,
            double standardError,
            double half,
            double halfTold,
            double riseKelvin) {
        var least = kelvinPerWatt - half;
        var most = kelvinPerWatt + half;
        if (!(least > 0 && most / least <= VAGUEST)) {
            return new TooVague(riseKelvin, Math.abs(riseKelvin / kelvinPerWatt) * half);
        }
        var conductance = 1 / kelvinPerWatt;
        return new Told(
                new Conductance(conductance),
                standardError * conductance * conductance,
                new Conductance(1 / (kelvinPerWatt + halfTold)),
                new Conductance(1 / (kelvinPerWatt - halfTold)),
                riseKelvin);
    }
}
