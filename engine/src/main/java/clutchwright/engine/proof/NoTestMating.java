package clutchwright.engine.proof;

import java.util.List;
import java.util.Optional;

/// Why no test mating can be proposed.
public enum NoTestMating {
    /// A look tells who carries the allele.
    AT_SIGHT,
    /// It is certain already that the animal carries it, or that it does not.
    CERTAIN,
    /// Nobody knows the animal's sex.
    NO_SEX,
    /// No animal of the other sex is at hand.
    NOBODY,
    /// No hatchling of any mate at hand could tell.
    NOTHING_TELLS;

    /// @param matings with every mate at hand
    public static Optional<NoTestMating> among(CarrierTest test, List<TestMating> matings) {
        if (test.showsAtSight()) {
            return Optional.of(AT_SIGHT);
        }
        if (test.chance() == 0 || test.chanceOfNot() == 0) {
            return Optional.of(CERTAIN);
        }
        if (test.sex().isEmpty()) {
            return Optional.of(NO_SEX);
        }
        if (matings.isEmpty()) {
            return Optional.of(NOBODY);
        }
        return matings.stream().allMatch(mating -> mating.telling().isEmpty())
                ? Optional.of(NOTHING_TELLS)
                : Optional.empty();
    }
}
