package clutchwright.app.eggs;

import clutchwright.engine.incubation.ConductanceEstimate;
import clutchwright.engine.incubation.HeatBalance;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/// Solves what the engine states, by Levenberg and Marquardt's method as Hipparchus has it.
final class LeastSquares {

    private static final int MOST_ROUNDS = 100;
    private static final double LEVEL = 0.95;

    private LeastSquares() {}

    static ConductanceEstimate estimate(HeatBalance balance) {
        var reach =
                new TDistribution(balance.waves()).inverseCumulativeProbability((1 + LEVEL) / 2);
        return balance.judged(kelvinPerWatt(balance), reach);
    }

    static double kelvinPerWatt(HeatBalance balance) {
        var watts = balance.hours().stream().mapToDouble(HeatBalance.Hour::watts).toArray();
        var rises = balance.hours().stream().mapToDouble(HeatBalance.Hour::riseKelvin).toArray();
        var slopes = MatrixUtils.createColumnRealMatrix(watts);
        var problem =
                new LeastSquaresBuilder()
                        .start(new double[] {1})
                        .target(rises)
                        .model(
                                at ->
                                        new Pair<>(
                                                new ArrayRealVector(watts)
                                                        .mapMultiply(at.getEntry(0)),
                                                slopes))
                        .maxEvaluations(MOST_ROUNDS)
                        .maxIterations(MOST_ROUNDS)
                        .lazyEvaluation(false)
                        .build();
        return new LevenbergMarquardtOptimizer().optimize(problem).getPoint().getEntry(0);
    }
}
