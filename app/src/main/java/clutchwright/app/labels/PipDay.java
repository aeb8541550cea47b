package clutchwright.app.labels;

import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.engine.incubation.HatchModel;
import java.time.LocalDate;

/// When eggs pip that are kept as warm as is common, without a look at any logger.
record PipDay(LocalDate laid) {

    private static final double FIRST_FEW = 0.05;

    LocalDate expected() {
        return laid.plusDays((long) HatchModel.STANDARD.constant(DevelopmentRate.REFERENCE).mean());
    }

    /// Whether whoever opens the box by then looks for slits rather than for veins.
    boolean isNear(LocalDate today) {
        var first = HatchModel.STANDARD.constant(DevelopmentRate.REFERENCE).quantile(FIRST_FEW);
        return !today.isBefore(laid.plusDays((long) first));
    }
}
