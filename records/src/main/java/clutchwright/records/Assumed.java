package clutchwright.records;

import clutchwright.engine.inference.Assumptions;
import clutchwright.records.settings.Settings;
import java.util.Optional;

/// What the keeper wants assumed where the records say nothing.
public final class Assumed {

    private static final String BACKGROUND = "assumed/background";
    private static final String MISREAD = "assumed/misread";
    private static final String ACQUIRED_FOR_LOOK = "assumed/acquired-for-look";
    private static final String PARTHENOGENESIS = "assumed/parthenogenesis";

    private Assumed() {}

    /// What is not set, or not a chance, is as [Assumptions#KEEPER] has it.
    public static Assumptions read(Settings settings) {
        var first = Assumptions.KEEPER;
        return new Assumptions(
                chance(settings, BACKGROUND).orElse(first.background()),
                chance(settings, MISREAD).orElse(first.misread()),
                chance(settings, ACQUIRED_FOR_LOOK).orElse(first.acquiredForLook()),
                chance(settings, PARTHENOGENESIS).orElse(first.parthenogenesis()),
                first.secondDivision(),
                first.claimOfHalfKnown(),
                first.onlyAllelesMet());
    }

    public static void put(Settings settings, Assumptions assumptions) {
        settings.put(BACKGROUND, Double.toString(assumptions.background()));
        settings.put(MISREAD, Double.toString(assumptions.misread()));
        settings.put(ACQUIRED_FOR_LOOK, Double.toString(assumptions.acquiredForLook()));
        settings.put(PARTHENOGENESIS, Double.toString(assumptions.parthenogenesis()));
    }

    private static Optional<Double> chance(Settings settings, String name) {
        return settings.find(name).flatMap(Assumed::read);
    }

    private static Optional<Double> read(String held) {
        try {
            return Optional.of(Double.parseDouble(held)).filter(c -> c >= 0 && c <= 1);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
